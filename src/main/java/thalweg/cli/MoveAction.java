package thalweg.cli;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.amend.Located;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.service.FindThing;
import thalweg.service.MoveThing;
import thalweg.service.Remarks;
import thalweg.service.Session;

/** Gives a thing another place. */
@Command(
        name = "move",
        description = {
            "Puts a place, station, anchor or part elsewhere.",
            "It goes before or after another of its kind, or to the end of what is in another: a part in an"
                    + " anchor, an anchor at a station, a station at a place, a place in a canyon. What was entered"
                    + " on it stays with it."
        })
final class MoveAction extends Action {

    @Parameters(
            paramLabel = "THING",
            description = "CANYON/STATION, CANYON/STATION/PART, or an id as `show --ids` lists it")
    private String thing = "";

    @Option(names = "--to", paramLabel = "NAME-OR-ID", description = "what it will be in, as the last")
    private @Nullable String to;

    @Option(names = "--before", paramLabel = "NAME-OR-ID", description = "what it will stand before")
    private @Nullable String before;

    @Option(names = "--after", paramLabel = "NAME-OR-ID", description = "what it will stand after")
    private @Nullable String after;

    MoveAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        if (Stream.of(to == null, before == null, after == null)
                        .filter(none -> !none)
                        .count()
                != 1) {
            throw new InputException(Sentence.of("Say where it goes: exactly one of --to, --before and --after."));
        }
        try (Session session = shared().writing()) {
            Remarks remarks = Remarks.before(session, into(session));
            boolean moved = moved(session);
            tell(
                    moved
                            ? new Amended(phrases(), shared().units()).latest(session)
                            : Sentence.of("It stands there already; nothing was changed."));
            remark(remarks);
        }
        return ExitCodes.DONE;
    }

    /** The canyon in which it will be. */
    private Uid into(Session session) {
        String target = Stream.of(Optional.ofNullable(to), Optional.ofNullable(before), Optional.ofNullable(after))
                .flatMap(Optional::stream)
                .findFirst()
                .orElse("");
        return new FindThing(session).of(target).canyon().canyon().uid();
    }

    private boolean moved(Session session) {
        FindThing find = new FindThing(session);
        Located from = find.of(thing).at();
        MoveThing move = new MoveThing(session);
        if (to != null) {
            return move.into(from, find.of(to).at());
        }
        return before != null
                ? move.beside(from, find.of(before).at(), false)
                : move.beside(from, find.of(after == null ? "" : after).at(), true);
    }
}
