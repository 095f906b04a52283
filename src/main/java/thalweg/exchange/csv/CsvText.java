package thalweg.exchange.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import thalweg.exchange.table.Guard;

/**
 * A table as CSV: commas, line ends of two characters, quotes where they are needed, a first line with the names of the
 * columns.
 *
 * @see "RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files"
 */
final class CsvText {

    private CsvText() {}

    /** One line, its end with it. */
    static String line(List<String> cells) {
        return of(cells, List.of(), row -> List.of());
    }

    /** One line of values, its end with it. */
    static String row(List<String> cells) {
        return line(cells.stream().map(Guard::put).toList());
    }

    static <T> String of(List<String> columns, List<T> rows, Function<T, List<String>> cells) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out)) {
            csv.writeRecord(columns);
            rows.forEach(row ->
                    csv.writeRecord(cells.apply(row).stream().map(Guard::put).toList()));
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory cannot be written", e);
        }
        return out.toString();
    }
}
