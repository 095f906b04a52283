package thalweg.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.logbook.CanyonRecord;

/** Holds positions on pictures against the figures of their own scales, and those against what was entered. */
class ProfileScaleTest {

    private static final CanyonRecord CANYON = Lines.of(
            "walk|0 m",
            "drop|60 m|8 m|Porte|worn",
            "slide|180 m|4 m",
            "drop|410 m|22 m||doubtful",
            "swim|450 m",
            "hazard|520 m",
            "drop|780 m|46 m",
            "drop|1400 m|11 m");

    private static final double[] DISTANCES = {60, 180, 410, 780, 1400};
    private static final double[] HEIGHTS = {8, 4, 22, 46, 11};

    @ParameterizedTest
    @CsvSource({"78, 16", "38, 7", "37, 24", "75, 22", "190, 45", "24, 5", "400, 9"})
    void everyFallStandsWhereTheScaleOfDistancesSaysAndIsAsHighAsTheScaleOfHeightsSays(int columns, int rows) {
        Drawing drawing = Pictures.of(CANYON, columns, rows).drawing();
        Map<Double, Double> distances = Pictures.distances(drawing);
        List<Shape.Line> falls = Pictures.falls(drawing);

        assertThat(distances).hasSizeGreaterThan(1);
        assertThat(falls).hasSize(HEIGHTS.length);
        double toAMetre = Pictures.height(falls.get(0)) / HEIGHTS[0];
        for (int i = 0; i < HEIGHTS.length; i++) {
            assertThat(Pictures.read(distances, falls.get(i).from().x())).isCloseTo(DISTANCES[i], within(1e-6));
            assertThat(falls.get(i).to().x()).isEqualTo(falls.get(i).from().x());
            assertThat(Pictures.height(falls.get(i))).isCloseTo(HEIGHTS[i] * toAMetre, within(1e-9));
        }
        Map<Double, Double> heights = Pictures.heights(drawing);
        assertThat(Pictures.at(heights, 0)).isCloseTo(falls.get(0).from().y(), within(1e-9));
        heights.forEach(
                (metres, y) -> assertThat(falls.get(0).from().y() - y).isCloseTo(metres * toAMetre, within(1e-9)));
    }

    @ParameterizedTest
    @CsvSource({"78, 16", "37, 24", "190, 45"})
    void theCaptionSaysHowManyTimesAsLargeHeightsAreDrawn(int columns, int rows) {
        ProfilePicture picture = Pictures.of(CANYON, columns, rows);
        double measured = Pictures.height(Pictures.falls(picture.drawing()).get(3))
                / 46
                / Pictures.perUnit(Pictures.distances(picture.drawing()));

        String number = Double.toString(Math.round(measured * 10) / 10.0).replaceFirst("\\.0$", "");

        assertThat(measured * 2).as("a round number").isCloseTo(Math.rint(measured * 2), within(1e-9));
        assertThat(picture.caption())
                .contains(
                        measured == 1
                                ? "Heights and distances are drawn at the same scale."
                                : "Heights are drawn " + number + " times as large as distances.");
    }

    @Test
    void aShortSteepLineIsDrawnWiderAndSaysSo() {
        ProfilePicture picture =
                Pictures.of(Lines.of("drop|0 m|90 m", "drop|20 m|80 m", "drop|60 m|100 m", "walk|80 m"), 78, 16);
        double along = Pictures.perUnit(Pictures.distances(picture.drawing()));
        double down = Pictures.height(Pictures.falls(picture.drawing()).get(0)) / 90;

        assertThat(along / down).isGreaterThan(1);
        assertThat(picture.caption())
                .contains("Distances are drawn " + Math.round(along / down) + " times as large as heights.");
    }

    @Test
    void heightsAreNeverDrawnMoreThanFiftyTimesAsLarge() {
        assertThat(Pictures.of(Lines.of("drop|0 m|1 m", "drop|9000 m|1 m"), 78, 40)
                        .caption())
                .contains("Heights are drawn 50 times as large as distances.");
    }

    @Test
    void imperialScalesHaveRoundFeet() {
        Drawing drawing =
                Pictures.of(CANYON, new Room(78, 16), Pictures.IMPERIAL).drawing();
        Map<Double, Double> distances = Pictures.distances(drawing);

        assertThat(distances.keySet()).contains(0.0, 1000.0, 2000.0, 3000.0, 4000.0);
        // 60 m and 780 m in feet, by 1 ft = 0.3048 m (NIST SP 811).
        assertThat(Pictures.read(
                        distances, Pictures.falls(drawing).get(0).from().x()))
                .isCloseTo(60 / 0.3048, within(1e-6));
        assertThat(Pictures.texts(drawing)).contains("200 ft").noneMatch(text -> text.endsWith(" m"));
    }

    @Test
    void aPlaceThatIsAddedMovesNoOtherOneOnTheScale() {
        CanyonRecord more = Lines.of(
                "walk|0 m",
                "swim|-",
                "drop|60 m|8 m|Porte|worn",
                "slide|180 m|4 m",
                "handline|-|-",
                "drop|410 m|22 m||doubtful",
                "drop|780 m|46 m",
                "drop|1400 m|11 m");
        Drawing drawing = Pictures.of(more, 78, 16).drawing();
        Map<Double, Double> distances = Pictures.distances(drawing);

        assertThat(Pictures.falls(drawing).stream().map(fall ->
                        (double) Math.round(Pictures.read(distances, fall.from().x()))))
                .containsExactly(60.0, 180.0, 410.0, 780.0, 1400.0);
    }

    @Test
    void aSmallFallBesideALargeOneKeepsItsProportion() {
        Drawing drawing = Pictures.of(Lines.of("drop|0 m|300 m", "drop|500 m|2 m", "walk|900 m"), 78, 16)
                .drawing();
        List<Shape.Line> falls = Pictures.falls(drawing);

        assertThat(Pictures.height(falls.get(0)) / Pictures.height(falls.get(1)))
                .isCloseTo(150, within(1e-6));
        assertThat(Pictures.texts(drawing)).anyMatch(text -> text.contains("2 drop 2 m"));
    }

    @Test
    void theFallOfAWalkIsASlopeAndNoDrop() {
        Drawing drawing = Pictures.of(Lines.of("walk|0 m|30 m", "drop|300 m|5 m", "walk|400 m"), 78, 16)
                .drawing();
        Shape.Line slope = Pictures.lines(drawing, Ink.MAIN).findFirst().orElseThrow();
        Shape.Line drop = Pictures.falls(drawing).get(0);

        assertThat(Pictures.falls(drawing)).hasSize(1);
        assertThat(slope.to()).isEqualTo(drop.from());
        assertThat(Pictures.height(slope) / Pictures.height(drop)).isCloseTo(6, within(1e-9));
    }

    @Test
    void aPartOfTheLineIsDrawnLargerAtTheSamePlaceOnItsScale() {
        Profile profile = Profile.of(CANYON);
        ProfilePicture part =
                ProfileDrawing.of(profile, profile.around(3, 4), new Room(78, 16), Optional.of(3), Pictures.METRIC);
        Map<Double, Double> distances = Pictures.distances(part.drawing());

        assertThat(Pictures.perUnit(distances))
                .isGreaterThan(3
                        * Pictures.perUnit(
                                Pictures.distances(Pictures.of(CANYON, 78, 16).drawing())));
        assertThat(Pictures.falls(part.drawing()).stream().map(fall ->
                        (double) Math.round(Pictures.read(distances, fall.from().x()))))
                .contains(410.0);
        assertThat(part.caption().get(0)).startsWith("Shown: places ").endsWith(" of 8.");
    }

    @Test
    void nothingIsDrawnWhereThereIsNoRoom() {
        assertThatIllegalArgumentException().isThrownBy(() -> Pictures.of(CANYON, 23, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> Pictures.of(CANYON, 24, 4));
        assertThatIllegalArgumentException().isThrownBy(() -> Pictures.of(Lines.of("walk|-", "drop|-|-"), 78, 16));
    }
}
