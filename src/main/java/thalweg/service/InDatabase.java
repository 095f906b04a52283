package thalweg.service;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import thalweg.exchange.table.Here;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonRecord;
import thalweg.progress.Progress;

/** What a database knows, as imports ask for it; each question counts as progress. */
final class InDatabase implements Here {

    private final Session session;
    private final Progress progress;
    private final AtomicLong asked = new AtomicLong();

    InDatabase(Session session, Progress progress) {
        this.session = session;
        this.progress = progress;
    }

    @Override
    public Optional<Revision> head(Uid thing) {
        progress.at(asked.incrementAndGet(), 0);
        return session.ledger().head(thing);
    }

    @Override
    public boolean says(Fact fact) {
        progress.at(asked.incrementAndGet(), 0);
        return session.ledger().says(fact);
    }

    @Override
    public boolean isAmended(Fact fact) {
        return session.ledger().fact(fact.uid()).isPresent()
                && !session.ledger().counts(fact);
    }

    @Override
    public boolean hasOtherCanyonNamed(String name, Uid uid) {
        return session.canyons().named(name).stream().anyMatch(other -> !other.equals(uid));
    }

    @Override
    public Optional<CanyonRecord> canyon(Uid uid) {
        progress.at(asked.incrementAndGet(), 0);
        return session.records().canyon(uid);
    }

    @Override
    public List<Uid> canyonsNamed(String name) {
        return session.canyons().named(name);
    }

    @Override
    public Optional<Uid> canyonAround(Uid thing) {
        progress.at(asked.incrementAndGet(), 0);
        return session.things().canyonOf(thing);
    }
}
