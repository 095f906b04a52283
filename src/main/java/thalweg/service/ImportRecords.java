package thalweg.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Known;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.fault.InputException;
import thalweg.json.Findings;
import thalweg.ledger.Fact;
import thalweg.ledger.Revision;
import thalweg.ledger.Uid;
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
    public record Preview(List<String> findings, ImportPlan plan) {
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
        Findings findings = new Findings();
        RecordsReader reader = new RecordsReader(session::mint, session.keeper(), session.now(), session.today());
        List<Parcel> canyons = reader.read(name, bytes, findings);
        ImportPlan plan = ImportPlan.of(canyons, new InDatabase(session), session.keeper(), session.now());
        return new Preview(
                findings.all().stream().map(finding -> finding.print()).toList(), plan);
    }

    /** Writes what the plan says, all of it or nothing. */
    public void accept(ImportPlan plan) {
        session.ledger().append(new Batch(plan.revisions(), plan.facts(), session.keeper(), session.now()));
    }

    private record InDatabase(Session session) implements Known {
        @Override
        public Optional<Revision> head(Uid thing) {
            return session.ledger().head(thing);
        }

        @Override
        public boolean says(Fact fact) {
            return session.ledger().says(fact);
        }

        @Override
        public boolean hasOtherCanyonNamed(String name, Uid uid) {
            return session.canyons().named(name).stream().anyMatch(other -> !other.equals(uid));
        }
    }
}
