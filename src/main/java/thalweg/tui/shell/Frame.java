package thalweg.tui.shell;

import java.util.function.Supplier;
import thalweg.tui.core.Destination;
import thalweg.tui.core.Screen;

/**
 * A screen on the stack.
 *
 * @param number by which results find it; never used twice
 * @param screen its state
 * @param destination where it stands, to open it anew
 */
record Frame(long number, Screen screen, Destination destination) {

    Frame with(Screen next) {
        return new Frame(number, next, destination);
    }

    /** What the screen is asked for; a mistake in it is told from those elsewhere. */
    <T> T guarded(Supplier<T> asked) {
        try {
            return asked.get();
        } catch (ScreenFailure told) {
            throw told;
        } catch (RuntimeException | AssertionError | StackOverflowError e) {
            throw new ScreenFailure(number, e);
        }
    }
}
