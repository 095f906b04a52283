/** Walks through the screens as a user would, with a real database behind them and no terminal. */
@NullMarked
package thalweg.tui.screen;

import org.jspecify.annotations.NullMarked;
