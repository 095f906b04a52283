package thalweg.cli;

import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.service.ListChanges;
import thalweg.service.Session;
import thalweg.text.Phrases;
import thalweg.units.UnitSystem;

/** Says in one sentence what a command changed. */
final class Amended {

    private final ChangeWords words;

    Amended(Phrases phrases, UnitSystem units) {
        this.words = new ChangeWords(phrases, units);
    }

    /** "Done: withdrew ... (change 12; `undo` takes it back)." */
    String latest(Session session) {
        ChangeView change = new ListChanges(session).latest(1).get(0);
        return "Done: " + words.line(change) + " (change " + change.key() + "; `undo` takes it back).";
    }

    /** "Taken back: withdrew ... in Probe (change 12)." */
    String turned(String did, ChangeView change) {
        return did + ": " + words.line(change)
                + (change.canyonName().isEmpty() ? "" : " in " + change.canyonName()) + " (change " + change.key()
                + ").";
    }
}
