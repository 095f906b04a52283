package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.amend.ChangeView;
import thalweg.amend.ChangeWords;
import thalweg.amend.Deed;
import thalweg.amend.Moment;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.service.FindRecord;
import thalweg.service.ListChanges;
import thalweg.service.LoadPhrases;
import thalweg.service.Session;

/** Lists what was changed. */
@Command(
        name = "changes",
        description = {
            "Lists what was changed, newest first: number, when, who, what, and whether it was taken back.",
            "With --change it shows one change in full, before and after."
        })
final class ChangesAction extends Action {

    private static final int MOST = 100_000;

    @Parameters(
            paramLabel = "CANYON",
            arity = "0..1",
            description = "only changes of that canyon: name, part of it, or id")
    private @Nullable String canyon;

    @Option(names = "--change", paramLabel = "NUMBER", description = "show that one in full")
    private @Nullable Long number;

    @Option(
            names = "--most",
            paramLabel = "NUMBER",
            description = "how many at the most (default: ${DEFAULT-VALUE})",
            defaultValue = "50")
    private int most = 50;

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    ChangesAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        if (most < 1 || most > MOST) {
            throw new InputException(Sentence.of("--most is a number from 1 to {0}.", MOST));
        }
        if (number != null && canyon != null) {
            throw new InputException(
                    Sentence.of("A change has its number in the whole database; leave the canyon out."));
        }
        try (Session session = shared().reading()) {
            ListChanges list = new ListChanges(session);
            ChangeWords words = new ChangeWords(json ? LoadPhrases.english() : phrases(), shared().units());
            if (number != null) {
                ChangeView change = list.whole(number);
                print(json ? JsonText.indented(whole(change, words)) : text(change, words));
                return ExitCodes.DONE;
            }
            List<ChangeView> changes = canyon == null
                    ? list.latest(most)
                    : list.latest(
                            new FindRecord(session).canyon(canyon).canyon().uid(), most);
            if (json) {
                print(JsonText.indented(new Json.Items(changes.stream()
                        .<Json>map(change -> json(change, words))
                        .toList())));
            } else if (changes.isEmpty()) {
                tell(Sentence.of("Nothing was changed yet."));
            } else {
                print(table(changes, words));
            }
        }
        return ExitCodes.DONE;
    }

    private String table(List<ChangeView> changes, ChangeWords words) {
        List<List<String>> cells = new ArrayList<>();
        cells.add(List.of("NUMBER", "WHEN", "WHO", "CANYON", "", "WHAT"));
        for (ChangeView change : changes) {
            cells.add(List.of(
                    Long.toString(change.key()),
                    Moment.print(phrases(), change.at()),
                    change.author(),
                    change.canyonName(),
                    change.taken().isPresent() ? phrases().say("changes.mark") : "",
                    words.line(change)));
        }
        return Columns.of(cells);
    }

    private String text(ChangeView change, ChangeWords words) {
        StringBuilder out = new StringBuilder();
        out.append(phrases().say("changes.who", change.key(), change.author(), Moment.print(phrases(), change.at())))
                .append('\n');
        if (!change.canyonName().isEmpty()) {
            out.append(change.canyonName()).append('\n');
        }
        change.taken()
                .ifPresent(signed -> out.append(phrases()
                                .say("changes.taken_by", signed.author(), Moment.print(phrases(), signed.at())))
                        .append('\n'));
        for (Deed deed : change.deeds()) {
            out.append('\n').append(words.line(deed)).append('\n');
            words.details(deed).forEach(line -> out.append("  ").append(line).append('\n'));
        }
        return out.toString();
    }

    private static Json.Fields json(ChangeView change, ChangeWords words) {
        return Json.fields()
                .put("number", change.key())
                .put("author", change.author())
                .put("at", change.at())
                .put("canyon", change.canyon().map(uid -> uid.text()).orElse(""))
                .put("canyon_name", change.canyonName())
                .put("what", words.line(change))
                .put("size", change.size())
                .putIfTrue("taken_back", change.taken().isPresent())
                .done();
    }

    private static Json whole(ChangeView change, ChangeWords words) {
        return json(change, words)
                .with(
                        "deeds",
                        new Json.Items(
                                change.deeds().stream().map(ChangesAction::json).toList()));
    }

    private static Json json(Deed deed) {
        return Json.fields()
                .put("did", deed.kind().name().toLowerCase(Locale.ROOT))
                .put("type", deed.type())
                .put("uid", deed.uid().text())
                .put("reason", deed.reason())
                .put(
                        "fields",
                        new Json.Items(deed.differences().stream()
                                .map(ChangesAction::json)
                                .toList()))
                .done();
    }

    private static Json json(Deed.Difference difference) {
        return Json.fields()
                .put("field", difference.key())
                .putKnown("before", difference.before())
                .putKnown("after", difference.after())
                .done();
    }
}
