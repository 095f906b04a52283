package thalweg.cli;

import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.fault.Sentence;
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
    Sentence latest(Session session) {
        ChangeView change = new ListChanges(session).latest(1).get(0);
        return Sentence.of("Done: {0} (change {1}; `undo` takes it back).", words.line(change), change.key());
    }

    /** "Taken back: withdrew ... in Probe (change 12)." */
    Sentence turned(Sentence did, ChangeView change) {
        return change.canyonName().isEmpty()
                ? Sentence.of("{0}: {1} (change {2}).", did, words.line(change), change.key())
                : Sentence.of(
                        "{0}: {1} in {2} (change {3}).", did, words.line(change), change.canyonName(), change.key());
    }
}
