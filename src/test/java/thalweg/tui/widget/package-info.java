/**
 * Tests of the parts of screens. They do not know any screen of the program.
 */
@NullMarked
package thalweg.tui.widget;

import org.jspecify.annotations.NullMarked;
