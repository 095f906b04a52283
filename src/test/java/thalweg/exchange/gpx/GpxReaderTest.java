package thalweg.exchange.gpx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.exchange.gpx.Waypoint.Origin;
import thalweg.fault.Sentence;
import thalweg.json.Findings;
import thalweg.place.Position;
import thalweg.units.Length;

class GpxReaderTest {

    private static GpxFile sound(byte[] bytes) {
        Findings findings = new Findings();
        GpxFile file = GpxReader.read(bytes, findings);
        assertThat(findings.all()).isEmpty();
        return file;
    }

    private static GpxFile file(String name) {
        return sound(GpxFiles.bytes(name));
    }

    private static GpxFile text(String text) {
        return sound(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void everythingThatIsSaidOfAWaypointIsRead() {
        GpxFile file = file("waypoints.gpx");

        assertThat(file.waypoints().get(0))
                .isEqualTo(new Waypoint(
                        8,
                        Origin.WAYPOINT,
                        "Sheepfold",
                        new Position(331_462_000, -407_719_000, Optional.empty()),
                        Optional.of(new Length(742.5)),
                        "Leave the path here.",
                        "Leave the path here.",
                        "Flag, Blue",
                        "Start",
                        "2026-08-30T08:02:11Z"));
        assertThat(file.waypoints().get(0).note()).isEqualTo("Leave the path here.");
        assertThat(file.waypoints().get(1).note())
                .isEqualTo("Wet landing.\nPool to swim.\nAnchor on the left, behind the block.");
        assertThat(file.trackPoints()).isZero();
        assertThat(file.remarks()).isEmpty();
    }

    @Test
    void waypointsOfOneNameAreToldApartByLineAndPlace() {
        assertThat(file("waypoints.gpx").waypoints())
                .extracting(
                        Waypoint::name, Waypoint::line, one -> one.position().printDecimal())
                .containsSequence(
                        tuple("Drop", 32, "33.145190, -40.771210"), tuple("Drop", 37, "33.144880, -40.771020"));
    }

    @Test
    void pointsOfRoutesAreWaypointsInTheirOrder() {
        GpxFile file = file("route.gpx");

        assertThat(file.waypoints())
                .extracting(Waypoint::origin, Waypoint::name)
                .containsExactly(
                        tuple(Origin.WAYPOINT, "Parking"),
                        tuple(Origin.ROUTE_POINT, "In"),
                        tuple(Origin.ROUTE_POINT, "Swim"),
                        tuple(Origin.ROUTE_POINT, ""),
                        tuple(Origin.ROUTE_POINT, "Out"));
        assertThat(file.count(Origin.ROUTE_POINT)).isEqualTo(4);
    }

    @Test
    void pointsOfTracksAreCountedAndSaidNotToBeTaken() {
        GpxFile file = file("track.gpx");

        assertThat(file.waypoints()).isEmpty();
        assertThat(file.trackPoints()).isEqualTo(3);
        assertThat(file.remarks())
                .extracting(Sentence::toString)
                .containsExactly("The file has 3 points of tracks; the way that a device went is not taken.");
    }

    @Test
    void theLeastFileIsEnough() {
        assertThat(file("minimal.gpx").waypoints())
                .containsExactly(new Waypoint(
                        1,
                        Origin.WAYPOINT,
                        "",
                        new Position(331_462_000, -407_719_000, Optional.empty()),
                        Optional.empty(),
                        "",
                        "",
                        "",
                        "",
                        ""));
    }

    @Test
    void anyPrefixMayStandForTheFormat() {
        assertThat(file("prefixed.gpx").waypoints())
                .extracting(Waypoint::name, Waypoint::line)
                .containsExactly(tuple("With a prefix", 4));
    }

    @Test
    void theOlderVersionIsReadAndAnEmptyElevationIsUnknown() {
        assertThat(file("version-1-0.gpx").waypoints())
                .extracting(Waypoint::name, Waypoint::elevation, Waypoint::comment)
                .containsExactly(
                        tuple("001", Optional.of(new Length(742)), "17-MAY-09 12:02:11"),
                        tuple("002", Optional.empty(), ""));
    }

    @Test
    void otherLineEndsCountTheSame() {
        GpxFile file = file("crlf.gpx");

        assertThat(file.waypoints())
                .extracting(Waypoint::name, Waypoint::line, Waypoint::description)
                .containsExactly(tuple("One", 3, "First line.\nSecond line."), tuple("Two words", 8, ""));
        assertThat(text(new String(GpxFiles.bytes("crlf.gpx"), StandardCharsets.UTF_8).replace("\r\n", "\r")))
                .isEqualTo(file);
    }

    @Test
    void theEncodingIsTheOneThatTheFileDeclares() {
        assertThat(file("latin1.gpx").waypoints())
                .extracting(Waypoint::name, Waypoint::comment)
                .containsExactly(tuple("Éboulis à droite", "£ § ß Ñ"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "UTF-16LE", "UTF-16BE", "windows-1252", "ISO-8859-15", "US-ASCII"})
    void everyEncodingGivesTheSame(String encoding) {
        String declared = "<?xml version=\"1.0\" encoding=\"" + encoding + "\"?>\n<gpx>\n<wpt lat=\"1\" lon=\"2\">"
                + "<name>" + (encoding.equals("US-ASCII") ? "&#xE9;" : "é") + "</name></wpt></gpx>";

        assertThat(sound(declared.getBytes(Charset.forName(encoding))).waypoints())
                .extracting(Waypoint::name, Waypoint::line)
                .containsExactly(tuple("é", 3));
    }

    @Test
    void aByteOrderMarkIsPassedOverAndCountsMoreThanAWrongDeclaration() {
        String wrong =
                "\uFEFF<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><gpx><wpt lat=\"1\" lon=\"2\"><name>é</name>"
                        + "</wpt></gpx>";
        String alsoWrong =
                "<?xml version=\"1.0\" encoding=\"utf-16\"?><gpx><wpt lat=\"1\" lon=\"2\"><name>é</name></wpt>"
                        + "</gpx>";

        assertThat(text(wrong).waypoints()).extracting(Waypoint::name).containsExactly("é");
        assertThat(text(alsoWrong).waypoints()).extracting(Waypoint::name).containsExactly("é");
        assertThat(sound(wrong.getBytes(StandardCharsets.UTF_16LE)).waypoints()).hasSize(1);
        assertThat(sound(wrong.getBytes(StandardCharsets.UTF_16BE)).waypoints()).hasSize(1);
    }

    @Test
    void namesAreCleanedAndMayBeEmptyOrOfAnyScript() {
        assertThat(file("characters.gpx").waypoints())
                .extracting(Waypoint::name)
                .containsExactly("Top & tail <1>", "", "", "", "🧗 滝の上 ガイド", "\u00E9cho\u00E9", "txet hidden");
        assertThat(file("characters.gpx").waypoints().get(0).description()).isEqualTo("<b>Two</b> & three");
    }

    @Test
    void whatOtherProgramsAddAndTheirOrderChangeNothing() {
        GpxFile file = file("odd-order.gpx");

        assertThat(file.waypoints())
                .extracting(Waypoint::name, Waypoint::elevation, Waypoint::type, Waypoint::symbol)
                .containsExactly(
                        tuple("On a route", Optional.empty(), "", ""),
                        tuple("Back front", Optional.of(new Length(742.5)), "t", "s"));
        assertThat(file.trackPoints()).isEqualTo(2);
    }

    @Test
    void theEdgesOfTheGlobeAreOnIt() {
        assertThat(file("all-fields.gpx").waypoints().get(0).position())
                .isEqualTo(new Position(-900_000_000, -1_800_000_000, Optional.empty()));
        assertThat(text("<gpx><wpt lat='+90.0' lon='179.99999999'/><wpt lat='-0' lon='-1.5E-5'/></gpx>")
                        .waypoints())
                .extracting(Waypoint::position)
                .containsExactly(
                        new Position(900_000_000, -1_800_000_000, Optional.empty()),
                        new Position(0, -150, Optional.empty()));
    }

    @Test
    void aTextThatIsTooLongIsCutAndThatIsSaid() {
        GpxFile file = text("<gpx>\n<wpt lat='1' lon='2'>\n<name>" + "n".repeat(121) + "</name><desc>"
                + "d".repeat(50_000) + "</desc></wpt></gpx>");

        assertThat(file.waypoints().get(0).name()).hasSize(120);
        assertThat(file.waypoints().get(0).note()).hasSize(1999);
        assertThat(file.remarks())
                .extracting(Sentence::toString)
                .containsExactly(
                        "line 2: the name is longer than 120 characters; only its beginning is taken.",
                        "line 2: the description is longer than 1999 characters; only its beginning is taken.");
    }

    @Test
    void aFileWithoutWaypointsIsSoundAndEmpty() {
        assertThat(text("<gpx version='1.1' creator='x'/>")).isEqualTo(GpxFile.EMPTY);
    }

    @Test
    void asManyAsAPersonCouldEverPlaceAreRead() {
        assertThat(text("<gpx>" + "<wpt lat='1' lon='2'/>".repeat(GpxFile.MOST_WAYPOINTS) + "</gpx>")
                        .waypoints())
                .hasSize(GpxFile.MOST_WAYPOINTS);
    }

    @Test
    void bytesThatBeginAsXmlLookLikeSuchAFile() {
        String xml = " \n<gpx/>";
        assertThat(GpxReader.looksLikeOne(xml.getBytes(StandardCharsets.UTF_8))).isTrue();
        assertThat(GpxReader.looksLikeOne(("\uFEFF" + xml).getBytes(StandardCharsets.UTF_8)))
                .isTrue();
        assertThat(GpxReader.looksLikeOne(xml.getBytes(StandardCharsets.UTF_16)))
                .isTrue();
        assertThat(GpxReader.looksLikeOne("<gpx/>".getBytes(StandardCharsets.UTF_16LE)))
                .isTrue();
        assertThat(GpxReader.looksLikeOne("{\"format\": \"<\"}".getBytes(StandardCharsets.UTF_8)))
                .isFalse();
        assertThat(GpxReader.looksLikeOne(new byte[0])).isFalse();
    }
}
