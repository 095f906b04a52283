/**
 * Tests of what an interface is made of. They do not know any screen.
 */
@NullMarked
package thalweg.tui.core;

import org.jspecify.annotations.NullMarked;
