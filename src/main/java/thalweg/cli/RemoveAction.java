package thalweg.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.amend.Contents;
import thalweg.fault.Sentence;
import thalweg.service.FindThing;
import thalweg.service.SaveThing;
import thalweg.service.Session;

/** Takes a thing out of use. */
@Command(
        name = "remove",
        description = {
            "Takes a canyon, place, station, anchor or part out of use, with everything in it.",
            "Nothing is lost: `undo` brings it back, and so does `undo --change N` later."
        })
final class RemoveAction extends Action {

    @Parameters(
            paramLabel = "NAME-OR-ID",
            description = "CANYON, CANYON/STATION, CANYON/STATION/PART, or an id as `show --ids` lists it")
    private String name = "";

    @Option(names = "--reason", paramLabel = "TEXT", required = true, description = "why; it stays with the thing")
    private @Nullable String reason;

    RemoveAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        try (Session session = shared().writing()) {
            FindThing.InCanyon found = new FindThing(session).of(name);
            new SaveThing(session).removed(found.at().thing(), reason == null ? "" : reason);
            tell(new Amended(phrases(), shared().units()).latest(session));
            Contents contents = found.at().contents();
            if (!contents.isEmpty()) {
                tell(Sentence.of("Together with it went {0}.", contents.print(phrases())));
            }
        }
        return ExitCodes.DONE;
    }
}
