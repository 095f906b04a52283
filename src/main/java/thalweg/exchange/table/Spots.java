package thalweg.exchange.table;

import java.util.List;
import java.util.Optional;
import thalweg.body.Limits;
import thalweg.body.PartBody;
import thalweg.body.PositionBody;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.place.Position;
import thalweg.place.PositionText;
import thalweg.route.PartPlace;
import thalweg.units.Length;

/** Where things are, which takes several cells: coordinates with how far off they may be, the place of a part. */
final class Spots {

    /** Beyond 100 km it is no position [m]. */
    private static final int MOST_METRES = 100_000;

    private static final String ACCURACY = "accuracy_m";
    private static final String PLACE = "place";

    private Spots() {}

    /** Sets the coordinates of what the row is of. */
    static void position(Node node, RowCells row) {
        position(node, row, Field.COORDINATES, Field.LATITUDE, Field.LONGITUDE, Field.ACCURACY);
    }

    /** Sets those of the place that the row's station is at. */
    static void ofPlace(Node node, RowCells row) {
        position(node, row, Field.PLACE_COORDINATES, Field.PLACE_LATITUDE, Field.PLACE_LONGITUDE, Field.PLACE_ACCURACY);
    }

    private static void position(Node node, RowCells row, Field both, Field latitude, Field longitude, Field accuracy) {
        if (row.has(latitude) != row.has(longitude) && !row.has(both)) {
            row.refuse(
                    row.has(latitude) ? latitude : longitude,
                    Sentence.of("stands without the other of the two; latitude and longitude belong together."));
            return;
        }
        Optional<Json.Fields> said = stated(row, both, latitude, longitude).map(Spots::fields);
        Optional<Json.Fields> known = known(node);
        boolean same = said.isPresent()
                && known.map(here -> here.without(ACCURACY)).equals(said.map(there -> there.without(ACCURACY)));
        Optional<Json.Fields> position = said.isEmpty() || (same && !has(said.get())) ? known : said;
        Optional<Integer> metres =
                row.text(accuracy).flatMap(text -> row.reading(accuracy, () -> metres(row.target(accuracy), text)));
        if (metres.isPresent() && position.isEmpty()) {
            row.refuse(accuracy, Sentence.of("stands without coordinates."));
            return;
        }
        Optional<Json.Fields> whole =
                metres.isPresent() ? position.map(at -> at.with(ACCURACY, Json.of(metres.get()))) : position;
        if (said.isPresent() || metres.isPresent()) {
            whole.ifPresent(at -> row.set(node, both, PositionBody.KEY, at));
        }
    }

    private static boolean has(Json.Fields position) {
        return position.field(ACCURACY).isPresent();
    }

    private static Optional<Json.Fields> known(Node node) {
        return node.body()
                .field(PositionBody.KEY)
                .flatMap(value -> value instanceof Json.Fields fields ? Optional.of(fields) : Optional.empty());
    }

    private static Optional<Position> stated(RowCells row, Field both, Field latitude, Field longitude) {
        if (row.has(both)) {
            return row.reading(both, () -> PositionText.parse(row.text(both).orElse("")));
        }
        return row.text(latitude)
                .flatMap(north -> row.text(longitude)
                        .flatMap(east -> row.reading(
                                latitude, () -> PositionText.parse(pointed(north) + "; " + pointed(east)))));
    }

    /** A number by itself has no other comma than that before its decimals. */
    private static String pointed(String degrees) {
        return degrees.matches("[+-]?\\d{1,3},\\d+") ? degrees.replace(',', '.') : degrees;
    }

    private static Json.Fields fields(Position position) {
        return (Json.Fields) PositionBody.written(Optional.of(position)).orElseThrow();
    }

    private static int metres(Target target, String text) {
        return (int) ((Cells.centimetres(target, text, 100, MOST_METRES * 100L) + 99) / 100);
    }

    /** Sets where a part is; it is measured in three directions, or not at all. */
    static void offset(Node part, RowCells row) {
        List<Field> directions = List.of(Field.RIGHT, Field.UP, Field.OUT);
        if (directions.stream().noneMatch(row::has)) {
            return;
        }
        if (!directions.stream().allMatch(row::has)) {
            row.refuse(Sentence.of("The columns right, up and out belong together: the row has some of them only."));
            return;
        }
        List<Length> lengths = directions.stream()
                .flatMap(field -> row
                        .reading(
                                field,
                                () -> Length.centimetres(Cells.centimetres(
                                        row.target(field),
                                        row.text(field).orElse(""),
                                        -Limits.PLACE_CM,
                                        Limits.PLACE_CM)))
                        .stream())
                .toList();
        if (lengths.size() == directions.size()) {
            row.set(
                    part,
                    Field.RIGHT,
                    PLACE,
                    PartBody.place(new PartPlace(lengths.get(0), lengths.get(1), lengths.get(2))));
        }
    }
}
