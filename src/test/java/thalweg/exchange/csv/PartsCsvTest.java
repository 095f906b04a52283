package thalweg.exchange.csv;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRow;
import thalweg.logbook.PartState;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

class PartsCsvTest {

    private final RandomRecords random = new RandomRecords(3, Fill.NOTHING);

    private PartRow row(String canyon, String batch) {
        Part bare = random.things().part(random.uid(), random.uid(), "V");
        Part part = new Part(
                bare.uid(),
                bare.anchor(),
                bare.order(),
                "left",
                bare.kind(),
                new Part.Hardware("", "", "", "", batch),
                Optional.of(PartialDate.parse("2019-06")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        PartState state = new PartState(
                Optional.of(Condition.WORN), Optional.of(PartialDate.parse("2024")), true, Optional.empty(), 2);
        return new PartRow(
                random.uid(),
                canyon,
                random.uid(),
                "Upper",
                Optional.empty(),
                true,
                part,
                state,
                Optional.of(PartialDate.parse("2021-05-04")));
    }

    private static List<CsvRecord> read(String csv) {
        return CsvReader.builder().ofCsvRecord(csv).stream().toList();
    }

    @Test
    void everyPartIsALineUnderTheNamesOfTheColumns() {
        List<CsvRecord> records = read(PartsCsv.write(List.of(row("Gorge", "A 1"), row("Other", ""))));

        assertThat(records).hasSize(3);
        assertThat(records.get(0).getFields())
                .startsWith("canyon", "station", "part", "kind")
                .hasSize(19);
        assertThat(records.get(1).getFields())
                .startsWith("Gorge", "Upper", "left")
                .containsSubsequence("A 1", "2019-06", "2021-05-04", "worn", "2024", "yes", "", "yes")
                .hasSize(19);
        assertThat(records.get(2).getField(8)).isEmpty();
        assertThat(PartsCsv.write(List.of()).lines()).hasSize(1);
    }

    /** RFC 4180, 2.1 and 2.5 to 2.7. */
    @Test
    void linesEndInTwoCharactersAndQuotesAreDoubled() {
        String csv = PartsCsv.write(List.of(row("The \"big\", one", "")));

        assertThat(csv).endsWith("\r\n").contains("\"The \"\"big\"\", one\",Upper,");
        assertThat(csv.replace("\r\n", "")).doesNotContain("\n", "\r");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+44", "-12", "@SUM(A1)", "|calc", "%x", " =1", "\t=1", "＝1", "=\"a\",b"})
    void whatASpreadsheetCouldTakeForAFormulaIsGuarded(String batch) {
        List<CsvRecord> records = read(PartsCsv.write(List.of(row("Gorge", batch))));

        assertThat(records.get(1).getField(8)).isEqualTo("'" + batch);
    }

    @ParameterizedTest
    @ValueSource(strings = {"A-12", "1=2", "", "'x", "a@b", "10 x 90 mm"})
    void whatIsNoFormulaStaysAsItIs(String batch) {
        assertThat(read(PartsCsv.write(List.of(row("Gorge", batch)))).get(1).getField(8))
                .isEqualTo(batch);
    }
}
