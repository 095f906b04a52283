package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.ledger.Uid;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** The keys that take back, take out and move, the same on every screen of records. */
final class Amending {

    private Amending() {}

    /** Taking back and bringing again, and the list of changes. */
    static List<Binding> turning(Screen screen, Optional<Uid> canyon, String canyonName, Surroundings around) {
        String readOnly = around.say("read_only.refused");
        return List.of(
                Binding.of(
                                Key.of('z'),
                                around.say("key.undo"),
                                () -> Step.stay(screen).doing(new Amend.Undo()))
                        .unless(around.readOnly(), readOnly),
                Binding.of(
                        Key.of('h'),
                        around.say("key.changes"),
                        () -> Step.open(screen, new Go.Changes(canyon, canyonName))),
                Binding.of(
                                Key.of('Z'),
                                around.say("key.redo"),
                                () -> Step.stay(screen).doing(new Amend.Redo()))
                        .unless(around.readOnly(), readOnly)
                        .quiet());
    }

    /**
     * What is said once a change was taken back or brought again.
     *
     * @param here the canyon on the screen, which goes without saying
     */
    static String said(Told.Turned turned, Optional<Uid> here, Surroundings around) {
        ChangeView change = turned.change();
        String line = new ChangeWords(around.phrases(), around.units()).line(change);
        boolean elsewhere = !change.canyonName().isEmpty() && !change.canyon().equals(here);
        String where = elsewhere ? around.say("changes.in", line, change.canyonName()) : line;
        return around.say(turned.taken() ? "changes.taken_back" : "changes.brought_again", where);
    }

    /** The key that takes something away: a thing out of use, or an entry from what counts. */
    static Binding taking(boolean entry, Supplier<Step> step, Surroundings around) {
        return Binding.of(Key.of('x'), around.say(entry ? "key.withdraw" : "key.take_out"), step)
                .or(Key.of(Key.Named.DELETE))
                .unless(around.readOnly(), around.say("read_only.refused"));
    }

    /** Gives a step that moves something by one place: -1 is up, 1 is down. */
    @FunctionalInterface
    interface Shifter {
        Step by(int by);
    }

    /** The keys that move the chosen row up and down its line. */
    static List<Binding> shifting(Shifter shifter, String refusal, Surroundings around) {
        return List.of(
                shift(Key.Named.UP, 'K', "key.move_up", () -> shifter.by(-1), refusal, around),
                shift(Key.Named.DOWN, 'J', "key.move_down", () -> shifter.by(1), refusal, around));
    }

    private static Binding shift(
            Key.Named named, char letter, String label, Supplier<Step> step, String refusal, Surroundings around) {
        return Binding.of(Key.of(letter), around.say(label), step)
                .or(Key.shift(named))
                .unless(!refusal.isEmpty(), refusal)
                .unless(around.readOnly(), around.say("read_only.refused"))
                .quiet();
    }
}
