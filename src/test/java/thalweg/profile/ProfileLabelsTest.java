package thalweg.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import thalweg.drawing.Drawing;
import thalweg.drawing.Ink;
import thalweg.drawing.Shape;
import thalweg.drawing.Spot;
import thalweg.logbook.CanyonRecord;
import thalweg.testing.RandomRecords;
import thalweg.testing.RandomRecords.Fill;

/** Laws of labels, over lines as people enter them, in rooms of many sizes. */
class ProfileLabelsTest {

    private static final List<Room> ROOMS = List.of(
            new Room(24, 5), new Room(38, 7), new Room(37, 24), new Room(78, 16), new Room(75, 22), new Room(190, 45));

    private static final Pattern NUMBER = Pattern.compile("^\\[?(\\d+)(?:-(\\d+))?");

    /** One picture with what it is of. */
    private record Case(String name, Profile profile, Window window, Optional<Integer> chosen, ProfilePicture picture) {

        Drawing drawing() {
            return picture.drawing();
        }
    }

    private static final List<Case> CASES = new ArrayList<>();

    @BeforeAll
    static void drawThemAll() {
        for (long seed = 0; seed < 120; seed++) {
            cases("line " + seed, Lines.random(seed, 1 + (int) (seed * 7 % 61)), seed);
        }
        for (long seed = 0; seed < 30; seed++) {
            for (Fill fill : Fill.values()) {
                cases("record " + seed + " " + fill, new RandomRecords(seed, fill).canyon(), seed);
            }
        }
    }

    private static void cases(String name, CanyonRecord record, long seed) {
        Profile profile = Profile.of(record);
        if (!profile.canBeDrawn()) {
            return;
        }
        Room room = ROOMS.get((int) (seed % ROOMS.size()));
        Optional<Integer> chosen = seed % 2 == 0 ? Optional.empty() : Optional.of((int) (seed * 3 % profile.size()));
        int times = chosen.isPresent() && seed % 3 == 0 ? 4 : 1;
        Window window = chosen.map(index -> profile.around(index, times)).orElse(profile.whole());
        ProfileWords words = seed % 5 == 0 ? Pictures.IMPERIAL : Pictures.METRIC;
        ProfilePicture picture = ProfileDrawing.of(profile, window, room, chosen, words);
        CASES.add(new Case(name + " in " + room, profile, window, chosen, picture));
    }

    @Test
    void everyLabelIsInsideItsRoomAndNoneTouchesAnother() {
        CASES.forEach(one -> {
            List<Shape.Label> labels = Pictures.labels(one.drawing());
            Room room = room(one);
            for (int i = 0; i < labels.size(); i++) {
                int[] cells = Pictures.cells(labels.get(i));
                assertThat(cells[0]).as("%s: %s", one.name(), labels.get(i)).isNotNegative();
                assertThat(cells[1]).as("%s: %s", one.name(), labels.get(i)).isLessThanOrEqualTo(room.columns());
                assertThat(cells[2]).as("%s: %s", one.name(), labels.get(i)).isBetween(0, room.rows() - 1);
                for (int j = 0; j < i; j++) {
                    int[] other = Pictures.cells(labels.get(j));
                    boolean apart = cells[2] != other[2] || cells[1] < other[0] || other[1] < cells[0];
                    assertThat(apart)
                            .as(
                                    "%s: %s and %s",
                                    one.name(),
                                    labels.get(i).text(),
                                    labels.get(j).text())
                            .isTrue();
                }
            }
        });
    }

    private static Room room(Case one) {
        return ROOMS.stream()
                .filter(room -> one.name().endsWith(room.toString()))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void nothingOfThePictureLeavesItsRoom() {
        CASES.forEach(one -> {
            assertThat(one.drawing().left()).as(one.name()).isNotNegative();
            assertThat(one.drawing().right())
                    .as(one.name())
                    .isLessThanOrEqualTo(room(one).columns());
            assertThat(one.drawing().top()).as(one.name()).isLessThanOrEqualTo(0);
            assertThat(one.drawing().bottom())
                    .as(one.name())
                    .isGreaterThanOrEqualTo(-2.0 * room(one).rows());
        });
    }

    @Test
    void noLabelOfAPlaceStandsOnTheLine() {
        CASES.forEach(one -> {
            List<Shape.Label> labels = Pictures.labels(one.drawing()).stream()
                    .filter(label -> label.ink() != Ink.FAINT)
                    .toList();
            one.drawing().shapes().stream()
                    .filter(Shape.Line.class::isInstance)
                    .map(Shape.Line.class::cast)
                    .filter(line -> line.ink() == Ink.STRONG || (line.ink() == Ink.MAIN && !isUpright(line)))
                    .forEach(line -> labels.forEach(label -> assertThat(crosses(line, label))
                            .as("%s: %s over %s", one.name(), line, label)
                            .isFalse()));
        });
    }

    private static boolean isUpright(Shape.Line line) {
        return line.from().x() == line.to().x();
    }

    @Test
    void noStrokeThatLeadsToAPlaceCrossesALabel() {
        CASES.forEach(one -> {
            List<Shape.Label> labels = Pictures.labels(one.drawing());
            double last =
                    labels.stream().mapToDouble(label -> label.at().y()).min().orElse(0);
            one.drawing().shapes().stream()
                    .filter(Shape.Line.class::isInstance)
                    .map(Shape.Line.class::cast)
                    .filter(line -> isUpright(line) && (line.ink() == Ink.FAINT || line.ink() == Ink.MAIN))
                    .filter(line -> Math.max(line.from().y(), line.to().y()) > last + 1)
                    .forEach(line -> labels.forEach(label -> assertThat(crosses(line, label))
                            .as("%s: %s over %s", one.name(), line, label)
                            .isFalse()));
        });
    }

    /** Whether some of a hundred places along the stroke lies well inside the label. */
    private static boolean crosses(Shape.Line line, Shape.Label label) {
        int[] cells = Pictures.cells(label);
        Spot from = line.from();
        Spot to = line.to();
        for (int i = 0; i <= 100; i++) {
            double x = from.x() + (to.x() - from.x()) * i / 100;
            double y = from.y() + (to.y() - from.y()) * i / 100;
            boolean inside =
                    x > cells[0] + 0.1 && x < cells[1] - 0.1 && y < -2.0 * cells[2] - 0.1 && y > -2.0 * cells[2] - 1.9;
            if (inside) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyPlaceHasItsNumberOnThePictureOrIsNamedBesideIt() {
        CASES.forEach(one -> {
            List<Integer> told = new ArrayList<>();
            for (Shape.Label label : Pictures.labels(one.drawing())) {
                Matcher number = NUMBER.matcher(label.text());
                if (label.ink() != Ink.FAINT && number.find()) {
                    int first = Integer.parseInt(number.group(1));
                    int last = number.group(2) == null ? first : Integer.parseInt(number.group(2));
                    for (int i = first; i <= last; i++) {
                        told.add(i);
                    }
                }
            }
            List<Integer> expected = one.profile().stops().stream()
                    .filter(stop -> one.window().holds(stop.along()))
                    .map(Stop::number)
                    .toList();
            boolean unnumbered = one.picture().caption().stream().anyMatch(line -> line.startsWith("No room"));
            assertThat(told).as(one.name()).doesNotHaveDuplicates();
            assertThat(expected).as(one.name()).containsAll(told);
            if (!unnumbered) {
                assertThat(told).as(one.name()).containsAll(expected);
            }
        });
    }

    @Test
    void theChosenPlaceIsMarkedWithoutColour() {
        CASES.forEach(one -> assertThat(Pictures.texts(one.drawing()).stream()
                        .filter(text -> text.startsWith("[") || text.matches("[v^]")))
                .as(one.name())
                .matches(found -> found.isEmpty() == one.chosen().isEmpty()));
    }

    @Test
    void theSameRecordGivesTheSamePicture() {
        CanyonRecord record = Lines.random(5, 30);

        assertThat(Pictures.of(record, 78, 16)).isEqualTo(Pictures.of(record, 78, 16));
    }

    @Test
    void whereThereIsRoomEveryPlaceIsToldInFull() {
        assertThat(Pictures.texts(Pictures.of(
                                Lines.of(
                                        "walk|0 m",
                                        "drop|200 m|18 m|滝の下|doubtful",
                                        "hazard|400 m||Siphon",
                                        "drop|600 m|5 m|Last|unseen",
                                        "drop|800 m|7 m"),
                                190,
                                45)
                        .drawing()))
                .contains(
                        "1 walk",
                        "2 drop 18 m, 滝の下, ? doubtful",
                        "3 hazard, Siphon",
                        "4 drop 5 m, Last, . never inspected",
                        "5 drop 7 m, no station");
    }

    @Test
    void placesThatStandTooCloseShareANumberWithTheWorstOfTheirMarksAndThatOfWhatIsGone() {
        ProfilePicture picture = Pictures.of(
                Lines.of(
                        "walk|0 m",
                        "hazard|500 m|||sound",
                        "hazard|500 m|||gone",
                        "hazard|500 m|||worn",
                        "hazard|500 m|||sound",
                        "drop|1000 m|9 m"),
                24,
                5);

        assertThat(Pictures.texts(picture.drawing())).anyMatch(text -> text.matches("\\d-\\dx~"));
    }

    @Test
    void sixtyPlacesFitAWidePictureAndALargeOneNumbersEachByItself() {
        assertThat(Pictures.texts(Pictures.of(Lines.drops(60), 75, 22).drawing()))
                .anyMatch(text -> text.startsWith("60") || text.contains("-60"));
        assertThat(Pictures.texts(Pictures.of(Lines.drops(60), 190, 45).drawing()))
                .noneMatch(text -> text.matches("\\d+-\\d+.*"));
    }
}
