package thalweg.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Known;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
import thalweg.progress.Progress;
import thalweg.storage.Batch;

/** Takes in a file of records: first as a plan that a person sees, then, when accepted, in one transaction. */
public final class ImportRecords {

    private final Session session;

    public ImportRecords(Session session) {
        this.session = session;
    }

    /**
     * What is wrong with a file, or what it would change.
     *
     * @param findings what is wrong, one line each; the plan is empty then
     * @param plan what would change
     */
    public record Preview(List<Sentence> findings, ImportPlan plan) {
        public Preview {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads a file and works out what it would change; nothing is written.
     *
     * @throws InputException when the file cannot be read or is no JSON
     */
    public Preview preview(Path file) {
        return preview(file.toString(), ReadFile.bytes(file));
    }

    /** The same for bytes that are at hand. */
    public Preview preview(String name, byte[] bytes) {
        return preview(name, bytes, Progress.UNWATCHED);
    }

    /**
     * The same.
     *
     * @param progress in things that were looked up, of which nobody knows how many there are
     */
    public Preview preview(String name, byte[] bytes, Progress progress) {
        Findings findings = new Findings();
        RecordsReader reader = new RecordsReader(session::mint, session.keeper(), session.now(), session.today());
        List<Parcel> canyons = reader.read(name, bytes, findings);
        ImportPlan plan = ImportPlan.of(
                canyons, new InDatabase(session, progress, new AtomicLong()), session.keeper(), session.now());
        return new Preview(
                findings.all().stream().map(finding -> finding.saying()).toList(), plan);
    }

    /** Writes what the plan says, all of it or nothing. */
    public void accept(ImportPlan plan) {
        accept(plan, Progress.UNWATCHED);
    }

    /** The same. */
    public void accept(ImportPlan plan, Progress progress) {
        session.ledger().append(new Batch(plan.revisions(), plan.facts(), session.keeper(), session.now()), progress);
    }

    private record InDatabase(Session session, Progress progress, AtomicLong asked) implements Known {
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
    }
}
