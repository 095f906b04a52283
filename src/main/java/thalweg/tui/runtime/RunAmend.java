package thalweg.tui.runtime;

import java.util.List;
import java.util.Optional;
import thalweg.amend.ChangeView;
import thalweg.service.AddEntries;
import thalweg.service.ListChanges;
import thalweg.service.MoveThing;
import thalweg.service.ReadPhotos;
import thalweg.service.Remarks;
import thalweg.service.SaveThing;
import thalweg.service.Session;
import thalweg.service.TakeBack;
import thalweg.tui.screen.Amend;
import thalweg.tui.screen.Told;

/** Does the work that screens ask for when something is put right, taken back, or told. */
final class RunAmend {

    /** Older changes are found by the command that lists them. */
    private static final int MOST_CHANGES = 500;

    private final Session session;

    RunAmend(Session session) {
        this.session = session;
    }

    Told run(Amend amend) {
        TakeBack back = new TakeBack(session);
        if (amend instanceof Amend.Undo) {
            return new Told.Turned(back.undo(), true);
        }
        if (amend instanceof Amend.Redo) {
            return new Told.Turned(back.redo(), false);
        }
        if (amend instanceof Amend.TakeBack take) {
            return new Told.Turned(back.takeBack(take.key()), true);
        }
        if (amend instanceof Amend.BringAgain bring) {
            return new Told.Turned(back.bringAgain(bring.key()), false);
        }
        if (amend instanceof Amend.ListChanges list) {
            ListChanges changes = new ListChanges(session);
            List<ChangeView> listed = list.canyon()
                    .map(canyon -> changes.latest(canyon, MOST_CHANGES))
                    .orElseGet(() -> changes.latest(MOST_CHANGES));
            return new Told.ChangesListed(listed);
        }
        if (amend instanceof Amend.LoadChange load) {
            return new Told.ChangeLoaded(new ListChanges(session).whole(load.key()));
        }
        Optional<Remarks> remarks = amend instanceof Amend.CorrectInspection correct
                ? Optional.of(Remarks.before(session, correct.right().part()))
                : Optional.empty();
        saved(amend);
        return new Told.Saved(remarks.map(Remarks::since).orElse(List.of()));
    }

    private void saved(Amend amend) {
        AddEntries entries = new AddEntries(session);
        if (amend instanceof Amend.TakeOut take) {
            new SaveThing(session).removed(take.thing(), take.reason());
        } else if (amend instanceof Amend.Rearranged rearranged) {
            new MoveThing(session).rearranged(rearranged.changes());
        } else if (amend instanceof Amend.Withdraw withdraw) {
            entries.withdraw(withdraw.entry(), withdraw.reason());
        } else if (amend instanceof Amend.CorrectInspection correct) {
            entries.correct(
                    correct.wrong(), correct.right().withPhotos(ReadPhotos.of(correct.photos())), correct.reason());
        } else if (amend instanceof Amend.CorrectNote correct) {
            entries.correct(correct.wrong(), correct.right(), correct.reason());
        } else if (amend instanceof Amend.CorrectRound correct) {
            entries.correct(correct.wrong(), correct.right(), correct.reason());
        } else {
            throw new AssertionError("nobody does " + amend);
        }
    }
}
