package thalweg.exchange.gpx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.json.Finding;
import thalweg.json.Findings;

class GpxRefusalsTest {

    private static List<String> findings(byte[] bytes) {
        Findings findings = new Findings();
        GpxFile file = GpxReader.read(bytes, findings);
        if (!findings.none()) {
            assertThat(file).isEqualTo(GpxFile.EMPTY);
        }
        return findings.all().stream().map(Finding::print).toList();
    }

    private static List<String> findings(String text) {
        return findings(text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        <wpt lon="2"/>                        | line 2: the point has no latitude (lat)
        <wpt lat="1"/>                        | line 2: the point has no longitude (lon)
        <wpt lat="" lon="2"/>                 | line 2: the latitude "" is no number of degrees from -90 to 90
        <wpt lat="NaN" lon="2"/>              | line 2: the latitude "NaN" is no number of degrees
        <wpt lat="1" lon="INF"/>              | line 2: the longitude "INF" is no number of degrees
        <wpt lat="1" lon="Infinity"/>         | line 2: the longitude "Infinity"
        <wpt lat="90.00000001" lon="2"/>      | line 2: the latitude "90.00000001"
        <wpt lat="-91" lon="2"/>              | line 2: the latitude "-91"
        <wpt lat="1" lon="180"/>              | line 2: the longitude "180" is no number of degrees from -180 to below 180
        <wpt lat="1" lon="-180.0000001"/>     | line 2: the longitude "-180.0000001"
        <wpt lat="42,5" lon="2"/>             | with a decimal point.
        <wpt lat="1e999999999" lon="2"/>      | line 2: the latitude "1e999999999"
        <wpt lat="1e99" lon="2"/>             | line 2: the latitude "1e99"
        <wpt lat="N 42 07" lon="2"/>          | line 2: the latitude "N 42 07"
        <rte><rtept lat="1"/></rte>           | line 2: the point has no longitude (lon)
        <wpt lat="1" lon="2"><ele>9000.1</ele></wpt> | line 2: the elevation "9000.1" is no number of metres from -500 to 9000
        <wpt lat="1" lon="2"><ele>-501</ele></wpt>   | line 2: the elevation "-501"
        <wpt lat="1" lon="2"><ele>NaN</ele></wpt>    | line 2: the elevation "NaN"
        <wpt lat="1" lon="2"><ele>high</ele></wpt>   | line 2: the elevation "high"
        <wpt lat="1" lon="2"><name>a</name><name>b</name></wpt> | line 2: the point has a second <name>
        """)
    void aPointThatBreaksARuleIsOneFindingWithItsLine(String point, String sentence) {
        List<String> found = findings("<gpx>\n" + point + "\n<wpt lat='1' lon='2'/></gpx>");

        assertThat(found).hasSize(1);
        assertThat(found.get(0)).startsWith("line 2: ").contains(sentence).endsWith(".");
    }

    @Test
    void everyFaultOfAFileIsNamedAtOnce() {
        assertThat(findings("<gpx>\n<wpt lat='91' lon='200'>\n<ele>99999</ele>\n</wpt>\n<wpt\nlat='1'/></gpx>"))
                .satisfiesExactly(
                        one -> assertThat(one).startsWith("line 2: the latitude \"91\""),
                        one -> assertThat(one).startsWith("line 2: the longitude \"200\""),
                        one -> assertThat(one).startsWith("line 3: the elevation \"99999\""),
                        one -> assertThat(one).startsWith("line 5: the point has no longitude"));
    }

    @Test
    void thousandsOfFaultsEndTheReading() {
        List<String> found = findings("<gpx>\n" + "<wpt/>\n".repeat(5000) + "</gpx>");

        assertThat(found).hasSizeLessThan(GpxReader.MOST_FINDINGS + 3);
        assertThat(found.get(found.size() - 1)).contains("so much wrong that reading ended here");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        hello                                       | line 1: this is no XML from here on
        <kml><Placemark/></kml>                     | line 1: the file begins with <kml>, so it is no GPX file
        <html><body>Not found</body></html>         | line 1: the file begins with <html>
        <gpx version="2.0"/>                        | line 1: the file says that it is GPX 2.0; 1.1 and 1.0 are known.
        <gpx><wpt lat="1" lon="2"><name>cut         | line 1: the file ends in the middle
        <gpx><wpt lat="1" lo                        | line 1: the file ends in the middle
        <gpx><wpt lat="1" lon="2"></gpx>            | line 1: this is no XML from here on
        <gpx><wpt lat="1" lat="1" lon="2"/></gpx>   | line 1: this is no XML
        <gpx><p:wpt lat="1" lon="2"/></gpx>         | line 1: this is no XML
        <gpx/><gpx/>                                | line 1: this is no XML
        <gpx><wpt lat=1 lon=2/></gpx>               | line 1: this is no XML
        <gpx><n>&#0;</n></gpx>                      | line 1: this is no XML
        <gpx><n>&nbsp;</n></gpx>                    | line 1: there is the entity &nbsp; which XML does not know
        <?xml version="1.0" encoding="klingon-7"?><gpx/> | line 1: the file says that its encoding is "klingon-7"
        """)
    void whatIsNoSuchFileIsOneFinding(String text, String sentence) {
        List<String> found = findings(text);

        assertThat(found).hasSize(1);
        assertThat(found.get(0)).contains(sentence).endsWith(".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n\n", "\uFEFF"})
    void anEmptyFileSaysSo(String text) {
        assertThat(findings(text)).containsExactly("line 1: the file is empty.");
    }

    @Test
    void bytesThatAreNoTextInTheDeclaredEncodingAreNamedByTheirLine() {
        byte[] latin = "<gpx>\n<wpt lat='1' lon='2'>\n<name>caf\u00E9</name></wpt></gpx>"
                .getBytes(StandardCharsets.ISO_8859_1);

        assertThat(findings(latin))
                .containsExactly("line 3: there are bytes that are no text in UTF-8, the encoding of"
                        + " the file; save it again in UTF-8.");
    }

    @Test
    void aFileThatIsCutAnywhereGivesNothing() {
        String whole = new String(GpxFiles.bytes("waypoints.gpx"), StandardCharsets.UTF_8).stripTrailing();

        for (int length = 0; length < whole.length(); length += 7) {
            assertThat(findings(whole.substring(0, length)))
                    .as("%d characters", length)
                    .hasSize(1);
        }
    }

    @Test
    void aDocumentTypeIsRefusedBeforeAnythingIsFetched(@TempDir Path folder) throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "do not read me");
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            server.setSoTimeout(200);
            String url = "http://127.0.0.1:" + server.getLocalPort() + "/gpx.dtd";
            String outside = "<!DOCTYPE gpx SYSTEM \"" + url + "\">\n<gpx/>";
            String inside = "<!DOCTYPE gpx [<!ENTITY s SYSTEM \"" + secret.toUri() + "\"><!ENTITY % p SYSTEM \"" + url
                    + "\"> %p;]>\n<gpx><wpt lat=\"1\" lon=\"2\"><name>&s;</name></wpt></gpx>";

            assertThat(findings(outside))
                    .containsExactly("line 1: there is a document type (<!DOCTYPE ...>), which may"
                            + " name other files; take it out and try again.");
            assertThat(findings(inside)).hasSize(1).allMatch(one -> one.contains("document type"));

            Assertions.assertThrows(SocketTimeoutException.class, server::accept);
        }
    }

    @Test
    void entitiesThatGrowAreNeverExpanded() {
        StringBuilder laughs = new StringBuilder("<!DOCTYPE gpx [<!ENTITY a0 \"ha\">");
        for (int i = 1; i <= 30; i++) {
            laughs.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
        }
        laughs.append("]>\n<gpx><wpt lat='1' lon='2'><name>&a30;</name></wpt></gpx>");

        Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThat(findings(laughs.toString()))
                        .hasSize(1)
                        .allMatch(one -> one.contains("document type")));
    }

    @Test
    void nestingWithoutEndIsRefused() {
        assertThat(findings("<gpx>\n" + "<extensions>".repeat(1_000_000)))
                .containsExactly("line 2: elements stand inside each other more than 64 deep.");
        assertThat(findings("<gpx><wpt lat='1' lon='2'><name>\n" + "<b>".repeat(70) + "</b>".repeat(70)
                        + "</name></wpt></gpx>"))
                .hasSize(1)
                .allMatch(one -> one.contains("64 deep"));
    }

    @Test
    void moreThanAPersonCouldPlaceIsRefused() {
        String points = "<wpt lat='1' lon='2'/>\n".repeat(GpxFile.MOST_WAYPOINTS + 1);

        assertThat(findings("<gpx>" + points + "</gpx>"))
                .containsExactly("line 20001: there are more than 20000 waypoints; export only those of the canyon.");
    }

    @Test
    void whatIsShownOfABadFileCannotSteerATerminal() {
        assertThat(findings("<gpx><wpt lat='&#x9b;31m&#x202e;" + "9".repeat(200) + "' lon='2'/></gpx>"))
                .hasSize(1)
                .allMatch(one -> one.codePoints().allMatch(c -> c >= ' ' && c < 0x7F) && one.length() < 200);
    }

    /** Seeded; every file that comes of it is read or refused, and never by a failure of the program. */
    @Test
    void noDamageToAFileIsMoreThanFindings() {
        for (String name : List.of("waypoints.gpx", "odd-order.gpx", "prefixed.gpx", "characters.gpx", "latin1.gpx")) {
            byte[] whole = GpxFiles.bytes(name);
            Random random = new Random(name.hashCode());
            for (int round = 0; round < 2000; round++) {
                byte[] damaged = whole.clone();
                for (int i = random.nextInt(4); i >= 0; i--) {
                    byte[] signs = "<>&;\"'/=! \0\u007Fx-]".getBytes(StandardCharsets.US_ASCII);
                    damaged[random.nextInt(damaged.length)] =
                            random.nextBoolean() ? signs[random.nextInt(signs.length)] : (byte) random.nextInt(256);
                }
                assertThat(findings(damaged)).allMatch(one -> one.matches("(?s)line [1-9].*\\."));
            }
        }
    }
}
