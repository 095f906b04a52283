package thalweg.cli;

import java.util.ArrayList;
import java.util.List;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TablePlan;
import thalweg.exchange.table.TableReport;
import thalweg.fault.Sentence;
import thalweg.service.ImportTable;
import thalweg.text.Phrases;

/**
 * A table that comes in.
 *
 * @param findings what is wrong with the file; then the rest says nothing
 * @param table as it was read
 * @param columns what they are taken for
 */
record TableImport(List<Sentence> findings, Table table, Columns columns) {

    /** Rows that are told one by one; the others are counted. */
    private static final int MOST_ROWS = 100;

    TableImport {
        findings = List.copyOf(findings);
    }

    /** What would become of it, for a person. */
    String told(ImportTable.Preview preview, TableReport report, Phrases phrases) {
        TablePlan plan = preview.plan();
        List<String> lines = new ArrayList<>();
        lines.add(phrases.say("table.taken_for"));
        report.columns(table.headings(), columns).forEach(line -> lines.add("  " + line));
        if (!plan.leftOut().isEmpty()) {
            lines.add(phrases.say("table.left_out", String.join(", ", plan.leftOut())));
        }
        lines.add(phrases.say("table.first"));
        report.first(preview.first()).forEach(line -> lines.add("  " + line));
        lines.add(phrases.say("table.rows"));
        report.rows(plan, MOST_ROWS).forEach(line -> lines.add("  " + line));
        lines.add(report.count(plan));
        if (plan.isRefused()) {
            lines.add(phrases.say("table.refused"));
        }
        return String.join("\n", lines);
    }
}
