package thalweg.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import thalweg.service.CheckDatabase;
import thalweg.service.Session;

/** Holds the database against what it should be. */
@Command(
        name = "check",
        description = "Checks the file, the ledger in it, and that every table still follows from the ledger.")
final class CheckAction extends Action {

    @Option(names = "--rebuild", description = "derive every table anew from the ledger, then check")
    private boolean rebuild;

    CheckAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        List<String> findings;
        try (Session session = rebuild ? shared().writing() : shared().reading()) {
            CheckDatabase check = new CheckDatabase(session);
            if (rebuild) {
                check.rebuild();
            }
            findings = check.findings();
        }
        findings.forEach(this::print);
        if (findings.isEmpty()) {
            print("All is well: the file is whole, and every table follows from the ledger.");
        }
        return findings.isEmpty() ? ExitCodes.DONE : ExitCodes.NO;
    }
}
