package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LocalRecord;
import thalweg.profile.Lines;
import thalweg.testing.Around;
import thalweg.testing.GoldenFile;
import thalweg.text.Width;
import thalweg.tui.core.Binding;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Glyphs;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.core.Step;
import thalweg.tui.core.Surroundings;

/** Walks along the profile. */
final class ProfileWalkTest {

    private static final List<int[]> SIZES =
            List.of(new int[] {12, 40}, new int[] {24, 80}, new int[] {40, 120}, new int[] {60, 200});

    /** That of the first canyon. */
    private static Walk wet(int rows, int columns, Glyphs glyphs) {
        return Walk.sample(rows, columns, glyphs).press(Key.Named.ENTER).type("p");
    }

    /** That of the second canyon. */
    private static Walk dry(int rows, int columns) {
        return Walk.sample(rows, columns)
                .press(Key.Named.DOWN)
                .press(Key.Named.ENTER)
                .type("p");
    }

    /** The screen of a canyon that is not in a database. */
    private static ProfileScreen screen(CanyonRecord record) {
        Step step = ProfileScreen.opened(new Go.CanyonProfile(record.canyon().uid(), Optional.empty()))
                .update(
                        new Told.CanyonLoaded(
                                record,
                                LocalRecord.NOTHING,
                                Map.of(),
                                record.canyon().uid()),
                        Around.classic());
        return (ProfileScreen) step.screen();
    }

    private static String drawn(ProfileScreen screen, Surroundings around) {
        Canvas canvas = Canvas.of(around.rows() - 2, around.columns());
        screen.draw(canvas, around);
        return canvas.text();
    }

    private static ProfileScreen pressed(ProfileScreen screen, Key key) {
        Binding binding = screen.bindings(Around.classic()).stream()
                .filter(one -> one.keys().contains(key))
                .findFirst()
                .orElseThrow();
        return (ProfileScreen) binding.action().get().screen();
    }

    @Test
    void itLooksAsItDidAtFourSizes() {
        Map<String, StringBuilder> files = new TreeMap<>();
        for (Glyphs glyphs : Glyphs.values()) {
            try (Walk walk = wet(24, 80, glyphs)) {
                walk.press(Key.Named.RIGHT, 5);
                for (int[] size : SIZES) {
                    StringBuilder all = files.computeIfAbsent(size[1] + "x" + size[0], name -> new StringBuilder());
                    walk.resize(size[0], size[1]);
                    all.append("==== ").append(glyphs).append('\n').append(walk.screen());
                    walk.type("++");
                    all.append("==== ").append(glyphs).append(", closer\n").append(walk.screen());
                    walk.type("0");
                }
            }
        }
        files.forEach((size, text) -> GoldenFile.holds("screen/profile-" + size + ".txt", text.toString()));
    }

    @Test
    void everythingThatCanBeUnknownLooksAsItDid() {
        StringBuilder all = new StringBuilder();
        List.of(
                        Lines.of(),
                        Lines.of("drop|-|-", "swim|-"),
                        Lines.of("drop|50 m|12 m|Only|worn"),
                        Lines.of("drop|-|12 m", "swim|-", "drop|-|30 m||unseen"),
                        Lines.of("drop|90 m|12 m", "swim|40 m", "drop|200 m|30 m"),
                        Lines.of("walk|0 m", "drop|-|8 m", "drop|300 m|-||gone", "slide|-|-", "drop|700 m|25 m"),
                        Lines.of("drop|0 m|300 m|High|sound", "drop|400 m|2 m|滝の上の長い名前の場所|unsafe", "walk|900 m|40 m"))
                .forEach(record -> all.append("====\n").append(drawn(screen(record), Around.classic())));
        GoldenFile.holds("screen/profile-unknown.txt", all.toString());
    }

    @ParameterizedTest
    @EnumSource(Glyphs.class)
    void itDrawsAtEverySize(Glyphs glyphs) {
        try (Walk walk = wet(24, 80, glyphs)) {
            walk.press(Key.Named.RIGHT, 7);
            for (int rows = 1; rows <= 60; rows += rows < 16 ? 1 : 11) {
                for (int columns = 1; columns <= 250; columns += columns < 45 ? 4 : 41) {
                    walk.resize(rows, columns);
                    int most = columns;
                    assertThat(walk.screen().lines().toList())
                            .as("%dx%d", columns, rows)
                            .hasSize(rows)
                            .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(most));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 9, 60})
    void longLinesOfTheLongestNamesDrawAtEverySize(int places) {
        ProfileScreen screen = screen(Lines.random(3, places));
        for (int step = 0; step < places; step++) {
            screen = pressed(screen, Key.of(step % 9 == 4 ? '+' : 'l'));
            for (int[] size : SIZES) {
                String text = drawn(screen, Around.sized(size[0], size[1]));
                assertThat(text.lines())
                        .allSatisfy(line -> assertThat(Width.of(line)).isLessThanOrEqualTo(size[1]));
                assertThat(text).contains("> ");
            }
        }
    }

    @Test
    void arrowsGoAlongTheStationsAndToldIsTheChosenOne() {
        try (Walk walk = dry(24, 80)) {
            assertThat(walk.screen()).contains("> 1 walk, Upper wash: 0 m along, 0 m down", "[1 walk");

            walk.press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("> 2 drop, 12 m, Enebro: 420 m along", "station Enebro: x 1 gone,");

            walk.press(Key.Named.END).press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("> 12 walk, Lower wash: 2260 m along, 88.5 m down");

            walk.press(Key.Named.LEFT);
            assertThat(walk.screen()).contains("> 11 drop, 18 m, Salida").contains("[11 ");
        }
    }

    @Test
    void enterOpensTheStationAndComesBackToIt() {
        try (Walk walk = dry(24, 80)) {
            walk.press(Key.Named.RIGHT).press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("Station Enebro");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("> 2 drop, 12 m, Enebro");
        }
    }

    @Test
    void aPlaceWithoutStationIsReadInstead() {
        try (Walk walk = dry(24, 80)) {
            walk.press(Key.Named.ENTER);

            assertThat(walk.screen()).contains("Sand and low slabs.");
        }
    }

    @Test
    void itOpensWhereTheListIs() {
        try (Walk walk = Walk.sample(24, 80)) {
            walk.press(Key.Named.ENTER).press(Key.Named.DOWN, 2).type("p");

            assertThat(walk.screen()).contains("> 2 drop, 8 m, Porte: 60 m along");
        }
    }

    @Test
    void aPartOfTheLineIsShownLargerAndTheWholeAgain() {
        try (Walk walk = dry(24, 80)) {
            walk.press(Key.Named.RIGHT, 5).type("++");
            assertThat(walk.screen()).contains("Shown: places ", " of 12.").contains("[6 drop 28 m");

            walk.type("-");
            assertThat(walk.screen()).contains("Shown: places ");

            walk.type("0");
            assertThat(walk.screen()).doesNotContain("Shown: places ");
            assertThat(walk.type("-").screen()).contains("The whole line is shown.");
        }
    }

    @Test
    void wordsSayTheWholeProfileAndItsCaption() {
        try (Walk walk = dry(60, 120)) {
            walk.type("d");

            assertThat(walk.screen())
                    .contains(
                            "Profile of 12 places. Their heights add up to 88.5 m.",
                            " 2 drop 12 m, Enebro, x 1 gone, ~ worn")
                    .contains("Between places the line is drawn level");
        }
    }

    @Test
    void wordsSayWhatIsKnownWhereNothingCanBeDrawn() {
        ProfileScreen screen = screen(Lines.of("drop|-|-|Porte", "swim|-"));

        assertThat(drawn(screen, Around.classic()))
                .contains("There is no profile to draw: no height on the line is known")
                .contains("> 1 drop, Porte: distance unknown, 0 m down, height unknown");
    }

    @Test
    void unitsChangeThePictureToo() {
        try (Walk walk = dry(24, 80)) {
            walk.type("u");

            assertThat(walk.screen())
                    .contains("2000 ft", "100 ft", "2 drop 39 ft")
                    .doesNotContain(" m ");
        }
    }

    @Test
    void theMouseChoosesThePlaceNextToItAndOpensTheChosenOne() {
        try (Walk walk = dry(24, 80)) {
            String line = walk.screen().lines().skip(1).findFirst().orElseThrow();
            assertThat(line).isNotBlank();

            walk.tell(new Message.MousePressed(5, 78));
            assertThat(walk.screen()).contains("> 12 walk, Lower wash");

            walk.tell(new Message.MousePressed(5, 78));
            assertThat(walk.screen()).contains("Flat, to the track.");
        }
    }

    @Test
    void theWheelGoesAlong() {
        try (Walk walk = dry(24, 80)) {
            walk.tell(new Message.Wheel(3));

            assertThat(walk.screen()).contains("> 4 drop, 9 m, Tapón");
        }
    }

    @Test
    void anEmptyLineSaysSo() {
        assertThat(drawn(screen(Lines.of()), Around.classic())).contains("The line is empty");
    }

    @Test
    void largeTerminalsShowItBesideTheList() {
        try (Walk walk = Walk.sample(60, 200)) {
            walk.press(Key.Named.ENTER);

            assertThat(walk.screen()).contains("[1 walk, Sheepfold bridge]", "times as large as distances");
        }
    }
}
