/**
 * The screens, one record each, with the places they can go, the work they ask for and what comes of it. A screen does
 * not know the other screens, nor how work is done.
 */
@NullMarked
package thalweg.tui.screen;

import org.jspecify.annotations.NullMarked;
