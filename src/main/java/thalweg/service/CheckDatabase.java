package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.RecordRules;

/** Holds the database against what it should be: the file, the ledger, the tables, and whether the records can be true. */
public final class CheckDatabase {

    private final Session session;

    public CheckDatabase(Session session) {
        this.session = session;
    }

    /** What is wrong with the file, the ledger and the tables, one sentence each; nothing is changed. */
    public List<Sentence> findings() {
        return session.check().findings();
    }

    /** What in the records cannot all be true, one line each with the place first; only of use where all else is well. */
    public List<Sentence> contradictions() {
        List<Sentence> lines = new ArrayList<>();
        for (Uid uid : session.records().canyons()) {
            session.records()
                    .canyon(uid)
                    .ifPresent(canyon -> RecordRules.brokenBy(canyon, session.today())
                            .forEach(broken -> lines.add(
                                    Sentence.of("{0}: {1}", Sentence.joined(" / ", broken.where()), broken.what()))));
        }
        return lines;
    }

    /** Derives every table anew from the ledger. */
    public void rebuild() {
        session.ledger().rebuild();
    }
}
