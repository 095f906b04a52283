package thalweg.tui.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thalweg.body.ThingBody;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.place.Position;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.service.FindRecord;
import thalweg.service.ListCanyons;
import thalweg.service.SaveThing;
import thalweg.tui.core.Key;
import thalweg.tui.core.Message;
import thalweg.tui.shell.Reaction;

final class PlacingWalkTest {

    static final String FILES = "src/test/resources/thalweg/exchange/gpx/";

    private static final Key SAVE = Key.ctrl('s');

    @TempDir
    private Path folder = Path.of("");

    /** At the placing of that file on the line of a new canyon. */
    private static Walk onNew(int rows, int columns, String file) {
        Walk walk = Walk.empty(rows, columns);
        return walk.type("g").type("Probe 滝").press(Key.Named.TAB).type(file).press(SAVE);
    }

    /** At the placing of that file on the line of the first canyon of the sample. */
    private static Walk onSample(int rows, int columns, String file) {
        Walk walk = Walk.sample(rows, columns);
        return walk.press(Key.Named.ENTER).type("g").type(file).press(SAVE);
    }

    private static CanyonRecord canyon(Walk walk, String name) {
        return new FindRecord(walk.session()).canyon(name);
    }

    @Test
    void aNewCanyonGrowsFromAFileOfWaypoints() {
        try (Walk walk = onNew(24, 80, FILES + "waypoints.gpx")) {
            assertThat(walk.screen())
                    .contains("Waypoints onto Probe 滝: waypoints.gpx", "undecided: 4 of 4", "< drop >")
                    .contains("1 Sheepfold", "742.5 m", "33.146200, -40.771900")
                    .contains("Elevation 742.5 m in the file: to find the way by, not the height of a drop.");

            walk.type("p");
            assertThat(walk.screen()).contains("1 Sheepfold: start of the canyon.");
            walk.type("a");
            assertThat(walk.screen()).contains("2 First drop: placed as drop 1.");
            walk.type("s");
            assertThat(walk.screen()).contains("3 Drop: station at drop 1.");
            walk.press(Key.Named.LEFT, 5).type("a");
            assertThat(walk.screen()).contains("4 Drop: placed as swim 2. Every waypoint is decided; Ctrl-S saves.");

            assertThat(new ListCanyons(walk.session()).count()).isZero();
            walk.press(SAVE);
            assertThat(walk.screen())
                    .contains("Saved: taken from 4 waypoints, nothing from 0.", "1 drop, height unknown, First drop");

            CanyonRecord canyon = canyon(walk, "probe");
            assertThat(canyon.canyon().name()).isEqualTo("Probe 滝");
            assertThat(canyon.canyon().position()).contains(new Position(331_462_000, -407_719_000, Optional.empty()));
            assertThat(canyon.line())
                    .extracting(place -> place.obstacle().kind())
                    .containsExactly(ObstacleKind.DROP, ObstacleKind.SWIM);
            assertThat(canyon.line().get(0).obstacle().height()).isEmpty();
            assertThat(canyon.line().get(0).obstacle().distance()).isEmpty();
            assertThat(canyon.line().get(0).obstacle().note()).startsWith("Wet landing.");
            assertThat(canyon.line().get(0).stations().get(0).station().name()).isEqualTo("Drop");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("Canyons  1", "Probe 滝");
        }
    }

    @Test
    void waypointsSayWhereKnownPlacesAndStationsAre() {
        try (Walk walk = onSample(40, 120, FILES + "waypoints.gpx")) {
            CanyonRecord before = canyon(walk, "éclusaune");
            walk.press(Key.Named.TAB)
                    .press(Key.Named.HOME)
                    .press(Key.Named.DOWN, 2)
                    .type("p");
            assertThat(walk.screen()).contains("1 Sheepfold: position of drop 2.", "gets coordinates");

            walk.type("p");
            assertThat(walk.screen()).contains("Another waypoint says already where that is");

            walk.press(Key.Named.DOWN).type("p");
            assertThat(walk.screen()).contains("2 First drop: position of Porte.");
            walk.press(Key.Named.UP).type("s").press(Key.Named.UP).type("b");
            assertThat(walk.screen()).contains("4 Drop: placed as drop 1.", "3 drop, 8 m, Porte", "station at drop 3");

            walk.press(SAVE);
            assertThat(walk.screen()).contains("Saved: taken from 4 waypoints, nothing from 0.");
            CanyonRecord after = canyon(walk, "éclusaune");
            assertThat(after.line()).hasSize(before.line().size() + 1);
            assertThat(after.line().get(0).obstacle().name()).isEqualTo("Drop");
            LineRecord porte = after.line().get(2);
            assertThat(porte.obstacle().position()).isPresent();
            assertThat(porte.obstacle().height())
                    .isEqualTo(before.line().get(1).obstacle().height());
            assertThat(porte.stations())
                    .extracting(station -> station.station().name())
                    .containsExactly("Porte", "Drop");
            assertThat(porte.stations().get(0).station().position()).isPresent();
            assertThat(porte.stations().get(0).parts())
                    .isEqualTo(before.line().get(1).stations().get(0).parts());
        }
    }

    @Test
    void nothingIsPlacedByItselfAndOneKeyTakesTheProposal() {
        try (Walk walk = onNew(24, 80, FILES + "waypoints.gpx")) {
            assertThat(walk.press(SAVE).screen()).contains("Nothing is placed yet; a makes the chosen waypoint");

            walk.type("xf");
            assertThat(walk.screen())
                    .contains("Placed 3 in the order of the file, each as drop")
                    .contains("left out", "placed as drop 1", "placed as drop 2", "placed as drop 3");

            walk.press(SAVE);
            assertThat(walk.screen()).contains("Saved: taken from 3 waypoints, nothing from 1.");
            assertThat(canyon(walk, "probe").line())
                    .extracting(place -> place.obstacle().name())
                    .containsExactly("First drop", "Drop", "Drop");
        }
    }

    @Test
    void decisionsAreTakenBackOneAfterTheOther() {
        try (Walk walk = onNew(24, 80, FILES + "waypoints.gpx")) {
            walk.type("aax");
            assertThat(walk.screen()).contains("undecided: 1 of 4");

            walk.type("z");
            assertThat(walk.screen()).contains("Undone: 3 Drop is undecided again.", "> 3 Drop", "undecided: 2 of 4");
            walk.type("z").press(Key.Named.BACKSPACE);
            assertThat(walk.screen()).contains("Undone: 1 Sheepfold is undecided again.", "undecided: 4 of 4");
            assertThat(walk.type("z").screen()).contains("Nothing is decided that could be undone.");
        }
    }

    @Test
    void whatWasDecidedIsDecidedAnew() {
        try (Walk walk = onNew(24, 80, FILES + "waypoints.gpx")) {
            walk.type("as").press(Key.Named.HOME).type("x");
            assertThat(walk.screen()).contains("This waypoint is a place where others are stations");

            walk.type("s");
            assertThat(walk.screen()).contains("This waypoint is that place itself");

            walk.press(Key.Named.RIGHT);
            assertThat(walk.screen()).contains("placed as downclimb 1", "station at downclimb 1");

            walk.press(Key.Named.DOWN).type("x").press(Key.Named.HOME).type("x");
            assertThat(walk.screen()).contains("1 Sheepfold: left out.", "undecided: 2 of 4");
        }
    }

    @Test
    void whatIsNewHasThePositionOfItsOwnWaypoint() {
        try (Walk walk = onNew(24, 80, FILES + "waypoints.gpx")) {
            assertThat(walk.type("ap").screen()).contains("What is new here has the coordinates of its own waypoint.");
            walk.press(Key.Named.TAB).press(Key.Named.HOME);
            assertThat(walk.type("s").screen()).contains("A station belongs to a place on the line; choose one there.");
        }
    }

    @Test
    void coordinatesThatAreGivenUpForOthersAreNamed() {
        try (Walk walk = onSample(24, 80, FILES + "waypoints.gpx")) {
            walk.press(Key.Named.TAB).press(Key.Named.HOME);
            assertThat(walk.screen()).contains("Start of the canyon", "has coordinates");

            walk.type("p");

            assertThat(walk.screen().replace("\n", " "))
                    .contains("1 Sheepfold: start of the canyon. It had 33.146200, -40.771900, which this replaces.")
                    .contains("gets others");
        }
    }

    @Test
    void aBrokenFileIsShownLineByLineAndNothingIsTaken() throws IOException {
        Path broken = Files.writeString(
                folder.resolve("broken.gpx"),
                "<gpx>\n<wpt lat='91' lon='1'/>\n<wpt lat='1' lon='1'>\n<ele>1e5</ele></wpt></gpx>");
        try (Walk walk = onNew(24, 80, broken.toString())) {
            assertThat(walk.screen())
                    .contains("Nothing is taken from this file. What is wrong with it: 2")
                    .contains("line 2: the latitude \"91\"", "line 4: the elevation \"1e5\"");

            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("New canyon from a file of waypoints", "Probe 滝");
            walk.press(Key.ctrl('u')).type(FILES + "minimal.gpx").press(SAVE);
            assertThat(walk.screen()).contains("Waypoints onto Probe 滝: minimal.gpx", "1 (no name)");
            assertThat(new ListCanyons(walk.session()).count()).isZero();
        }
    }

    @Test
    void aFileWithoutWaypointsSaysSo() {
        try (Walk walk = onNew(24, 80, FILES + "track.gpx")) {
            assertThat(walk.screen())
                    .contains("The file is sound, but there is no waypoint in it to place.")
                    .contains("The file has 3 points of tracks; the way that a device went is not taken.");
        }
    }

    @Test
    void aFileThatIsNotThereAndAFieldThatIsEmptyAreNamed() {
        try (Walk walk = onNew(24, 80, "nowhere.gpx")) {
            assertThat(walk.screen()).contains("There is no file nowhere.gpx; check the path.");
            walk.press(Key.ctrl('u')).press(SAVE);
            assertThat(walk.screen()).contains("File: name the file of waypoints.");
            walk.press(Key.Named.UP).press(Key.ctrl('u')).press(SAVE);
            assertThat(walk.screen()).contains("Name: This must be filled in.");
        }
    }

    @Test
    void leavingAsksOnlyWhereADecisionWouldBeLost() {
        try (Walk walk = onSample(24, 80, FILES + "waypoints.gpx")) {
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("French v5 a4 IV");

            walk.type("g").type(FILES + "waypoints.gpx").press(SAVE).type("x").press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("What you entered is not saved.");
            walk.press(Key.Named.ESCAPE);
            assertThat(walk.screen()).contains("undecided: 3 of 4");
            assertThat(walk.type("q").lastOrder()).isEqualTo(Reaction.Order.NONE);
            walk.press(Key.Named.ESCAPE).press(Key.Named.ESCAPE).type("d");
            assertThat(walk.screen()).contains("French v5 a4 IV");
        }
    }

    @Test
    void whatWasChangedFromElsewhereIsNotWrittenOver() {
        try (Walk walk = onSample(24, 80, FILES + "waypoints.gpx")) {
            LineRecord porte = canyon(walk, "éclusaune").line().get(1);
            walk.type("a")
                    .press(Key.Named.TAB)
                    .press(Key.Named.HOME)
                    .press(Key.Named.DOWN, 2)
                    .type("p");
            var old = porte.obstacle();
            var theirs = new Obstacle(
                    old.uid(),
                    old.canyon(),
                    old.order(),
                    old.kind(),
                    "theirs",
                    old.distance(),
                    old.height(),
                    old.position(),
                    old.note());
            new SaveThing(walk.session()).changed(ThingBody.of(old), ThingBody.of(theirs));
            CanyonRecord before = canyon(walk, "éclusaune");

            walk.press(SAVE);

            assertThat(walk.screen().replace("\n", " "))
                    .contains("was changed from elsewhere in the meantime; nothing was saved.");
            assertThat(walk.screen()).contains("undecided: 2 of 4");
            assertThat(canyon(walk, "éclusaune")).isEqualTo(before);
        }
    }

    @Test
    void helpSaysWhyHeightsStayUnknownAndWhatIsRemarkable() {
        try (Walk walk = onNew(40, 120, FILES + "odd-order.gpx")) {
            assertThat(walk.screen()).contains("Remarks about the file: 1. i shows them.");
            walk.type("i");
            assertThat(walk.screen()).contains("Heights and distances stay unknown", "The file has 2 points of tracks");
            walk.press(Key.Named.ESCAPE).press(Key.Named.ENTER);
            assertThat(walk.screen()).contains("1 On a route: undecided", "point of a route on line 5 of the file");
        }
    }

    @Test
    void aPathWithATildeIsBelowTheHomeFolder() {
        try (Walk walk = Walk.empty(24, 80)) {
            walk.type("g")
                    .type("x")
                    .press(Key.Named.TAB)
                    .type("~/no such file 5931.gpx")
                    .press(SAVE);

            assertThat(walk.screen())
                    .contains("There is no file ")
                    .contains("no such file 5931.gpx")
                    .doesNotContain("file ~");
        }
    }

    @Test
    void theMouseChoosesOnBothSides() {
        try (Walk walk = onSample(24, 120, FILES + "waypoints.gpx")) {
            walk.tell(new Message.MousePressed(4, 3));
            assertThat(walk.screen()).contains("> 2 First drop");
            walk.tell(new Message.MousePressed(5, 90)).type("p");
            assertThat(walk.screen()).contains("2 First drop: position of");
            walk.tell(new Message.Wheel(1));
            walk.tell(new Message.MousePressed(22, 90));
            walk.tell(new Message.MousePressed(1, 1));
        }
    }

    @Test
    void fiveHundredWaypointsArePlacedAndSaved() throws IOException {
        String points = IntStream.range(0, 500)
                .mapToObj(i -> "<wpt lat=\"33." + (1000 + i) + "\" lon=\"-40.7\"><name>滝の上 " + i + "</name></wpt>\n")
                .collect(Collectors.joining());
        Path many = Files.writeString(folder.resolve("many.gpx"), "<gpx>\n" + points + "</gpx>");
        try (Walk walk = onNew(24, 80, many.toString())) {
            walk.press(Key.Named.END);
            assertThat(walk.screen()).contains("> 500 滝の上 499");
            walk.type("x").type("f").press(SAVE);

            assertThat(walk.screen()).contains("Saved: taken from 499 waypoints, nothing from 1.");
            assertThat(canyon(walk, "probe").line())
                    .hasSize(499)
                    .extracting(place -> place.obstacle().name())
                    .startsWith("滝の上 0", "滝の上 1")
                    .endsWith("滝の上 498");
        }
    }
}
