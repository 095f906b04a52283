package thalweg.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.logbook.Condition;
import thalweg.logbook.PartRecord;
import thalweg.service.LoadPhrases;
import thalweg.testing.GoldenFile;
import thalweg.text.Phrases;
import thalweg.text.Width;

final class TimelineTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static final Phrases PHRASES = LoadPhrases.english();

    private static Timeline of(PartRecord... parts) {
        return Timeline.of(List.of(parts), TODAY);
    }

    private static List<String> labels(Timeline timeline) {
        return timeline.lines().stream().map(line -> line.part().label()).toList();
    }

    private static String row(PartRecord part, int columns) {
        return TimelineText.lines(of(part), columns, PHRASES).get(0);
    }

    @Test
    void theWorstStandsOnTopAndWhatNobodyKnowsAboveWhatIsKnownToHold() {
        Timeline timeline = of(
                PartsOverYears.of("sound", "", "2026-05-01 sound"),
                PartsOverYears.of("never", "2019"),
                PartsOverYears.of("worn", "", "2026-05-01 worn"),
                PartsOverYears.of("gone", "", "2026-05-01 gone"),
                PartsOverYears.of("unsafe", "", "2026-05-01 unsafe"),
                PartsOverYears.of("doubtful", "", "2026-05-01 doubtful"));

        assertThat(labels(timeline)).containsExactly("gone", "unsafe", "doubtful", "never", "worn", "sound");
    }

    @Test
    void ofThoseAlikeTheOneNobodyLookedAtLongestComesFirst() {
        Timeline timeline = of(
                PartsOverYears.of("new", "", "2026-05-01 worn"),
                PartsOverYears.of("year", "", "2019 worn"),
                PartsOverYears.of("day in it", "", "2019-06-01 worn"));

        assertThat(labels(timeline)).containsExactly("day in it", "year", "new");
    }

    @Test
    void aVagueDateIsDrawnAsLongAsItMayBe() {
        assertThat(row(PartsOverYears.of("bolt", "", "2020-01-01 sound", "2023 worn", "2026-11-01 worn"), 62))
                .matches("bolt  \\+\\.+=+~=+\\.+~\\.*  ~ worn");
    }

    @Test
    void aPartThatWasNotSeenSaysSoWhereItIs() {
        assertThat(row(PartsOverYears.of("bolt", "", "2020-01-01 sound", "2023-06-01 unseen"), 62))
                .matches("bolt  \\+\\.+o\\.+  \\+ sound");
    }

    @Test
    void nothingIsDrawnBeforeItWasSeenAndAfterItWasGone() {
        List<String> lines = TimelineText.lines(
                of(
                        PartsOverYears.of("old", "", "2010-01-01 sound", "2026-06-01 sound"),
                        PartsOverYears.of("late", "", "2018-01-01 sound", "2022-01-01 gone")),
                62,
                PHRASES);

        assertThat(lines.get(0)).matches("late  {5,}\\+\\.+x {5,}x gone");
        assertThat(lines.get(1)).matches("old   \\+\\.+\\+\\.*   *\\+ sound");
    }

    @Test
    void betweenBeingGoneAndBeingSeenAgainNothingIsThere() {
        assertThat(row(PartsOverYears.of("bolt", "2018-01-01", "2020-01-01 gone", "2024-01-01 sound"), 62))
                .matches("bolt  \\.+x {5,}\\+\\.+  . .+");
    }

    @Test
    void foundAndLeftAreBothTold() {
        assertThat(row(
                        PartsOverYears.of(
                                "bolt", "2019-01-01", "2021-06-01 unsafe sound", "2024-06-01 gone sound replaced"),
                        62))
                .matches("bolt  \\.+!>\\+\\.+x\\|\\+\\.+  \\+ sound");
    }

    @Test
    void whereThereIsNoRoomTheWorstIsTold() {
        assertThat(row(PartsOverYears.of("bolt", "2015-01-01", "2024-05-10 unsafe", "2024-05-12 sound"), 62))
                .matches("bolt  \\.+!\\*\\.+  . .+");
    }

    @Test
    void aPartOlderThanTheYearsIsMarkedAtTheEdge() {
        List<String> lines = TimelineText.lines(
                of(PartsOverYears.of("tree", "1850", "2020-05-01 sound", "2026-05-01 sound")), 62, PHRASES);

        assertThat(lines.get(0)).matches("tree  <\\.+\\+.*");
        assertThat(lines.get(1)).startsWith("      |2020");
        assertThat(String.join(" ", lines)).contains("< placed before 2020");
    }

    @Test
    void withoutAnyDateThereIsNothingToDraw() {
        assertThat(of().canBeDrawn()).isFalse();
        assertThat(of(PartsOverYears.of("bolt", "")).canBeDrawn()).isFalse();
        assertThat(of(PartsOverYears.of("bolt", "", "2031-01-01 sound")).canBeDrawn())
                .as("a date that has not come")
                .isFalse();
        assertThat(of(PartsOverYears.of("bolt", "2019")).canBeDrawn()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {24, 40, 56, 80, 120, 200})
    void noRowTellsBetterThanWasFoundAndNoSignsOverlap(int columns) {
        LongStream.range(0, 300)
                .mapToObj(PartsOverYears::random)
                .map(TimelineTest::of)
                .filter(Timeline::canBeDrawn)
                .forEach(timeline -> {
                    TimelineLayout layout = TimelineLayout.of(timeline, columns, PHRASES);
                    PartLine line = timeline.lines().get(0);
                    List<Sign> signs = layout.rows().get(0).signs();

                    assertThat(worst(signs.stream().map(Sign::worst)))
                            .isEqualTo(worst(line.inspections().stream()
                                    .flatMap(inspection -> Stream.of(inspection.found(), inspection.left()))));
                    for (int i = 0; i + 1 < signs.size(); i++) {
                        assertThat(signs.get(i).column() + signs.get(i).text().length())
                                .isLessThanOrEqualTo(signs.get(i + 1).column());
                    }
                    assertThat(TimelineText.lines(timeline, columns, PHRASES))
                            .allSatisfy(text -> assertThat(Width.of(text)).isLessThanOrEqualTo(columns));
                });
    }

    private static Optional<Condition> worst(Stream<Optional<Condition>> conditions) {
        return conditions.flatMap(Optional::stream).max(Comparator.naturalOrder());
    }

    @Test
    void plainTextLooksAsItDid() {
        Timeline timeline = Timeline.of(
                LongStream.range(0, 8).mapToObj(PartsOverYears::random).toList(), TODAY);

        GoldenFile.holds(
                "timeline.txt",
                Stream.of(40, 80, 120)
                        .map(columns -> String.join("\n", TimelineText.lines(timeline, columns, PHRASES)))
                        .collect(Collectors.joining("\n\n", "", "\n")));
    }
}
