package thalweg.cli;

import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import thalweg.amend.ChangeView;
import thalweg.fault.Sentence;
import thalweg.service.Session;
import thalweg.service.TakeBack;

/** Brings a change again. */
@Command(
        name = "redo",
        description = {
            "Brings again what was taken back last, or the change of that number.",
            "Without a number only where nothing else was changed since."
        })
final class RedoAction extends Action {

    @Option(names = "--change", paramLabel = "NUMBER", description = "as `changes` lists it")
    private @Nullable Long number;

    RedoAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        OptionalLong key = number == null ? OptionalLong.empty() : OptionalLong.of(number);
        try (Session session = shared().writing()) {
            TakeBack back = new TakeBack(session);
            ChangeView change = key.isPresent() ? back.bringAgain(key.getAsLong()) : back.redo();
            tell(new Amended(phrases(), shared().units()).turned(Sentence.of("Brought again"), change));
        }
        return ExitCodes.DONE;
    }
}
