package thalweg.service;

import java.util.List;

/** Holds the database against what it should be. */
public final class CheckDatabase {

    private final Session session;

    public CheckDatabase(Session session) {
        this.session = session;
    }

    /** What is wrong, one sentence each; empty where all is well. Nothing is changed. */
    public List<String> findings() {
        return session.check().findings();
    }

    /** Derives every table anew from the ledger. */
    public void rebuild() {
        session.ledger().rebuild();
    }
}
