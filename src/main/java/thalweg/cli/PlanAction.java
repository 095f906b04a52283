package thalweg.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.JsonText;
import thalweg.plan.Plan;
import thalweg.plan.PlanWords;
import thalweg.plan.TripRequest;
import thalweg.service.PlanTrip;
import thalweg.service.Session;
import thalweg.text.Phrases;
import thalweg.text.Width;

/** Plans a trip. */
@Command(
        name = "plan",
        description = {
            "Works out what the trip in FILE needs: ropes, times, daylight, what is due and which rigs to look at again.",
            "What the file holds is in src/docs/trip-file.md."
        })
final class PlanAction extends Action {

    private static final int COLUMNS = 80;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "the trip")
    private @Nullable Path file;

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    @Mixin
    private final SettingsOption settings = new SettingsOption();

    PlanAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    Optional<Path> settingsFile() {
        return settings.file();
    }

    @Override
    public Integer call() {
        if (file == null) {
            throw new InputException(Sentence.of("Name the file of a trip; src/docs/trip-file.md says what it holds."));
        }
        TripRequest request = PlanTrip.read(file);
        Plan plan;
        try (Session session = shared().reading()) {
            plan = new PlanTrip(session, settings.read(surrounds(), phrases())).of(request);
        }
        print(json ? JsonText.indented(PlanJson.of(plan)) : text(plan));
        return ExitCodes.DONE;
    }

    private String text(Plan plan) {
        Phrases phrases = phrases();
        StringBuilder out = new StringBuilder();
        out.append(PlanWords.title(plan, phrases)).append('\n');
        for (PlanWords.Section section : PlanWords.of(plan, phrases, shared().units())) {
            out.append('\n').append(section.heading()).append('\n');
            section.lines().forEach(line -> {
                String mark = "- ";
                for (String part : Width.wrap(line, COLUMNS - mark.length())) {
                    out.append(mark).append(part).append('\n');
                    mark = "  ";
                }
            });
        }
        out.append('\n');
        for (String part : Width.wrap(phrases.caution("caution.aid"), COLUMNS)) {
            out.append(part).append('\n');
        }
        return out.toString();
    }
}
