package thalweg.exchange.map;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.json.FieldWriter;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.Standing;
import thalweg.logbook.StationRecord;
import thalweg.place.Position;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/**
 * Canyons as GeoJSON: a feature for each canyon, place and station, in the order of the line, and one for each way down of which
 * two places or more are known. Where nobody knows a thing's coordinates its feature has no geometry, so that nothing is left
 * out. What is unknown is not among the properties.
 *
 * @see "RFC 7946, The GeoJSON Format; 3.2 for features without geometry, 3.1.9 for the antimeridian"
 */
public final class GeoJsonText {

    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);
    private static final BigDecimal TURN = BigDecimal.valueOf(360);

    private final List<Json> features = new ArrayList<>();
    private final MapWords words;

    private GeoJsonText(MapWords words) {
        this.words = words;
    }

    /** Writes them. */
    public static String write(List<CanyonRecord> canyons, Phrases phrases, UnitSystem units) {
        GeoJsonText text = new GeoJsonText(new MapWords(phrases, units));
        canyons.forEach(text::canyon);
        return JsonText.indented(Json.fields()
                .put("type", "FeatureCollection")
                .put("features", new Json.Items(text.features))
                .done());
    }

    private void canyon(CanyonRecord canyon) {
        FieldWriter about = Json.fields()
                .put("kind", "canyon")
                .put("name", canyon.canyon().name())
                .put("caution", words.caution(canyon.canyon().invented()));
        standing(about, canyon.standing());
        about.putIfTrue("invented", canyon.canyon().invented());
        feature(canyon.canyon().uid().text(), canyon.canyon().position(), about);
        for (LineRecord place : canyon.line()) {
            place(canyon, place);
        }
        List<Located.Stop> way = Located.way(canyon);
        if (way.size() >= 2) {
            features.add(Json.fields()
                    .put("type", "Feature")
                    .put(
                            "geometry",
                            line(way.stream().map(Located.Stop::position).toList()))
                    .put(
                            "properties",
                            Json.fields()
                                    .put("kind", "way down")
                                    .put("name", canyon.canyon().name())
                                    .done())
                    .done());
        }
    }

    private void place(CanyonRecord canyon, LineRecord place) {
        FieldWriter about = Json.fields()
                .put("kind", MapWords.word(place.obstacle().kind()))
                .put("name", words.place(place))
                .put("canyon", canyon.canyon().name())
                .put("number", place.number());
        place.obstacle().height().map(Length::inCentimetres).ifPresent(height -> about.put("height_cm", height));
        feature(place.obstacle().uid().text(), place.obstacle().position(), about);
        for (StationRecord station : place.stations()) {
            station(canyon, place, station);
        }
    }

    private void station(CanyonRecord canyon, LineRecord place, StationRecord station) {
        FieldWriter about = Json.fields()
                .put("kind", "station")
                .put("name", words.station(place, station))
                .put("canyon", canyon.canyon().name())
                .put("number", place.number())
                .put("parts", station.parts().size());
        standing(about, station.standing());
        station.oldestLook().map(PartialDate::print).ifPresent(on -> about.put("oldest_look", on));
        feature(station.station().uid().text(), station.station().position(), about);
    }

    private static void standing(FieldWriter about, Standing standing) {
        standing.worst().ifPresent(worst -> about.put("worst_condition", MapWords.word(worst)));
        about.put("gone", standing.gone());
        about.put("never_inspected", standing.neverSeen());
    }

    private void feature(String id, Optional<Position> position, FieldWriter about) {
        position.flatMap(Position::accuracyMetres).ifPresent(metres -> about.put("accuracy_m", metres));
        Json geometry = position.map(at -> (Json) Json.fields()
                        .put("type", "Point")
                        .put("coordinates", degrees(at))
                        .done())
                .orElse(new Json.Nothing());
        features.add(Json.fields()
                .put("type", "Feature")
                .put("id", id)
                .put("geometry", geometry)
                .put("properties", about.done())
                .done());
    }

    /** Longitude first, as the format has it. */
    private static Json degrees(Position position) {
        return degrees(new BigDecimal(position.printLongitude()), new BigDecimal(position.printLatitude()));
    }

    private static Json degrees(BigDecimal longitude, BigDecimal latitude) {
        return new Json.Items(List.of(new Json.Decimal(longitude), new Json.Decimal(latitude)));
    }

    /** A line is cut where it crosses the antimeridian, lest it be drawn once around the earth. */
    private static Json line(List<Position> way) {
        List<Json> pieces = new ArrayList<>();
        List<Json> piece = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            if (i > 0 && crosses(way.get(i - 1), way.get(i))) {
                BigDecimal side = way.get(i - 1).lonE7() > 0 ? HALF_TURN : HALF_TURN.negate();
                BigDecimal latitude = between(way.get(i - 1), way.get(i));
                piece.add(degrees(side, latitude));
                pieces.add(new Json.Items(piece));
                piece = new ArrayList<>();
                piece.add(degrees(side.negate(), latitude));
            }
            piece.add(degrees(way.get(i)));
        }
        pieces.add(new Json.Items(piece));
        return Json.fields()
                .put("type", pieces.size() == 1 ? "LineString" : "MultiLineString")
                .put("coordinates", pieces.size() == 1 ? pieces.get(0) : new Json.Items(pieces))
                .done();
    }

    private static boolean crosses(Position from, Position to) {
        return Math.abs(from.lonE7() - to.lonE7()) > 180 * Position.PER_DEGREE;
    }

    /** The latitude at which the line meets the antimeridian, between two points a few kilometres apart. */
    private static BigDecimal between(Position from, Position to) {
        double start = from.lonE7();
        double turn = TURN.longValue() * (double) Position.PER_DEGREE;
        double end = to.lonE7() + (start > 0 ? turn : -turn);
        double edge = start > 0 ? turn / 2 : -turn / 2;
        double share = end == start ? 0 : (edge - start) / (end - start);
        long latitude = Math.round(from.latE7() + share * (to.latE7() - from.latE7()));
        return BigDecimal.valueOf(latitude, 7).stripTrailingZeros();
    }
}
