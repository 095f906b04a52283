package thalweg.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.exchange.table.Columns;
import thalweg.exchange.table.Field;
import thalweg.exchange.table.Separator;
import thalweg.exchange.table.Table;
import thalweg.exchange.table.TableKind;
import thalweg.exchange.table.Target;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.service.ImportTable;
import thalweg.text.Fold;

/** How a table that comes in is to be understood. */
final class TableOptions {

    @Option(
            names = "--as",
            paramLabel = "KIND",
            description =
                    "what the rows of a table are: canyons, stations, parts or inspections; needed unless the headings"
                            + " tell")
    private @Nullable String kind;

    @Option(
            names = "--column",
            paramLabel = "\"THEIR NAME=FIELD\"",
            description =
                    "a column of the table, and the field that it is; a field may have its unit behind it, as height_m;"
                            + " nothing behind the sign leaves the column out")
    private List<String> columns = new ArrayList<>();

    @Option(
            names = "--set",
            paramLabel = "FIELD=VALUE",
            description = "what every row says where the table has no column for it, as canyon=\"Long Gully\"")
    private List<String> everywhere = new ArrayList<>();

    @Option(
            names = "--separator",
            paramLabel = "SIGN",
            description = "comma, semicolon or tab; found by looking unless given")
    private @Nullable String separator;

    /** Whether a file is to be read as a table: because somebody says so, by its name, or by what is in it. */
    boolean isMeant(Path file, byte[] bytes) {
        boolean said = kind != null || separator != null || !columns.isEmpty() || !everywhere.isEmpty();
        boolean looks = ImportTable.looksLikeOne(bytes);
        if (said && !looks) {
            throw new InputException(
                    Sentence.of("{0} is no table; leave out --as, --column, --set and --separator.", file));
        }
        String name = file.toString().toLowerCase(Locale.ROOT);
        return said
                || (looks
                        && (name.endsWith(".csv")
                                || name.endsWith(".tsv")
                                || ImportTable.kind(ImportTable.read(bytes, Optional.empty())
                                                .table())
                                        .isPresent()));
    }

    /**
     * The table, and what its columns are taken for.
     *
     * @throws InputException when an option names what is not there
     */
    TableImport read(Path file, byte[] bytes) {
        ImportTable.Read read =
                ImportTable.read(bytes, Optional.ofNullable(separator).map(TableOptions::separator));
        if (!read.findings().isEmpty()) {
            return new TableImport(read.findings(), read.table(), new Columns(TableKind.CANYONS, List.of()));
        }
        TableKind asked = Optional.ofNullable(kind)
                .map(TableOptions::kind)
                .or(() -> ImportTable.kind(read.table()))
                .orElseThrow(() -> new InputException(Sentence.of(
                        "{0} is a table, and its headings do not tell what its rows are; say --as with one of: {1}.",
                        file, TableKind.words())));
        Columns guessed = ImportTable.guess(read.table(), asked);
        for (String column : columns) {
            guessed = mapped(column, read.table(), guessed);
        }
        Table whole = read.table();
        for (String one : everywhere) {
            int sign = one.indexOf('=');
            Target target = target(sign < 0 ? one : one.substring(0, sign), asked);
            if (sign < 0 || guessed.targets().contains(Optional.of(target))) {
                throw new InputException(Sentence.of(
                        "--set \"{0}\" should be FIELD=VALUE, with a field that no column is taken for.", one));
            }
            whole = whole.plus(target.word(), one.substring(sign + 1));
            List<Optional<Target>> more = new ArrayList<>(guessed.targets());
            more.add(Optional.of(target));
            guessed = new Columns(asked, more);
        }
        refuseTwice(guessed);
        return new TableImport(List.of(), whole, guessed);
    }

    private static Columns mapped(String option, Table table, Columns columns) {
        int sign = option.lastIndexOf('=');
        if (sign < 0) {
            throw new InputException(
                    Sentence.of("--column \"{0}\" should be a heading of the table, then =, then a field.", option));
        }
        String heading = option.substring(0, sign).strip();
        String word = option.substring(sign + 1).strip();
        int column = column(heading, table.headings());
        if (word.isEmpty()) {
            return columns.with(column, Optional.empty());
        }
        Target target = target(word, columns.kind());
        Columns changed = columns;
        for (int i = 0; i < table.headings().size(); i++) {
            boolean same = columns.targets()
                    .get(i)
                    .filter(other -> other.field() == target.field())
                    .isPresent();
            changed = same ? changed.with(i, Optional.empty()) : changed;
        }
        return changed.with(column, Optional.of(target));
    }

    private static int column(String heading, List<String> headings) {
        int exact = headings.indexOf(heading);
        if (exact >= 0) {
            return exact;
        }
        for (int i = 0; i < headings.size(); i++) {
            if (Fold.fold(headings.get(i)).equals(Fold.fold(heading))) {
                return i;
            }
        }
        throw new InputException(Sentence.of(
                "The table has no column \"{0}\"; its columns are: {1}.", heading, String.join(", ", headings)));
    }

    private static Target target(String word, TableKind kind) {
        return Target.of(word.strip().toLowerCase(Locale.ROOT))
                .filter(target -> kind.has(target.field()))
                .orElseThrow(() -> new InputException(Sentence.of(
                        "\"{0}\" is no field of {1}; fields are: {2}.",
                        word,
                        Sentence.plain(kind.word()),
                        kind.fields().stream().map(Field::word).collect(Collectors.joining(", ")))));
    }

    private static void refuseTwice(Columns columns) {
        if (!columns.twice().isEmpty()) {
            throw new InputException(Sentence.of(
                    "Two columns are taken for {0}; leave one of them out, as --column \"Name=\".",
                    columns.twice().get(0).word()));
        }
    }

    private static TableKind kind(String word) {
        return TableKind.of(word.strip().toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new InputException(
                        Sentence.of("\"{0}\" is no kind of table; --as takes one of: {1}.", word, TableKind.words())));
    }

    private static Separator separator(String word) {
        return Separator.of(word.strip().toLowerCase(Locale.ROOT))
                .orElseThrow(() -> new InputException(Sentence.of(
                        "\"{0}\" is no separator; --separator takes one of: {1}.", word, Separator.words())));
    }
}
