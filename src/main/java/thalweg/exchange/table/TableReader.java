package thalweg.exchange.table;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.json.Findings;

/**
 * Reads a table: cells in quotes may hold separators, line ends and quotes that stand twice. A row that is broken is a
 * finding with its line. Lines without anything are passed over.
 *
 * @see "RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files"
 */
public final class TableReader {

    /** More rows are no logbook of one keeper. */
    static final int MOST_ROWS = 200_000;

    /** More columns are no list of canyons. */
    static final int MOST_COLUMNS = 200;

    /** Longest cell, in characters: as long as a text of a file of records may be. */
    static final int LONGEST_CELL = 20_000;

    private static final char QUOTE = '"';

    private final String text;
    private final char separator;
    private final Findings findings;
    private final List<Table.Row> rows = new ArrayList<>();
    private List<String> headings = List.of();
    private int at;
    private int line = 1;

    private TableReader(String text, char separator, Findings findings) {
        this.text = text;
        this.separator = separator;
        this.findings = findings;
    }

    /**
     * The table in the bytes of a file.
     *
     * @param bytes UTF-8, with or without a byte order mark
     * @param separator that parts its cells; found by looking where it is empty
     * @param findings what is wrong; the rows that are sound are there all the same
     */
    public static Table read(byte[] bytes, Optional<Separator> separator, Findings findings) {
        Optional<String> text = text(bytes);
        if (text.isEmpty()) {
            findings.add(
                    "",
                    lineOfBrokenText(bytes),
                    Sentence.of("this is not UTF-8 text; save the table as CSV in UTF-8."));
            return Table.EMPTY;
        }
        return read(text.get(), separator, findings);
    }

    /** The text of a file without its byte order mark; empty where it is not UTF-8. */
    public static Optional<String> text(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    /** The same of a text. */
    public static Table read(String text, Optional<Separator> separator, Findings findings) {
        Separator found = separator.orElseGet(() -> Separator.in(text));
        TableReader reader = new TableReader(text, found.sign(), findings);
        reader.all();
        return new Table(found, reader.headings, reader.rows);
    }

    /** The line up to which the bytes are UTF-8, from 1. */
    private static int lineOfBrokenText(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        StandardCharsets.UTF_8.newDecoder().decode(in, out, true);
        int line = 1;
        for (int i = 0; i < in.position(); i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }

    private void all() {
        boolean first = true;
        while (at < text.length()) {
            int begins = line;
            Optional<List<String>> cells = row(begins);
            if (cells.isEmpty()) {
                if (first) {
                    return;
                }
                continue;
            }
            if (cells.get().size() == 1 && cells.get().get(0).isBlank()) {
                continue;
            }
            if (first) {
                first = false;
                if (cells.get().size() > MOST_COLUMNS) {
                    findings.add("", begins, Sentence.of("there are more than {0} columns.", MOST_COLUMNS));
                    return;
                }
                headings = cells.get().stream().map(Guard::taken).toList();
            } else if (rows.size() == MOST_ROWS) {
                findings.add("", begins, Sentence.of("there are more than {0} rows; split the file.", MOST_ROWS));
                return;
            } else {
                add(begins, cells.get());
            }
        }
        if (headings.isEmpty() && findings.none()) {
            findings.add(
                    "",
                    1,
                    Sentence.of("the file is empty; it should begin with a line of headings, then a row a line."));
        }
    }

    private void add(int begins, List<String> cells) {
        if (cells.size() != headings.size()) {
            findings.add(
                    "",
                    begins,
                    Sentence.of(
                            "cells are {0} where headings are {1}; a cell that holds the sign between cells, or"
                                    + " a line end, needs quotes around it.",
                            cells.size(), headings.size()));
            return;
        }
        rows.add(new Table.Row(begins, cells.stream().map(Guard::taken).toList()));
    }

    /** The cells up to the end of the row; empty where they are broken, and then the rest of that line is passed over. */
    private Optional<List<String>> row(int begins) {
        List<String> cells = new ArrayList<>();
        while (true) {
            Optional<String> cell = at < text.length() && text.charAt(at) == QUOTE ? quoted(begins) : bare(begins);
            if (cell.isEmpty()) {
                toLineEnd();
                return Optional.empty();
            }
            if (cell.get().length() > LONGEST_CELL || cells.size() > MOST_COLUMNS) {
                findings.add(
                        "",
                        begins,
                        Sentence.of(
                                "the row goes beyond what is read safely: {0} columns, and {1} characters in a cell.",
                                MOST_COLUMNS, LONGEST_CELL));
                toLineEnd();
                return Optional.empty();
            }
            cells.add(cell.get());
            if (at < text.length() && text.charAt(at) == separator) {
                at++;
            } else {
                endLine();
                return Optional.of(cells);
            }
        }
    }

    private Optional<String> bare(int begins) {
        int from = at;
        while (at < text.length() && !endsCell(text.charAt(at))) {
            if (text.charAt(at) == QUOTE) {
                findings.add(
                        "",
                        begins,
                        Sentence.of("a quote stands within a cell that does not begin with one; put the whole cell in"
                                + " quotes and write the quote twice."));
                return Optional.empty();
            }
            at++;
        }
        return Optional.of(text.substring(from, at));
    }

    private Optional<String> quoted(int begins) {
        StringBuilder cell = new StringBuilder();
        int opened = line;
        at++;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c == QUOTE && at + 1 < text.length() && text.charAt(at + 1) == QUOTE) {
                cell.append(QUOTE);
                at += 2;
            } else if (c == QUOTE) {
                at++;
                if (at == text.length() || endsCell(text.charAt(at))) {
                    return Optional.of(cell.toString());
                }
                findings.add(
                        "",
                        begins,
                        Sentence.of("something stands behind the quote that closes a cell; a quote within a cell is"
                                + " written twice."));
                return Optional.empty();
            } else {
                if (c == '\n' || (c == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n'))) {
                    line++;
                }
                cell.append(c);
                at++;
            }
        }
        findings.add("", opened, Sentence.of("a quote is opened and never closed; the file may have been cut off."));
        return Optional.empty();
    }

    private boolean endsCell(char c) {
        return c == separator || c == '\n' || c == '\r';
    }

    private void toLineEnd() {
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        endLine();
    }

    private void endLine() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
            line += at < text.length() && text.charAt(at) == '\n' ? 0 : 1;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
            line++;
        }
    }
}
