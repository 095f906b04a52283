package thalweg.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.sheet.markdown.MarkdownSheet;
import thalweg.sheet.text.TextSheet;
import thalweg.testing.GoldenFile;

class PocketAndCardTest {

    @Test
    void theSheetForThePocketReadsAsReviewed() {
        GoldenFile.holds("sheet/pocket.txt", TextSheet.render(SampleSheets.pocket()));
    }

    @Test
    void theCardReadsAsReviewed() {
        GoldenFile.holds("sheet/card.txt", TextSheet.render(SampleSheets.card()));
    }

    private static List<String> texts(Sheet sheet) {
        return Stream.concat(
                        SheetTexts.of(sheet.head()).stream(),
                        SheetTexts.sections(sheet)
                                .flatMap(section -> Stream.concat(
                                        Stream.of(section.heading()), SheetTexts.of(section.blocks()).stream())))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7})
    void thePocketHasEveryPlaceStationAndPart(long seed) {
        RandomCanyon canyon = new RandomCanyon(seed, word -> word);
        CanyonRecord record = canyon.record();
        String text = String.join("\n", texts(canyon.pocket()));

        assertThat(record.line())
                .allSatisfy(place -> assertThat(text).contains(place.obstacle().name()));
        assertThat(record.stations())
                .allSatisfy(one -> assertThat(text).contains(one.station().name()));
        assertThat(record.stations().stream().map(StationRecord::parts).flatMap(List::stream))
                .allSatisfy(part -> assertThat(text).contains(part.part().label()));
    }

    @Test
    void thePocketTellsTheConditionOfEachPartAsTheWholeSheetDoes() {
        CanyonRecord record = new FullCanyon().record();
        List<String> pocket = texts(SampleSheets.pocket());

        List<PartRecord> seen = record.stations().stream()
                .flatMap(station -> station.parts().stream())
                .filter(part -> part.state().condition().isPresent())
                .toList();
        assertThat(seen).isNotEmpty();
        assertThat(seen).allSatisfy(part -> {
            String word = part.state().condition().orElseThrow().name().toLowerCase(Locale.ROOT);
            assertThat(pocket)
                    .anyMatch(line -> line.contains(part.part().label() + ": ") && line.contains(" " + word + ", "));
        });
    }

    @Test
    void bothBeginWithWhatToBewareOf() {
        List<String> cautions = SheetTexts.of(SampleSheets.full().head());

        assertThat(cautions).anyMatch(line -> line.contains("does not replace training"));
        assertThat(SheetTexts.of(SampleSheets.pocket().head())).containsAll(cautions);
        assertThat(SheetTexts.of(SampleSheets.card().head()))
                .containsAll(cautions.stream()
                        .filter(line -> line.contains("training") || line.contains("invented"))
                        .toList());
    }

    @Test
    void aCardIsAboutItsStationAlone() {
        FullCanyon canyon = new FullCanyon();
        List<StationRecord> stations = canyon.record().stations();
        String card = MarkdownSheet.render(SampleSheets.card());

        assertThat(stations).hasSizeGreaterThan(1);
        assertThat(card).contains(stations.get(0).station().name());
        assertThat(stations.subList(1, stations.size()))
                .allSatisfy(other -> assertThat(card)
                        .doesNotContain("Station: " + other.station().name()));
    }
}
