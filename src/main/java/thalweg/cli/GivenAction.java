package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.body.SheetGivenBody;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.Uid;
import thalweg.logbook.GivenSheet;
import thalweg.logbook.SheetGiven;
import thalweg.service.FindRecord;
import thalweg.service.ListGiven;
import thalweg.service.Session;

/** Lists sheets that were written. */
@Command(
        name = "given",
        description = {
            "Lists the sheets of one canyon or of all that were written, and whether the records changed since.",
            "Every sheet that is written to a file is noted; --given-to NAME notes to whom it is given."
        })
final class GivenAction extends Action {

    @Parameters(paramLabel = "CANYON", arity = "0..1", description = "name, part of it, or id")
    private @Nullable String canyon;

    @Option(names = "--json", description = "print JSON")
    private boolean json;

    GivenAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        List<GivenSheet> sheets;
        try (Session session = shared().reading()) {
            Optional<Uid> of = canyon == null
                    ? Optional.empty()
                    : Optional.of(
                            new FindRecord(session).canyon(canyon).canyon().uid());
            sheets = new ListGiven(session).of(of);
        }
        if (json) {
            print(JsonText.indented(
                    new Json.Items(sheets.stream().map(GivenAction::json).toList())));
        } else if (sheets.isEmpty()) {
            tell(Sentence.of("No sheet was written yet; sheet CANYON --out PATH writes one and notes it."));
        } else {
            print(table(sheets));
        }
        return ExitCodes.DONE;
    }

    private String table(List<GivenSheet> sheets) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("NO", "WRITTEN", "GIVEN TO", "FILE", "RECORDS", "CANYON", "ID"));
        for (GivenSheet shown : sheets) {
            SheetGiven given = shown.entry().content();
            rows.add(List.of(
                    given.mark().print(),
                    given.on().print(),
                    given.to(),
                    given.file(),
                    phrases().say(key(shown)),
                    TripReport.name(shown.canyon()),
                    shown.entry().uid().text()));
        }
        return Columns.of(rows);
    }

    private static String key(GivenSheet shown) {
        if (!shown.entry().counts()) {
            return "given.row.withdrawn";
        }
        return shown.changedSince() ? "given.changed_short" : "given.row.unchanged";
    }

    private static Json json(GivenSheet shown) {
        Json.Fields fields = SheetGivenBody.write(shown.entry().content())
                .with("mark", Json.of(shown.entry().content().mark().print()))
                .with("uid", Json.of(shown.entry().uid().text()))
                .with("canyon", Json.of(shown.canyon().uid().text()))
                .with("canyon_name", Json.of(shown.canyon().name()))
                .with("changed_since", Json.of(shown.changedSince()));
        return shown.entry().counts() ? fields : fields.with("withdrawn", Json.of(true));
    }
}
