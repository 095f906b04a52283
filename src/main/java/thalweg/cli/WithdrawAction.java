package thalweg.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.service.AddEntries;
import thalweg.service.FindThing;
import thalweg.service.Session;

/** Withdraws an entry. */
@Command(
        name = "withdraw",
        description = {
            "Withdraws an inspection, rigging note, rig analysis or round that was wrong.",
            "It stays to be seen with the reason, but counts no longer."
        })
final class WithdrawAction extends Action {

    @Parameters(paramLabel = "ENTRY-ID", description = "as `show --ids` lists it")
    private String entry = "";

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "why; it stays with the entry")
    private @Nullable String reason;

    WithdrawAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().writing()) {
            FindThing.EntryInCanyon found = new FindThing(session).entry(entry);
            new AddEntries(session).withdraw(found.entry().uid(), reason == null ? "" : reason);
            tell(new Amended(phrases(), shared().units()).latest(session));
        }
        return ExitCodes.DONE;
    }
}
