package thalweg.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.logbook.CanyonRecord;

/** What is unknown is drawn as unknown, and said. */
class ProfileWordsTest {

    private static final String LEVEL =
            "Between places the line is drawn level, because how the bed falls there is not on record.";

    private static ProfilePicture picture(CanyonRecord record) {
        return Pictures.of(record, 78, 16);
    }

    @Test
    void aLineOfWhichAllIsKnownSaysOnlyItsScaleAndWhatItLeavesOut() {
        ProfilePicture picture = picture(Lines.of("walk|0 m", "drop|100 m|20 m", "walk|300 m"));

        assertThat(picture.caption()).containsExactly("Heights are drawn 4 times as large as distances.", LEVEL);
        assertThat(picture.brief())
                .containsExactly("Heights drawn 4 times", "level between places: no fall on record there");
    }

    @Test
    void anUnknownHeightIsABrokenStrokeWithAQuestionMark() {
        ProfilePicture picture = picture(
                Lines.of("walk|0 m", "drop|100 m|20 m", "drop|200 m|-||worn", "handline|300 m|-", "walk|400 m"));
        List<Shape.Line> broken = Pictures.lines(picture.drawing(), Ink.STRONG)
                .filter(Shape.Line::dashed)
                .toList();

        assertThat(broken).hasSize(2);
        assertThat(Pictures.falls(picture.drawing())).hasSize(1);
        assertThat(Pictures.texts(picture.drawing())).contains("3 drop ? m, ~ worn", "4 handline ? m, no station");
        assertThat(picture.caption())
                .contains("Heights unknown: 2 of 3 (place 3, 4), drawn flat and marked with a question mark and a"
                        + " broken stroke.");
        assertThat(picture.brief()).contains("heights unknown: 2 of 3");
        assertThat(picture.drawing().description())
                .contains("The heights that are known add up to 20 m.")
                .contains("Heights unknown: 2 of 3 (place 3, 4)");
    }

    @Test
    void anUnknownDistanceIsABrokenLineWithAQuestionMark() {
        ProfilePicture picture =
                picture(Lines.of("walk|0 m", "drop|100 m|20 m", "drop|-|5 m", "drop|300 m|5 m", "walk|400 m"));

        assertThat(Pictures.lines(picture.drawing(), Ink.MAIN).filter(Shape.Line::dashed))
                .hasSize(2);
        assertThat(Pictures.texts(picture.drawing())).filteredOn("?"::equals).hasSize(1);
        assertThat(picture.caption())
                .contains("Distances unknown: 1 of 5 (place 3), drawn broken and evenly between their neighbours.");
        assertThat(picture.brief()).contains("distances unknown: 1 of 5");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "drop|-|9 m,drop|-|4 m;Fewer than two distances are known: places are drawn evenly, only heights are to"
                        + " scale.",
                "drop|0 m|9 m,drop|90 m|4 m,swim|80.5 m;Distances go backwards (place 2 at 90 m, then place 3 at 80.5"
                        + " m): places are drawn evenly, only heights are to scale.",
                "drop|5 m|9 m,drop|5 m|4 m;All known distances are the same: places are drawn evenly, only heights are"
                        + " to scale.",
                "drop|5 m|9 m;There is one place only, so distances have no scale."
            })
    void placesThatAreDrawnEvenlyHaveNoScaleOfDistancesAndSayWhy(String places, String sentence) {
        ProfilePicture picture = picture(Lines.of(places.split(",", -1)));

        assertThat(picture.caption().get(0)).isEqualTo(sentence);
        assertThat(picture.caption()).noneMatch(line -> line.contains("times as large"));
        assertThat(picture.brief().get(0)).isEqualTo("Drawn evenly, not by distance");
        assertThat(Pictures.distances(picture.drawing())).isEmpty();
        assertThat(Pictures.lines(picture.drawing(), Ink.MAIN)).allMatch(Shape.Line::dashed);
        assertThat(Pictures.heights(picture.drawing())).isNotEmpty();
    }

    @Test
    void placesDrawnEvenlyStandEvenly() {
        List<Shape.Line> falls = Pictures.falls(
                picture(Lines.of("drop|-|9 m", "drop|-|4 m", "drop|-|2 m")).drawing());
        double first = falls.get(0).from().x();
        double second = falls.get(1).from().x();

        assertThat(falls.get(2).from().x() - second).isEqualTo(second - first);
        assertThat(second).isGreaterThan(first);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "'';The line is empty: there is no profile to draw.",
                "drop|-|-,walk|-;There is no profile to draw: no height on the line is known, and fewer than two"
                        + " distances are.",
                "drop|5 m|-;There is no profile to draw: no height on the line is known, and there is only one place.",
                "drop|5 m|-,walk|5 m;There is no profile to draw: no height on the line is known, and all known"
                        + " distances are the same.",
                "drop|5 m|-,walk|3 m;There is no profile to draw: no height on the line is known, and the distances go"
                        + " backwards (place 1 at 5 m, then place 2 at 3 m)."
            })
    void whereNothingCanBeDrawnToScaleASentenceSaysWhatIsMissing(String places, String sentence) {
        Profile profile = Profile.of(places.isEmpty() ? Lines.of() : Lines.of(places.split(",", -1)));

        assertThat(profile.canBeDrawn()).isFalse();
        assertThat(Pictures.METRIC.refusal(profile)).isEqualTo(sentence);
    }

    @Test
    void marksAreExplainedWhereTheyOccur() {
        assertThat(picture(Lines.of(
                                "walk|0 m",
                                "hazard|50 m",
                                "escape|100 m",
                                "swim|150 m",
                                "drop|200 m|5 m||gone",
                                "drop|300 m|5 m||unseen"))
                        .caption())
                .contains(
                        "The sign behind a number is the worst condition seen at its stations: x gone, . never"
                                + " inspected.",
                        "Diamond: station.",
                        "Triangle: hazard.",
                        "Arrow: escape.",
                        "Basin below the line: a swim begins; its size is that of the sign.");
        assertThat(picture(Lines.of("walk|0 m", "drop|50 m|3 m")).caption())
                .noneMatch(line -> line.matches("(Triangle|Arrow|Basin|Diamond|The sign).*"));
    }

    @Test
    void theDescriptionTellsThePictureToThoseWhoDoNotSeeIt() {
        assertThat(picture(Lines.of("walk|0 m", "drop|100 m|20 m", "drop|250 m|46 m", "walk|300 m"))
                        .drawing()
                        .description())
                .startsWith("Profile of 4 places. Their heights add up to 66 m. The highest fall is 46 m, at place 3."
                        + " Distances are known from 0 m to 300 m along the line.")
                .contains(LEVEL);
    }

    @Test
    void nothingIsMeasuredBeyondTheLastKnownDistance() {
        ProfilePicture picture = picture(Lines.of("walk|40 m", "drop|300 m|20 m", "drop|-|5 m", "walk|-"));

        assertThat(picture.drawing().description()).contains("Distances are known from 40 m to 300 m along the line.");
        assertThat(Pictures.distances(picture.drawing()).keySet()).allMatch(metres -> metres <= 300);
    }

    @Test
    void whereaboutsSayAtLeastWhereAHeightBeforeIsUnknown() {
        Profile profile = Profile.of(Lines.of("drop|0 m|5 m", "drop|-|-", "drop|90 m|3 m"));

        assertThat(Pictures.METRIC.whereabouts(profile, 1)).isEqualTo("distance unknown, 5 m down, height unknown");
        assertThat(Pictures.METRIC.whereabouts(profile, 2)).isEqualTo("90 m along, at least 5 m down");
        assertThat(Pictures.IMPERIAL.whereabouts(profile, 2)).isEqualTo("295 ft along, at least 16 ft down");
    }

    @Test
    void manyUnknownPlacesAreCountedRatherThanListed() {
        String[] places = new String[20];
        Arrays.fill(places, "drop|-|-");
        places[0] = "walk|0 m";
        places[19] = "walk|500 m";

        assertThat(picture(Lines.of(places)).caption())
                .anyMatch(line -> line.startsWith(
                        "Heights unknown: 18 of 18 (place 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12," + " 13 and 6 more)"));
    }
}
