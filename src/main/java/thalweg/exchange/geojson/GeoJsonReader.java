package thalweg.exchange.geojson;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.body.Limits;
import thalweg.exchange.gpx.GpxFile;
import thalweg.exchange.gpx.Waypoint;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.json.Findings;
import thalweg.json.Json;
import thalweg.json.JsonDocument;
import thalweg.place.Position;
import thalweg.text.Clean;
import thalweg.units.Length;

/**
 * Reads GeoJSON as a file of waypoints: points by themselves, those of lines as points of a route. What is no point and no line
 * is counted, not taken. A third coordinate is an elevation, as some device saw it.
 *
 * @see "RFC 7946, The GeoJSON Format; 3.1.1 for positions, longitude first"
 */
public final class GeoJsonReader {

    private static final int MOST_FINDINGS = 100;

    private final Findings findings;
    private final List<Waypoint> waypoints = new ArrayList<>();
    private int elsewhere;
    private int nowhere;

    private GeoJsonReader(Findings findings) {
        this.findings = findings;
    }

    /**
     * What the file holds, or {@link GpxFile#EMPTY} where there are findings.
     *
     * @param document whose type says that it is GeoJSON
     */
    public static GpxFile read(JsonDocument document, Findings findings) {
        GeoJsonReader reader = new GeoJsonReader(findings);
        FieldReader root = document.reader(findings);
        if (root.textOrEmpty("type", Limits.NAME).equals("Feature")) {
            reader.feature(root);
        } else {
            root.objects("features").forEach(reader::feature);
        }
        return findings.none() ? new GpxFile(reader.waypoints, 0, reader.remarks()) : GpxFile.EMPTY;
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (nowhere > 0) {
            remarks.add(Sentence.of("Things in the file that have no coordinates, and are not taken: {0}.", nowhere));
        }
        if (elsewhere > 0) {
            remarks.add(Sentence.of(
                    "Things in the file that are no point and no line, and are not taken: {0}.", elsewhere));
        }
        return remarks;
    }

    private void feature(FieldReader feature) {
        if (findings.count() >= MOST_FINDINGS || waypoints.size() > GpxFile.MOST_WAYPOINTS) {
            return;
        }
        Optional<FieldReader> geometry = feature.object("geometry");
        if (geometry.isEmpty()) {
            nowhere++;
            return;
        }
        Said said = said(feature);
        String type = geometry.get().textOrEmpty("type", Limits.NAME);
        Optional<Json> coordinates = geometry.get().fields().field("coordinates");
        switch (type) {
            case "Point" -> point(geometry.get(), coordinates, said, Waypoint.Origin.WAYPOINT);
            case "MultiPoint" -> each(geometry.get(), coordinates, said, Waypoint.Origin.WAYPOINT);
            case "LineString" -> each(geometry.get(), coordinates, said, Waypoint.Origin.ROUTE_POINT);
            case "MultiLineString" ->
                items(coordinates)
                        .forEach(line -> each(geometry.get(), Optional.of(line), said, Waypoint.Origin.ROUTE_POINT));
            default -> elsewhere++;
        }
        if (waypoints.size() > GpxFile.MOST_WAYPOINTS) {
            feature.refuse(
                    "geometry",
                    Sentence.of(
                            "there are more than {0} waypoints; export only those of the canyon.",
                            GpxFile.MOST_WAYPOINTS));
        }
    }

    private void each(FieldReader in, Optional<Json> coordinates, Said said, Waypoint.Origin origin) {
        items(coordinates).forEach(one -> point(in, Optional.of(one), said, origin));
    }

    private static List<Json> items(Optional<Json> value) {
        return value.map(known -> known instanceof Json.Items items ? items.values() : List.<Json>of())
                .orElse(List.of());
    }

    private void point(FieldReader in, Optional<Json> coordinates, Said said, Waypoint.Origin origin) {
        List<BigDecimal> numbers = items(coordinates).stream()
                .flatMap(one -> one instanceof Json.Decimal decimal ? Stream.of(decimal.value()) : Stream.empty())
                .toList();
        if (numbers.size() < 2
                || numbers.get(0).abs().compareTo(BigDecimal.valueOf(180)) > 0
                || numbers.get(1).abs().compareTo(BigDecimal.valueOf(90)) > 0) {
            in.refuse(
                    "coordinates",
                    Sentence.of("should be longitude from -180 to 180, then latitude from -90 to 90, in degrees."));
            return;
        }
        long longitude = Position.e7(numbers.get(0));
        Optional<Length> elevation = numbers.size() < 3
                ? Optional.empty()
                : Optional.of(numbers.get(2))
                        .filter(Waypoint::canBeElevation)
                        .map(metres -> new Length(metres.doubleValue()));
        waypoints.add(new Waypoint(
                Math.max(1, said.line()),
                origin,
                said.name(),
                new Position(
                        Position.e7(numbers.get(1)),
                        longitude == 180 * Position.PER_DEGREE ? -longitude : longitude,
                        said.accuracy()),
                elevation,
                said.comment(),
                said.description(),
                "",
                said.kind(),
                said.time()));
    }

    /** What stands beside a thing, under the names that are common practice: the format itself names none. */
    private record Said(
            int line,
            String name,
            String description,
            String comment,
            String kind,
            String time,
            Optional<Integer> accuracy) {}

    private static Said said(FieldReader feature) {
        Json.Fields properties = feature.raw("properties").orElse(Json.fields().done());
        return new Said(
                feature.line(),
                line(properties, "name"),
                lines(properties, "desc").isEmpty() ? lines(properties, "description") : lines(properties, "desc"),
                lines(properties, "cmt").isEmpty() ? lines(properties, "comment") : lines(properties, "cmt"),
                line(properties, "kind"),
                line(properties, "time"),
                properties
                        .field("accuracy_m")
                        .flatMap(value -> value instanceof Json.Decimal metres
                                        && metres.value().signum() > 0
                                        && metres.value().compareTo(BigDecimal.valueOf(100_000)) <= 0
                                ? Optional.of(metres.value()
                                        .setScale(0, RoundingMode.CEILING)
                                        .intValueExact())
                                : Optional.empty()));
    }

    private static String line(Json.Fields properties, String key) {
        return Clean.line(properties.text(key), Limits.NAME);
    }

    private static String lines(Json.Fields properties, String key) {
        return Clean.lines(properties.text(key), Waypoint.LONGEST_NOTE).strip();
    }
}
