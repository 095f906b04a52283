package thalweg.exchange.gpx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether the files that the reader is tested with are what they are taken for. */
class GpxRulesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "waypoints.gpx",
                "route.gpx",
                "track.gpx",
                "prefixed.gpx",
                "crlf.gpx",
                "latin1.gpx",
                "characters.gpx",
                "all-fields.gpx"
            })
    void theseFilesFollowTheSchema(String name) {
        assertThat(GpxRules.breaches(GpxFiles.bytes(name))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "minimal.gpx, the version is 1.1",
        "version-1-0.gpx, the version is 1.1",
        "odd-order.gpx, wpt has its place in gpx"
    })
    void theseFilesDoNotAndAreReadAllTheSame(String name, String rule) {
        assertThat(GpxRules.breaches(GpxFiles.bytes(name))).contains(rule);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        <name>n</name><ele>1</ele>      | ele has its place in wpt
        <desc>d</desc><cmt>c</cmt>      | cmt has its place in wpt
        <type>t</type><sym>s</sym>      | sym has its place in wpt
        <name>a</name><name>b</name>    | name has its place in wpt
        <ele>1e3</ele>                  | an elevation is a decimal number
        <time>2026-08-30 10:00</time>   | a time is in UTC
        <x xmlns="urn:x"/>              | (foreign) has its place in wpt
        <magvar>360</magvar>            | a bearing is from 0 to below 360
        <fix>4d</fix>                   | a fix is one of five words
        <sat>-1</sat>                   | sat is a whole number from 0
        <hdop>1e2</hdop>                | hdop is a decimal number
        <dgpsid>1024</dgpsid>           | a station is 0 to 1023
        <link/>                         | link has href
        <link href="x"><a/></link>      | a has its place in link
        <name><b/></name>               | name holds a text alone
        <name id="x">n</name>           | name has no attribute id
        loose text                      | wpt holds no text of its own
        <extensions><name/></extensions> | extensions are of another namespace
        """)
    void theRulesCatchWhatBreaksThem(String children, String rule) {
        assertThat(GpxRules.breaches(file("lat=\"1\" lon=\"2\"", children))).containsExactly(rule);
    }

    @Test
    void theRulesCatchCoordinatesThatAreNotOnTheGlobe() {
        assertThat(GpxRules.breaches(file("lat=\"1\" lon=\"180\"", ""))).hasSize(1);
        assertThat(GpxRules.breaches(file("lat=\"-90.1\"", ""))).hasSize(3);
    }

    private static byte[] file(String attributes, String children) {
        return ("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\" creator=\"x\"><wpt " + attributes
                        + ">" + children + "</wpt></gpx>")
                .getBytes(StandardCharsets.UTF_8);
    }
}
