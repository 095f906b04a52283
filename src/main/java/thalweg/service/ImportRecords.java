package thalweg.service;

import java.nio.file.Path;
import java.util.List;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.Parcel;
import thalweg.exchange.json.RecordsReader;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
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
        ImportPlan plan = ImportPlan.of(canyons, new InDatabase(session, progress), session.keeper(), session.now());
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
}
