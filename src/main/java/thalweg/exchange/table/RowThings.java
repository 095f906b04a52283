package thalweg.exchange.table;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import thalweg.body.ThingType;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/** Finds the things that a row is about, makes those that are new, and sets what the row says of them. */
final class RowThings {

    private final TableKind kind;
    private final Forest forest;
    private final LocalDate today;

    RowThings(TableKind kind, Forest forest, LocalDate today) {
        this.kind = kind;
        this.forest = forest;
        this.today = today;
    }

    /**
     * The thing of a row, with what the row says of it and what it is in.
     *
     * @return empty where that cannot be told, and the row says why
     * @throws InputException when the row cannot be understood
     */
    Optional<Node> of(RowCells row) {
        return switch (kind) {
            case CANYONS -> canyonRow(row);
            case STATIONS -> stationRow(row);
            case PARTS -> partRow(row);
            case INSPECTIONS -> part(row);
        };
    }

    private Optional<Node> canyonRow(RowCells row) {
        Optional<Node> canyon = canyon(row, true);
        canyon.ifPresent(node -> {
            set(node, row, kind.of(ThingType.CANYON));
            Spots.position(node, row);
            clean(node, row);
        });
        return canyon;
    }

    /** The canyon of a row. */
    private Optional<Node> canyon(RowCells row, boolean mayBeNew) {
        Optional<Uid> uid = row.uid(Field.CANYON_UID);
        if (!row.wrong().isEmpty()) {
            return Optional.empty();
        }
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.CANYON));
        if (known.isPresent()) {
            return known;
        }
        Optional<String> name = row.text(Field.CANYON);
        if (name.isEmpty()) {
            row.refuse(Sentence.of("The row does not say which canyon it is about; give its name or its id."));
            return Optional.empty();
        }
        if (uid.isEmpty()) {
            List<Node> named = told(row, forest.canyonsNamed(name.get()));
            if (named.size() > 1) {
                throw Forest.ambiguous(named, name.get());
            }
            if (!named.isEmpty()) {
                return Optional.of(named.get(0));
            }
        }
        if (!mayBeNew) {
            row.refuse(Sentence.of(
                    "There is no canyon named \"{0}\" here; import the canyons and stations first, or check the name.",
                    name.get()));
            return Optional.empty();
        }
        Node fresh = forest.fresh(ThingType.CANYON, uid, Optional.empty());
        fresh.set("name", Json.of(name.get()), row.line());
        if (kind != TableKind.CANYONS) {
            set(fresh, row, EnumSet.of(Field.INVENTED));
            clean(fresh, row);
        }
        return Optional.of(fresh);
    }

    /** Of several canyons of one name those of the region that the row names. */
    private static List<Node> told(RowCells row, List<Node> named) {
        Optional<String> region = row.text(Field.REGION);
        if (named.size() < 2 || region.isEmpty()) {
            return named;
        }
        List<Node> there = named.stream()
                .filter(node -> node.body()
                        .field("region")
                        .filter(Json.of(region.get())::equals)
                        .isPresent())
                .toList();
        return there.isEmpty() ? named : there;
    }

    private Optional<Node> stationRow(RowCells row) {
        Optional<Uid> uid = row.uid(Field.STATION_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.STATION));
        Optional<Node> place = known.isPresent() ? known.get().parent() : place(row);
        if (place.isEmpty() || !row.wrong().isEmpty()) {
            return place;
        }
        set(place.get(), row, kind.of(ThingType.OBSTACLE));
        Spots.ofPlace(place.get(), row);
        clean(place.get(), row);
        Optional<String> name = row.text(Field.STATION);
        if (known.isEmpty() && uid.isEmpty() && name.isEmpty()) {
            refuseLeftOver(
                    row, ThingType.STATION, Sentence.of("The row says something of a station and gives it no name."));
            return place;
        }
        Optional<Node> station = known.isPresent()
                ? known
                : uid.isPresent() ? Optional.empty() : Forest.named(place.get().children(), name.orElse(""));
        Node node = station.orElseGet(() -> forest.fresh(ThingType.STATION, uid, place));
        set(node, row, kind.of(ThingType.STATION));
        Spots.position(node, row);
        clean(node, row);
        return Optional.of(node);
    }

    /** The place on the line that a row is about: by its id, its number, the name of its station, or new at the end. */
    private Optional<Node> place(RowCells row) {
        Optional<Uid> uid = row.uid(Field.PLACE_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.OBSTACLE));
        if (known.isPresent()) {
            return known;
        }
        Optional<Node> canyon = canyon(row, true);
        Optional<Integer> number = row.number(Field.PLACE);
        if (canyon.isEmpty() || !row.wrong().isEmpty()) {
            return Optional.empty();
        }
        List<Node> line = canyon.get().children();
        if (uid.isEmpty() && number.isPresent()) {
            Optional<Node> numbered = numbered(line, number.get());
            if (numbered.isPresent()) {
                return numbered;
            }
        }
        if (uid.isEmpty() && number.isEmpty() && row.has(Field.STATION)) {
            List<Node> stations =
                    line.stream().flatMap(node -> node.children().stream()).toList();
            Optional<Node> station =
                    Forest.named(stations, row.text(Field.STATION).orElse(""));
            if (station.isPresent()) {
                return station.get().parent();
            }
        }
        Node fresh = forest.fresh(ThingType.OBSTACLE, uid, canyon);
        number.ifPresent(fresh::numbered);
        if (!row.has(Field.PLACE_KIND)) {
            row.refuse(Sentence.of(
                    "The row would be a new place on the line of \"{0}\" and does not say of which kind; give it a"
                            + " place_kind such as drop.",
                    canyon.get().name()));
        }
        return Optional.of(fresh);
    }

    /** New places go by the number that the file gives them, those that are here by where they stand. */
    private static Optional<Node> numbered(List<Node> line, int number) {
        Optional<Node> fresh = line.stream()
                .filter(node -> node.isFresh() && node.number() == number)
                .findFirst();
        if (fresh.isPresent() || number > line.size()) {
            return fresh;
        }
        Node there = line.get(number - 1);
        return there.isFresh() ? Optional.empty() : Optional.of(there);
    }

    private Optional<Node> station(RowCells row) {
        Optional<Uid> uid = row.uid(Field.STATION_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.STATION));
        if (known.isPresent()) {
            return known;
        }
        Optional<Node> canyon = canyon(row, false);
        Optional<Integer> number = row.number(Field.PLACE);
        if (canyon.isEmpty() || !row.wrong().isEmpty()) {
            return Optional.empty();
        }
        List<Node> stations = canyon.get().children().stream()
                .filter(place -> number.isEmpty() || Forest.number(place).equals(Integer.toString(number.get())))
                .flatMap(place -> place.children().stream())
                .toList();
        Optional<String> name = row.text(Field.STATION);
        Optional<Node> found = name.isPresent()
                ? Forest.named(stations, name.get())
                : number.isPresent() && stations.size() == 1 ? Optional.of(stations.get(0)) : Optional.empty();
        if (found.isEmpty()) {
            row.refuse(
                    name.isPresent()
                            ? Sentence.of(
                                    "There is no station \"{0}\" in \"{1}\" at that place; import the stations first, or"
                                            + " check name and number.",
                                    name.get(), canyon.get().name())
                            : Sentence.of("The row does not say which station it is about; give its name or its id."));
        }
        return found;
    }

    private Optional<Node> partRow(RowCells row) {
        Optional<Uid> uid = row.uid(Field.PART_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.PART));
        Optional<String> label = row.text(Field.PART);
        Optional<Node> anchor =
                known.isPresent() ? known.get().parent() : anchor(row, uid.isPresent() ? Optional.empty() : label);
        if (anchor.isEmpty() || !row.wrong().isEmpty()) {
            return anchor;
        }
        set(anchor.get(), row, kind.of(ThingType.ANCHOR));
        clean(anchor.get(), row);
        if (known.isEmpty() && uid.isEmpty() && label.isEmpty()) {
            refuseLeftOver(row, ThingType.PART, Sentence.of("The row says something of a part and gives it no name."));
            return anchor;
        }
        Optional<Node> part = known.isPresent()
                ? known
                : uid.isPresent() ? Optional.empty() : Forest.named(anchor.get().children(), label.orElse(""));
        Node node = part.orElseGet(() -> forest.fresh(ThingType.PART, uid, anchor));
        set(node, row, kind.of(ThingType.PART));
        Spots.offset(node, row);
        clean(node, row);
        return Optional.of(node);
    }

    /** The anchor of a row: by its id, by name or role, or the one that has the part; a first one may be new. */
    private Optional<Node> anchor(RowCells row, Optional<String> label) {
        Optional<Uid> uid = row.uid(Field.ANCHOR_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.ANCHOR));
        if (known.isPresent()) {
            return known;
        }
        Optional<Node> station = station(row);
        Map<Field, Json> said = row.values(EnumSet.of(Field.ANCHOR, Field.ANCHOR_ROLE));
        if (station.isEmpty() || !row.wrong().isEmpty()) {
            return Optional.empty();
        }
        List<Node> anchors = station.get().children();
        if (uid.isEmpty()) {
            List<Node> fitting = anchors.stream()
                    .filter(node -> said.entrySet().stream()
                            .allMatch(one -> node.body()
                                    .field(one.getKey().key())
                                    .filter(one.getValue()::equals)
                                    .isPresent()))
                    .toList();
            Optional<Node> found = fitting.size() == 1 ? Optional.of(fitting.get(0)) : with(fitting, label);
            if (found.isPresent()) {
                return found;
            }
            if (fitting.size() > 1) {
                throw new InputException(Sentence.of(
                        "The station has {0} anchors that the row may mean; give anchor, anchor_role or anchor_uid.",
                        fitting.size()));
            }
        }
        Node fresh = forest.fresh(ThingType.ANCHOR, uid, station);
        if (!said.containsKey(Field.ANCHOR_ROLE)) {
            row.refuse(Sentence.of(
                    "The row would be the first of a new anchor and does not say what that is for; give it an"
                            + " anchor_role: main, high water or alternative."));
        }
        return Optional.of(fresh);
    }

    private static Optional<Node> with(List<Node> anchors, Optional<String> label) {
        List<Node> parts =
                anchors.stream().flatMap(node -> node.children().stream()).toList();
        return label.flatMap(name -> Forest.named(parts, name)).flatMap(Node::parent);
    }

    /** The part that was looked at, which must be here. */
    private Optional<Node> part(RowCells row) {
        Optional<Uid> uid = row.uid(Field.PART_UID);
        Optional<Node> known = uid.flatMap(id -> forest.of(id, ThingType.PART));
        if (known.isPresent()) {
            return known;
        }
        Optional<Node> station = station(row);
        if (station.isEmpty()) {
            return Optional.empty();
        }
        List<Node> parts = station.get().children().stream()
                .flatMap(anchor -> anchor.children().stream())
                .toList();
        Optional<Node> part = row.text(Field.PART).flatMap(label -> Forest.named(parts, label));
        if (part.isEmpty()) {
            row.refuse(
                    row.has(Field.PART)
                            ? Sentence.of(
                                    "The station \"{0}\" has no part \"{1}\"; import the parts first, or check the name.",
                                    station.get().name(), row.text(Field.PART).orElse(""))
                            : Sentence.of("The row does not say which part was looked at; give its name or its id."));
        }
        return part;
    }

    private void set(Node node, RowCells row, Set<Field> fields) {
        row.values(fields).forEach((field, value) -> {
            if (field == Field.INVENTED && !node.isFresh() && kind != TableKind.CANYONS) {
                return;
            }
            if (field == Field.PLACED && value instanceof Json.Text date) {
                refuseFuture(row, PartialDate.parse(date.value()));
            }
            row.set(node, field, field.key(), value);
        });
    }

    private void refuseFuture(RowCells row, PartialDate date) {
        if (!date.hasBegunBy(today)) {
            row.refuse(Field.PLACED, Sentence.of("is {0}, which has not come yet.", date.print()));
        }
    }

    private void refuseLeftOver(RowCells row, ThingType type, Sentence why) {
        if (kind.of(type).stream().anyMatch(row::has)) {
            row.refuse(why);
        }
    }

    private static void clean(Node node, RowCells row) {
        if (row.wrong().isEmpty()) {
            node.clean();
        }
    }
}
