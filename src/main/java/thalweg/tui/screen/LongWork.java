package thalweg.tui.screen;

import java.util.Optional;
import thalweg.tui.core.Message;
import thalweg.tui.core.Surroundings;

/** What is said of work that takes long: while it goes on, and when it ends after its screen was left. */
public final class LongWork {

    private static final int PERCENT = 100;

    private LongWork() {}

    /** How far it is. */
    static String line(Message.Progressed progressed, Surroundings around) {
        return progressed.all() > 0
                ? around.say("work.percent", progressed.done() * PERCENT / progressed.all())
                : around.say("work.so_far", progressed.done());
    }

    static String said(Told.SheetsWritten written, Surroundings around) {
        return around.phrases().count("sheets_form.done", written.sheets(), written.folder());
    }

    /** What came of it, for whoever is elsewhere by then; empty where that need not be said. */
    public static Optional<String> said(Message message, Surroundings around) {
        if (message instanceof Told.BackedUp done) {
            return Optional.of(around.say("backup.done", done.target()));
        }
        if (message instanceof Told.SheetsWritten written) {
            return Optional.of(said(written, around));
        }
        return message instanceof Told.TakenIn taken
                ? Optional.of(around.say("take_in.done", taken.backup()))
                : Optional.empty();
    }
}
