package thalweg.exchange.geojson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.gpx.Waypoint;
import thalweg.exchange.map.GeoJsonText;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonRecord;
import thalweg.place.Position;
import thalweg.service.LoadPhrases;
import thalweg.service.ReadWaypoints;
import thalweg.testing.SampleRecords;
import thalweg.units.UnitSystem;

final class GeoJsonReaderTest {

    private static ReadWaypoints.Answer read(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        assertThat(ReadWaypoints.looksLikeOne(bytes)).isTrue();
        return ReadWaypoints.of("places.json", bytes);
    }

    /** The first geometry of RFC 7946, 1.5, with names beside it. */
    @Test
    void aPointHasLongitudeFirstAndWhatIsCalledByCommonNames() {
        GpxFile file = read("""
                {"type": "FeatureCollection", "features": [
                  {"type": "Feature", "geometry": {"type": "Point", "coordinates": [102.0, 0.5, 740.5]},
                   "properties": {"name": "Top", "desc": "by the pine", "accuracy_m": 4.2}}]}
                """).file();

        Waypoint point = file.waypoints().get(0);
        assertThat(point.position()).isEqualTo(new Position(5_000_000, 1_020_000_000, Optional.of(5)));
        assertThat(point.name()).isEqualTo("Top");
        assertThat(point.note()).isEqualTo("by the pine");
        assertThat(point.elevation().orElseThrow().metres()).isEqualTo(740.5);
        assertThat(point.line()).isEqualTo(2);
    }

    @Test
    void theCornersOfALineAreThoseOfARoute() {
        GpxFile file = read("""
                {"type": "Feature", "geometry": {"type": "LineString", "coordinates": [[1, 2], [1.1, 2.1]]},
                 "properties": null}
                """).file();

        assertThat(file.count(Waypoint.Origin.ROUTE_POINT)).isEqualTo(2);
    }

    @Test
    void whatIsNoPointAndWhatIsNowhereIsCounted() {
        GpxFile file = read("""
                {"type": "FeatureCollection", "features": [
                  {"type": "Feature", "geometry": null, "properties": {}},
                  {"type": "Feature", "geometry": {"type": "Polygon", "coordinates": []}, "properties": {}}]}
                """).file();

        assertThat(file.waypoints()).isEmpty();
        assertThat(file.remarks())
                .extracting(Sentence::toString)
                .containsExactly(
                        "Things in the file that have no coordinates, and are not taken: 1.",
                        "Things in the file that are no point and no line, and are not taken: 1.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"[181, 1]", "[1, 91]", "[1]", "[]", "\"1, 2\"", "[\"1\", \"2\"]", "[null, 1]"})
    void coordinatesThatAreNoneAreRefusedByTheirLine(String coordinates) {
        ReadWaypoints.Answer answer = read("{\"type\": \"FeatureCollection\", \"features\": [\n"
                + "{\"type\": \"Feature\", \"geometry\": {\"type\": \"Point\", \"coordinates\": " + coordinates
                + "}, \"properties\": {}}]}");

        assertThat(answer.file().waypoints()).isEmpty();
        assertThat(answer.findings())
                .singleElement()
                .asString()
                .startsWith("line 2, ")
                .contains("longitude from -180");
    }

    @Test
    void recordsAreNoFileOfWaypoints() {
        assertThat(ReadWaypoints.looksLikeOne(SampleRecords.bytes())).isFalse();
    }

    @Test
    void whatTheProgramWritesComesBack() {
        List<CanyonRecord> canyons = SampleRecords.CANYONS;
        String text = GeoJsonText.write(canyons, LoadPhrases.english(), UnitSystem.METRIC);

        ReadWaypoints.Answer answer = read(text);

        long known = canyons.stream()
                        .filter(canyon -> canyon.canyon().position().isPresent())
                        .count()
                + SampleRecords.places()
                        .filter(place -> place.obstacle().position().isPresent())
                        .count()
                + SampleRecords.stations()
                        .filter(station -> station.station().position().isPresent())
                        .count();
        assertThat(answer.findings()).isEmpty();
        assertThat(answer.file().count(Waypoint.Origin.WAYPOINT)).isEqualTo((int) known);
    }
}
