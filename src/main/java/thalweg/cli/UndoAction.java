package thalweg.cli;

import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import thalweg.amend.ChangeView;
import thalweg.fault.Sentence;
import thalweg.service.Session;
import thalweg.service.TakeBack;

/** Takes a change back. */
@Command(
        name = "undo",
        description = {
            "Takes the latest change back that stands, or the one of that number.",
            "Nothing is erased: what was there before is said anew, and `redo` brings the change again."
        })
final class UndoAction extends Action {

    @Option(names = "--change", paramLabel = "NUMBER", description = "as `changes` lists it")
    private @Nullable Long number;

    UndoAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        OptionalLong key = number == null ? OptionalLong.empty() : OptionalLong.of(number);
        try (Session session = shared().writing()) {
            TakeBack back = new TakeBack(session);
            ChangeView change = key.isPresent() ? back.takeBack(key.getAsLong()) : back.undo();
            tell(new Amended(phrases(), shared().units()).turned(Sentence.of("Taken back"), change));
        }
        return ExitCodes.DONE;
    }
}
