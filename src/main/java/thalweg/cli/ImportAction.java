package thalweg.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.table.TableReport;
import thalweg.fault.Sentence;
import thalweg.progress.Progress;
import thalweg.service.ImportRecords;
import thalweg.service.ImportTable;
import thalweg.service.ReadFile;
import thalweg.service.ReadWaypoints;
import thalweg.service.Session;
import thalweg.text.Clean;

/** Takes in a file of records, or says what is in a file of waypoints. */
@Command(
        name = "import",
        description = {
            "Shows what a file of records or a table would change, and takes it in when that is accepted.",
            "All of it is taken in or nothing. Nothing is written without --accept or a yes.",
            "Of a table (CSV) it says what each column is taken for and what becomes of each row.",
            "Of a file of waypoints (GPX or GeoJSON) it says what is in it; they are placed in the screen."
        })
final class ImportAction extends Action {

    private static final int MOST_FINDINGS = 40;
    private static final int LONGEST_VALUE = 60;

    @Parameters(
            paramLabel = "FILE",
            description = "a JSON file of records, a CSV table, or a GPX or GeoJSON file of waypoints")
    private Path file = Path.of("");

    @Option(names = "--dry-run", description = "only show what would change")
    private boolean dryRun;

    @Option(names = "--accept", description = "take it in without asking")
    private boolean accept;

    @Mixin
    private final TableOptions table = new TableOptions();

    ImportAction(Surrounds surrounds) {
        super(surrounds);
    }

    @Override
    public Integer call() {
        byte[] bytes = ReadFile.bytes(file);
        if (ReadWaypoints.looksLikeOne(bytes)) {
            return waypoints(ReadWaypoints.of(file.toString(), bytes));
        }
        if (table.isMeant(file, bytes)) {
            return table(bytes);
        }
        try (Session session = shared().exists() ? shared().writing() : shared().trial()) {
            ImportRecords records = new ImportRecords(session);
            ImportRecords.Preview preview = records.preview(file.toString(), bytes);
            if (!preview.findings().isEmpty()) {
                refuse(preview.findings());
                return ExitCodes.WRONG_INPUT;
            }
            print(report(preview.plan()));
            return decide(preview.plan(), records);
        }
    }

    private int table(byte[] bytes) {
        TableImport columns = table.read(file, bytes);
        if (!columns.findings().isEmpty()) {
            refuse(columns.findings());
            return ExitCodes.WRONG_INPUT;
        }
        try (Session session = shared().exists() ? shared().writing() : shared().trial()) {
            ImportTable.Preview preview =
                    new ImportTable(session).preview(columns.table(), columns.columns(), Progress.UNWATCHED);
            print(columns.told(preview, new TableReport(phrases(), shared().units()), phrases()));
            if (preview.plan().isRefused()) {
                return ExitCodes.WRONG_INPUT;
            }
            print(report(preview.plan().plan()));
            return decide(preview.plan().plan(), new ImportRecords(session));
        }
    }

    private int decide(ImportPlan plan, ImportRecords records) {
        if (plan.isEmpty()) {
            tell(Sentence.of("There is nothing to take in."));
            return ExitCodes.DONE;
        }
        if (dryRun || !accepted()) {
            tell(
                    dryRun
                            ? Sentence.of("Nothing was written.")
                            : Sentence.of("Nothing was written; add --accept to take it in."));
            return dryRun ? ExitCodes.DONE : ExitCodes.NO;
        }
        take(plan, records);
        tell(Sentence.of("Taken in."));
        return ExitCodes.DONE;
    }

    /** A database that was not there is made only now, when there is something to put in. */
    private void take(ImportPlan plan, ImportRecords records) {
        if (shared().exists()) {
            records.accept(plan);
            return;
        }
        try (Session made = shared().creating()) {
            new ImportRecords(made).accept(plan);
        }
    }

    private void refuse(List<Sentence> findings) {
        tell(
                findings.size() == 1
                        ? Sentence.of("{0} was not taken in; one thing is wrong in it:", file)
                        : Sentence.of("{0} was not taken in; {1} things are wrong in it:", file, findings.size()));
        findings.stream()
                .limit(MOST_FINDINGS)
                .forEach(line -> tell("  " + phrases().say(line)));
        if (findings.size() > MOST_FINDINGS) {
            tell(Sentence.of("  and {0} more.", findings.size() - MOST_FINDINGS));
        }
    }

    /** Where an anchor is, nothing decides for a person: a file of waypoints is only looked into here. */
    private int waypoints(ReadWaypoints.Answer answer) {
        if (!answer.findings().isEmpty()) {
            refuse(answer.findings());
            return ExitCodes.WRONG_INPUT;
        }
        if (accept) {
            tell(Sentence.of(
                    "{0} holds waypoints, and --accept cannot say what each of them is. {1}",
                    file, WaypointReport.HOW));
            return ExitCodes.WRONG_INPUT;
        }
        print(WaypointReport.of(answer.file(), shared().units(), phrases()));
        return ExitCodes.DONE;
    }

    private boolean accepted() {
        if (accept) {
            return true;
        }
        if (!surrounds().asksPeople().getAsBoolean()) {
            return false;
        }
        surrounds().err().print(phrases().say(Sentence.of("Take it in? Type yes to do so: ")));
        surrounds().err().flush();
        Scanner answer = new Scanner(surrounds().in(), StandardCharsets.UTF_8);
        return answer.hasNextLine()
                && answer.nextLine().strip().toLowerCase(Locale.ROOT).equals("yes");
    }

    private String report(ImportPlan plan) {
        StringBuilder out = new StringBuilder();
        out.append(plan.isEmpty() ? "Nothing new in " : "Found in ")
                .append(plan.canyons() == 1 ? "1 canyon" : plan.canyons() + " canyons")
                .append(": ")
                .append(count(plan.added(), "new thing", "new things"))
                .append(count(plan.facts().size(), "new entry", "new entries"))
                .append(count(plan.revisions().size() - plan.added(), "changed thing", "changed things"))
                .append(plan.unchanged())
                .append(" here already.\n");
        plan.remarks().forEach(remark -> out.append(phrases().say(remark)).append('\n'));
        plan.changes()
                .forEach(change -> out.append("  ")
                        .append(change.thing())
                        .append(", ")
                        .append(change.field())
                        .append(": ")
                        .append(shown(change.before()))
                        .append(" -> ")
                        .append(shown(change.after()))
                        .append('\n'));
        return out.toString();
    }

    private static String count(int number, String one, String more) {
        return number + " " + (number == 1 ? one : more) + ", ";
    }

    private static String shown(String value) {
        return value.isEmpty() ? "(nothing)" : Clean.line(value, LONGEST_VALUE);
    }
}
