package thalweg.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import thalweg.fault.Sentence;
import thalweg.service.CheckDatabase;
import thalweg.service.Session;

/** Holds the database against what it should be. */
@Command(
        name = "check",
        description = {
            "Checks the database: its file, ledger, tables and records.",
            "Every table must still follow from the ledger, and no record contradict another: dates,"
                    + " distances, heights."
        })
final class CheckAction extends Action {

    @Option(names = "--rebuild", description = "derive every table anew from the ledger, then check")
    private boolean rebuild;

    CheckAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        List<Sentence> findings;
        Path file;
        List<Sentence> contradictions = List.of();
        try (Session session = rebuild ? shared().writing() : shared().reading()) {
            CheckDatabase check = new CheckDatabase(session);
            if (rebuild) {
                check.rebuild();
            }
            findings = check.findings();
            file = session.file();
            if (findings.isEmpty()) {
                contradictions = check.contradictions();
            }
        }
        if (!findings.isEmpty()) {
            print(Sentence.of("The database {0} is not as it should be:", file));
            findings.forEach(line -> print("  " + phrases().say(line)));
            return ExitCodes.NO;
        }
        print(Sentence.of("The file is whole, and every table follows from the ledger."));
        if (!contradictions.isEmpty()) {
            print(Sentence.of("In the records, these cannot all be true:"));
            contradictions.forEach(line -> print("  " + phrases().say(line)));
            return ExitCodes.NO;
        }
        print(Sentence.of("No record contradicts another."));
        return ExitCodes.DONE;
    }
}
