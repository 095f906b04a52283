package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import thalweg.amend.Located;
import thalweg.amend.Rearrange;
import thalweg.amend.ThingChange;
import thalweg.body.ThingBody;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.Entry;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Round;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Key;
import thalweg.tui.core.Screen;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/**
 * The keys that put right what the chosen row of a list of records is about.
 *
 * @param screen with the list
 * @param row the chosen one, if there is one
 * @param canyon around it, once it is loaded
 */
record RowKeys(Screen screen, Optional<StationRow> row, Optional<CanyonRecord> canyon) {

    private Optional<StationRow.Acts> acts() {
        return row.map(StationRow::acts);
    }

    private boolean isEntry() {
        return acts().map(StationRow.Acts::entry).orElse(false);
    }

    /** The key that edits a thing or corrects an entry. */
    Binding edit(Surroundings around) {
        return Binding.of(
                        Key.of('e'),
                        around.say(isEntry() ? "key.correct" : "key.edit"),
                        () -> open(acts().flatMap(StationRow.Acts::edit)))
                .unless(acts().flatMap(StationRow.Acts::edit).isEmpty(), refusal(around))
                .unless(around.readOnly(), around.say("read_only.refused"));
    }

    /** The key that takes a thing out or withdraws an entry. */
    Binding remove(Surroundings around) {
        return Amending.taking(isEntry(), () -> open(acts().flatMap(StationRow.Acts::remove)), around)
                .unless(acts().flatMap(StationRow.Acts::remove).isEmpty(), refusal(around));
    }

    /**
     * The key that says that another part was put in its place.
     *
     * @param part the chosen one, if a part is chosen
     * @param rounds on which that may have been, newest first
     */
    Binding replace(Optional<PartRecord> part, List<Entry<Round>> rounds, Surroundings around) {
        return Binding.of(
                        Key.of('R'),
                        around.say("key.replace"),
                        () -> Step.open(screen, new Go.Replace(part.orElseThrow(), rounds)))
                .unless(part.isEmpty(), around.say("station.part_first"))
                .unless(around.readOnly(), around.say("read_only.refused"));
    }

    private String refusal(Surroundings around) {
        return acts().map(StationRow.Acts::refusal)
                .filter(why -> !why.isEmpty())
                .orElse(around.say("list.empty"));
    }

    private Step open(Optional<Go> go) {
        return Step.open(screen, go.orElseThrow());
    }

    /** Moves the chosen thing by one place; the steps are those of the screen once it waits for the thing. */
    static Step shifted(Screen stays, Screen waits, CanyonRecord canyon, Uid thing, int by, Surroundings around) {
        Optional<List<ThingChange>> changes = Rearrange.shifted(canyon, thing, by);
        if (changes.isEmpty()) {
            return Step.stay(stays).refusing(around.say(by < 0 ? "move.first" : "move.last"));
        }
        return Step.stay(waits).doing(new Amend.Rearranged(changes.get()));
    }

    /** The key that puts the chosen thing into another. */
    Binding move(Surroundings around) {
        return Binding.of(
                        Key.of('m'),
                        around.say("key.move"),
                        () -> moved(
                                screen,
                                canyon.orElseThrow(),
                                acts().orElseThrow().uid(),
                                around))
                .unless(row.isEmpty(), around.say("list.empty"))
                .unless(isEntry(), around.say("move.entries_stay"))
                .unless(around.readOnly(), around.say("read_only.refused"))
                .quiet();
    }

    /** Opens the choice of what a thing could be put into. */
    static Step moved(Screen screen, CanyonRecord canyon, Uid uid, Surroundings around) {
        ThingBody thing = Located.in(canyon, uid).orElseThrow().thing();
        List<Go.Target> targets = MoveTargets.of(canyon, thing, around);
        return targets.isEmpty()
                ? Step.stay(screen).refusing(around.say("move.nowhere"))
                : Step.open(screen, new Go.MoveTo(thing, targets));
    }

    /** Why the chosen row cannot be moved along its line; empty text where it can. */
    String shiftRefusal(Surroundings around) {
        return row.isEmpty() ? around.say("list.empty") : isEntry() ? around.say("move.entries_stay") : "";
    }
}
