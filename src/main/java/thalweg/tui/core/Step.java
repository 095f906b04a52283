package thalweg.tui.core;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What follows a message: the screen's next state, work to start, where to go, something to say.
 *
 * @param screen its next state
 * @param effects work to start, whose results come back to this screen
 * @param move where to go, if anywhere
 * @param notice one line for the person
 */
public record Step(Screen screen, List<Effect> effects, Optional<Move> move, Optional<Notice> notice) {

    /** Going somewhere. */
    public sealed interface Move {

        /** On top of this screen. */
        record Open(Destination destination) implements Move {}

        /** In place of this screen. */
        record Replace(Destination destination) implements Move {}

        /** To the screen below. */
        record Back() implements Move {}
    }

    /**
     * One line for the person, until the next key.
     *
     * @param text the line
     * @param bad whether something failed or was refused
     * @param passing whether it is about work that goes on, and is over with it
     */
    public record Notice(String text, boolean bad, boolean passing) {

        /** A line that stays until the next key. */
        public Notice(String text, boolean bad) {
            this(text, bad, false);
        }
    }

    public Step {
        effects = List.copyOf(effects);
    }

    /** The screen goes on in that state. */
    public static Step stay(Screen screen) {
        return new Step(screen, List.of(), Optional.empty(), Optional.empty());
    }

    /** The screen goes on, and another opens on top of it. */
    public static Step open(Screen screen, Destination destination) {
        return new Step(screen, List.of(), Optional.of(new Move.Open(destination)), Optional.empty());
    }

    /** Another screen takes its place. */
    public static Step replace(Screen screen, Destination destination) {
        return new Step(screen, List.of(), Optional.of(new Move.Replace(destination)), Optional.empty());
    }

    /** The screen closes. */
    public static Step back(Screen screen) {
        return new Step(screen, List.of(), Optional.of(new Move.Back()), Optional.empty());
    }

    /** The same with work to start. */
    public Step doing(Effect effect) {
        List<Effect> more = new ArrayList<>(effects);
        more.add(effect);
        return new Step(screen, more, move, notice);
    }

    /** The same with something to say. */
    public Step saying(String text) {
        return new Step(screen, effects, move, Optional.of(new Notice(text, false)));
    }

    /** The same with something to say for as long as work goes on. */
    public Step sayingMeanwhile(String text) {
        return new Step(screen, effects, move, Optional.of(new Notice(text, false, true)));
    }

    /** The same with the reason why something was not done. */
    public Step refusing(String sentence) {
        return new Step(screen, effects, move, Optional.of(new Notice(sentence, true)));
    }
}
