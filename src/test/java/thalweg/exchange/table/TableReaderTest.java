package thalweg.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thalweg.json.Finding;
import thalweg.json.Findings;

final class TableReaderTest {

    private static final String[] PIECES = {
        "a",
        "é",
        "滝",
        "\"",
        "\"\"",
        ",",
        ";",
        "\t",
        "\r\n",
        "\n",
        " ",
        "'",
        "=",
        "'=",
        "''-",
        "@",
        "1.5",
        "\uD83D\uDE00"
    };

    private final Findings findings = new Findings();

    private Table read(String text) {
        return TableReader.read(text.getBytes(StandardCharsets.UTF_8), Optional.empty(), findings);
    }

    private List<String> found() {
        return findings.all().stream().map(Finding::print).toList();
    }

    /** The writer is the library's, which knows nothing of this reader. Source of the grammar: RFC 4180, section 2. */
    @ParameterizedTest
    @EnumSource(Separator.class)
    void whatAnotherProgramWritesIsReadToTheLetter(Separator separator) throws IOException {
        Random random = new Random(4180);
        for (LineDelimiter end : List.of(LineDelimiter.CRLF, LineDelimiter.LF)) {
            for (int round = 0; round < 300; round++) {
                int width = 2 + random.nextInt(4);
                List<List<String>> lines = new ArrayList<>();
                lines.add(IntStream.range(0, width).mapToObj(i -> "h" + i).toList());
                for (int i = random.nextInt(6); i > 0; i--) {
                    lines.add(random.ints(width, 0, 6)
                            .mapToObj(length -> word(random, length))
                            .toList());
                }
                StringWriter out = new StringWriter();
                try (CsvWriter csv = CsvWriter.builder()
                        .fieldSeparator(separator.sign())
                        .lineDelimiter(end)
                        .build(out)) {
                    for (List<String> line : lines) {
                        csv.writeRecord(line.stream().map(Guard::put).toList());
                    }
                }

                Table table = read(out.toString());

                assertThat(found()).isEmpty();
                assertThat(table.separator()).isEqualTo(separator);
                assertThat(table.rows()).extracting(Table.Row::cells).isEqualTo(lines.subList(1, lines.size()));
            }
        }
    }

    private static String word(Random random, int length) {
        StringBuilder word = new StringBuilder();
        for (int i = 0; i < length; i++) {
            word.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return word.toString();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {"=1+1,'=1+1", "'=1+1,''=1+1", "plain,plain", "'plain,'plain", "-3.5,'-3.5", "'',''", "` =x`,`' =x`"
            })
    void aGuardIsPutAndTakenAwayAgain(String text, String cell) {
        assertThat(Guard.put(text)).isEqualTo(cell);
        assertThat(Guard.taken(cell)).isEqualTo(text);
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstHeading() {
        assertThat(read("\uFEFFname,kind\r\na,b\r\n").headings()).containsExactly("name", "kind");
    }

    @Test
    void aRowIsNamedByTheLineOnWhichItBegins() {
        Table table = read("name,note\na,\"one\ntwo\r\nthree\"\n\nb,x\n");

        assertThat(table.rows()).extracting(Table.Row::line).containsExactly(2, 6);
    }

    @Test
    void aRowOfAnotherLengthIsNamedByItsLineAndTheOthersAreRead() {
        Table table = read("name,note\na,b\nc\nd,e,f\ng,h\n");

        assertThat(table.rows()).extracting(Table.Row::line).containsExactly(2, 5);
        assertThat(found()).hasSize(2);
        assertThat(found().get(0)).startsWith("line 3: cells are 1 where headings are 2");
        assertThat(found().get(1)).startsWith("line 4: cells are 3");
    }

    @Test
    void aQuoteThatIsNeverClosedIsNamedWhereItOpens() {
        read("name,note\na,b\nc,\"open\nd,e\n");

        assertThat(found()).singleElement().asString().startsWith("line 3: a quote is opened and never closed");
    }

    @Test
    void quotesOutOfPlaceAreRefusedByTheirLine() {
        read("name,note\na,5\" wide\nb,\"x\" y\nc,d\n");

        assertThat(found()).hasSize(2);
        assertThat(found().get(0)).startsWith("line 2: a quote stands within a cell");
        assertThat(found().get(1)).startsWith("line 3: something stands behind the quote");
    }

    @Test
    void whatIsNoUtf8IsNamedByTheLineUpToWhichItIs() {
        byte[] latin = "name,note\na,b\nR\u00EDo,x\n".getBytes(StandardCharsets.ISO_8859_1);

        Table table = TableReader.read(latin, Optional.empty(), findings);

        assertThat(table.rows()).isEmpty();
        assertThat(found()).containsExactly("line 3: this is not UTF-8 text; save the table as CSV in UTF-8.");
    }

    @Test
    void anEmptyFileIsToldAndOneOfHeadingsAloneHasNoRows() {
        assertThat(read("\uFEFF\n\n").rows()).isEmpty();
        assertThat(found()).singleElement().asString().contains("the file is empty");
        assertThat(read("name,kind\n").rows()).isEmpty();
    }

    @Test
    void whatGoesBeyondTheLimitsIsRefused() {
        read("name,note\na," + "x".repeat(TableReader.LONGEST_CELL + 1) + "\n");
        read("h" + ",h".repeat(TableReader.MOST_COLUMNS) + "\n");

        assertThat(found()).hasSize(2);
        assertThat(found().get(0)).startsWith("line 2: the row goes beyond");
        assertThat(found().get(1)).contains("more than 200 columns");
    }
}
