package thalweg.exchange.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.gpx.GpxReader;
import thalweg.exchange.gpx.Waypoint;
import thalweg.json.Findings;
import thalweg.logbook.CanyonRecord;
import thalweg.service.LoadPhrases;
import thalweg.units.UnitSystem;

/** Where things are, as GPX 1.1; read back by the reader that takes other programs' files. */
class GpxTextTest {

    private static String write(CanyonRecord... canyons) {
        return GpxText.write(
                List.of(canyons), LoadPhrases.english(), UnitSystem.METRIC, Instant.parse("2026-11-25T12:00:00.5Z"));
    }

    private static GpxFile read(String text) {
        Findings findings = new Findings();
        GpxFile file = GpxReader.read(text.getBytes(StandardCharsets.UTF_8), findings);
        assertThat(findings.all()).isEmpty();
        return file;
    }

    @Test
    void whatIsKnownComesBackWithEveryDecimal() {
        GpxFile file = read(write(MapCanyons.canyon(
                "Rio",
                "42.1234567, -0.0543211",
                MapCanyons.drop(1, "Porte", "", MapCanyons.station("Left ledge", "42.5, 0.25")),
                MapCanyons.drop(2, "", "42.6, 0.3"))));

        assertThat(file.waypoints().stream().filter(one -> one.origin() == Waypoint.Origin.WAYPOINT))
                .extracting(one -> one.name() + " " + one.position().latE7() + " "
                        + one.position().lonE7())
                .containsExactly(
                        "Rio 421234567 -543211", "1 Left ledge 425000000 2500000", "2 drop, 18 m 426000000 3000000");
    }

    @Test
    void theLineIsARouteWhereTwoPlacesOfItAreKnown() {
        String two = write(MapCanyons.canyon(
                "Rio",
                "",
                MapCanyons.drop(1, "", "1, 2"),
                MapCanyons.drop(2, "", ""),
                MapCanyons.drop(3, "", "1.1, 2")));
        String one = write(MapCanyons.canyon("Rio", "", MapCanyons.drop(1, "", "1, 2"), MapCanyons.drop(2, "", "")));

        assertThat(read(two).count(Waypoint.Origin.ROUTE_POINT)).isEqualTo(2);
        assertThat(one).doesNotContain("<rte>");
    }

    /** GPX 1.1 Schema: metadataType has desc before time; wptType name, cmt, desc, then type; gpxType metadata, wpt, rte. */
    @Test
    void elementsStandInTheOrderOfTheSchema() {
        String text = write(MapCanyons.canyon(
                "Rio",
                "",
                MapCanyons.drop(1, "", "42.1, 2 ± 30 m"),
                MapCanyons.drop(2, "", "42.2, 2", MapCanyons.station("Ledge", "42.21, 2"))));

        assertThat(text)
                .startsWith(
                        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx xmlns=\"http://www.topografix.com/GPX/1/1\"")
                .contains("<time>2026-11-25T12:00:00Z</time>")
                .contains("Invented: there is no such place.");
        assertThat(text.replaceAll("\\s*\n\\s*", ""))
                .containsSubsequence(
                        "<metadata><desc>",
                        "</desc><time>",
                        "</metadata><wpt lat=\"42.1\" lon=\"2\"><name>",
                        "</name><cmt>± 30 m</cmt><desc>Rio</desc><type>drop</type></wpt>",
                        "<wpt",
                        "<rte><name>Rio</name><rtept");
    }

    @Test
    void whatLooksLikeMarkupOrCannotBeWrittenComesOutHarmless() {
        String name = "<script>&amp;\"]]> \u0000\u001B[31m\uFFFE";

        String text = write(MapCanyons.canyon(name, "1, 2"));

        assertThat(text).doesNotContain("<script>", "\u0000", "\u001B", "\uFFFE");
        assertThat(read(text).waypoints().get(0).name()).contains("<script>&amp;\"]]>");
    }

    @Test
    void nothingKnownIsAFileWithoutPoints() {
        assertThat(read(write(MapCanyons.canyon("Rio", ""))).waypoints()).isEmpty();
    }
}
