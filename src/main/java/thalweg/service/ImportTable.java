package thalweg.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.exchange.ImportPlan;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.Field;
import thalweg.exchange.table.GuessColumns;
import thalweg.exchange.table.ReadTable;
import thalweg.exchange.table.Separator;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.TablePlan;
import thalweg.exchange.table.TableReader;
import thalweg.exchange.table.TableReport;
import thalweg.exchange.table.TableWords;
import thalweg.exchange.table.Understood;
import thalweg.fault.Sentence;
import thalweg.json.Finding;
import thalweg.json.Findings;
import thalweg.logbook.Condition;
import thalweg.logbook.WaterLevel;
import thalweg.logbook.Work;
import thalweg.progress.Progress;
import thalweg.route.AnchorRole;
import thalweg.route.Exposure;
import thalweg.route.HoldsAlone;
import thalweg.route.ObstacleKind;
import thalweg.route.PartKind;
import thalweg.route.Side;
import thalweg.text.Language;
import thalweg.text.Phrases;

/** Takes in a table: its columns matched first, then as a plan that a person sees; accepted as any file of records is. */
public final class ImportTable {

    private final Session session;

    public ImportTable(Session session) {
        this.session = session;
    }

    /** Words in the languages of the program, read when a table is first met. */
    private static final class Words {
        private static final TableWords ALL = words();
    }

    /**
     * A table, and what is wrong with the file.
     *
     * @param findings a line each; where there are some, nothing is taken from the file
     * @param table its rows that are sound
     */
    public record Read(List<Sentence> findings, Table table) {
        public Read {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What a table would change.
     *
     * @param plan row by row
     * @param first rows, as they are understood
     */
    public record Preview(TablePlan plan, List<Understood> first) {
        public Preview {
            first = List.copyOf(first);
        }
    }

    /** Whether bytes can be a table: they begin neither as JSON nor as XML does. */
    public static boolean looksLikeOne(byte[] bytes) {
        int at = bytes.length > 2 && (bytes[0] & 0xFF) == 0xEF && (bytes[1] & 0xFF) == 0xBB ? 3 : 0;
        while (at < bytes.length && Character.isWhitespace(bytes[at])) {
            at++;
        }
        return at < bytes.length && bytes[at] != '{' && bytes[at] != '[' && bytes[at] != '<' && bytes[at] != 0;
    }

    /**
     * The table in a file.
     *
     * @param separator that parts its cells; found by looking where it is empty
     */
    public static Read read(byte[] bytes, Optional<Separator> separator) {
        Findings findings = new Findings();
        Table table = TableReader.read(bytes, separator, findings);
        return new Read(findings.all().stream().map(Finding::saying).toList(), table);
    }

    /** What comes of a table in which nothing can be read. */
    public static ImportRecords.Preview unread(Read read) {
        return new ImportRecords.Preview(read.findings(), ImportPlan.NOTHING);
    }

    /** The text of a file; empty where it is no text that is read here. */
    public static String text(byte[] bytes) {
        return TableReader.text(bytes).orElse("");
    }

    /** The words by which columns and values are understood. */
    public static TableWords allWords() {
        return Words.ALL;
    }

    /** What its rows seem to be; empty where the headings do not tell. */
    public static Optional<TableKind> kind(Table table) {
        return GuessColumns.kind(table.headings(), Words.ALL);
    }

    /** What its columns seem to be. */
    public static Columns guess(Table table, TableKind kind) {
        return new Columns(kind, new GuessColumns(kind, Words.ALL).of(table.headings()));
    }

    /** What taking it in would change; nothing is written. */
    public Preview preview(Table table, Columns columns, Progress progress) {
        ReadTable reader = new ReadTable(
                new InDatabase(session, progress),
                session::mint,
                session.keeper(),
                session.now(),
                session.today(),
                Words.ALL);
        return new Preview(reader.plan(table, columns), reader.first(table, columns, TableReport.FIRST_ROWS));
    }

    private static TableWords words() {
        TableWords.Builder words = new TableWords.Builder();
        for (Language language : Language.values()) {
            Phrases phrases = LoadPhrases.of(language);
            add(words, phrases, "obstacle", ObstacleKind.values());
            add(words, phrases, "side", Side.values());
            add(words, phrases, "exposure", Exposure.values());
            add(words, phrases, "role", AnchorRole.values());
            add(words, phrases, "part", PartKind.values());
            add(words, phrases, "holds", HoldsAlone.values());
            add(words, phrases, "condition", Condition.values());
            add(words, phrases, "water", WaterLevel.values());
            add(words, phrases, "work", Work.values());
            words.add("condition.not", "not_seen", "not_seen");
            words.add("condition.not", phrases.say("condition.not_seen"), "not_seen");
            each(phrases.say("table.yes"))
                    .forEach(word -> words.add("flag", word, "yes").add("holds", word, "yes"));
            each(phrases.say("table.no"))
                    .forEach(word -> words.add("flag", word, "no").add("holds", word, "no"));
            for (TableKind kind : TableKind.values()) {
                headings(words, phrases, kind);
            }
        }
        return words.done();
    }

    /** A word that several fields of a kind share is that of the first of them, as the kind has them in order. */
    private static void headings(TableWords.Builder words, Phrases phrases, TableKind kind) {
        List<String> taken = new ArrayList<>();
        for (Field field : kind.fields()) {
            for (String word : each(phrases.say("table.field." + field.word()))) {
                if (!taken.contains(word)) {
                    taken.add(word);
                    words.add(GuessColumns.HEADINGS + kind.word(), word, field.word());
                }
            }
        }
    }

    private static List<String> each(String words) {
        return List.of(words.split(";\\s*", -1));
    }

    /** The word as files have it, as people are shown it, the first of several that they are shown, others of the trade. */
    private static void add(TableWords.Builder words, Phrases phrases, String list, Enum<?>... values) {
        for (Enum<?> value : values) {
            String word = value.name().toLowerCase(Locale.ROOT);
            String said = phrases.say(list + "." + word);
            words.add(list, word, word);
            words.add(list, said, word);
            words.add(list, said.split(",", 2)[0], word);
            String others = "table.word." + list + "." + word;
            if (phrases.has(others)) {
                each(phrases.say(others)).forEach(other -> words.add(list, other, word));
            }
        }
    }
}
