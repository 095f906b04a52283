package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thalweg.logbook.LineRecord;
import thalweg.testing.Around;
import thalweg.testing.ShownFields;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/** Every field of every record has a place on the screen. */
final class ShownOnScreenTest {

    private static final Surroundings AROUND = Around.classic();

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyFieldIsShown(int seed) {
        ShownFields fields = new ShownFields(seed);
        LineRecord place = fields.record().line().get(0);
        List<Paragraph> canyon = About.canyon(fields.record(), AROUND);
        List<Paragraph> alone = About.place(new LineRecord(place.number(), place.obstacle(), List.of()), AROUND);
        List<StationRow> rows = StationRow.of(place.stations().get(0), Map.of(), AROUND);
        Stream<Paragraph> station = rows.stream().flatMap(row -> row.detail().stream());

        assertThat(fields.missingIn(text(canyon.stream()), "canyon")).isEmpty();
        assertThat(fields.missingIn(text(alone.stream()), "obstacle")).isEmpty();
        assertThat(fields.missingIn(text(station), "station", "anchor", "part", "inspection", "note"))
                .isEmpty();
    }

    private static String text(Stream<Paragraph> paragraphs) {
        return paragraphs.map(Paragraph::text).collect(Collectors.joining("\n"));
    }
}
