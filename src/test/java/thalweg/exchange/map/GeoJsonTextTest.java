package thalweg.exchange.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.logbook.CanyonRecord;
import thalweg.service.LoadPhrases;
import thalweg.units.UnitSystem;

/** Where things are, as GeoJSON. */
class GeoJsonTextTest {

    private static String write(CanyonRecord... canyons) {
        return GeoJsonText.write(List.of(canyons), LoadPhrases.english(), UnitSystem.METRIC);
    }

    private static String flat(String text) {
        return text.replaceAll("\\s*\n\\s*", " ");
    }

    /** RFC 7946, 3.1.1: longitude comes first. */
    @Test
    void longitudeComesFirst() {
        assertThat(flat(write(MapCanyons.canyon("Rio", "42.1234567, -0.0543211"))))
                .contains("\"type\": \"Point\"")
                .containsPattern("\"coordinates\": \\[ ?-0.0543211, 42.1234567 ?\\]");
    }

    /** RFC 7946, 3.2: a feature that is nowhere has null for a geometry. */
    @Test
    void whatIsNowhereIsThereWithoutAGeometry() {
        assertThat(flat(write(MapCanyons.canyon("Rio", "", MapCanyons.drop(1, "Porte", "")))))
                .contains("\"geometry\": null")
                .contains("1 drop, 18 m, Porte");
    }

    /** RFC 7946, 3.1.9: what crosses the antimeridian is cut in two. The middle between the two points is at 10.5. */
    @Test
    void aWayAcrossTheAntimeridianIsCutThere() {
        String text = flat(write(MapCanyons.canyon(
                "Far", "", MapCanyons.drop(1, "", "10, 179.5"), MapCanyons.drop(2, "", "11, -179.5"))));

        assertThat(text)
                .contains("MultiLineString")
                .containsPattern(
                        "179.5, 10 ?\\], \\[ ?180, 10.5 ?\\] ?\\], ?\\[ ?\\[ ?-180, 10.5 ?\\], \\[ ?-179.5, 11 ?\\]");
    }

    @Test
    void itIsOneCollectionThatOurOwnReaderTakes() {
        Json json = JsonDocument.read(
                        "the collection",
                        write(MapCanyons.canyon(
                                "\"Ri\\o\u2028",
                                "1, 2",
                                MapCanyons.drop(1, "", "1, 2.5"),
                                MapCanyons.drop(2, "", "1, 3"))))
                .root();

        Json features = ((Json.Fields) json).field("features").orElseThrow();
        assertThat(((Json.Items) features).values()).hasSize(4);
    }
}
