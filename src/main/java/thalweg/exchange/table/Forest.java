package thalweg.exchange.table;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.CanyonRecord;
import thalweg.logbook.LineRecord;
import thalweg.logbook.PartRecord;
import thalweg.logbook.StationRecord;
import thalweg.text.Fold;

/** The canyons that rows are about, those that are here and those that are new, with everything in them. */
final class Forest {

    private final Here here;
    private final Supplier<Uid> mint;
    private final Map<Uid, Node> canyons = new LinkedHashMap<>();
    private final Map<Uid, Node> byUid = new HashMap<>();
    private final Map<Uid, PartRecord> parts = new HashMap<>();
    private final Set<Uid> asked = new HashSet<>();
    private final Set<String> askedNames = new HashSet<>();

    Forest(Here here, Supplier<Uid> mint) {
        this.here = here;
        this.mint = mint;
    }

    /** The canyons, in the order in which they were met. */
    List<Node> canyons() {
        return List.copyOf(canyons.values());
    }

    /** What was found so far on a part that is here. */
    Optional<PartRecord> part(Uid part) {
        return Optional.ofNullable(parts.get(part));
    }

    /**
     * The thing of that id, if it is known or was met in the file.
     *
     * @throws InputException when it is something else, or out of use here
     */
    Optional<Node> of(Uid uid, ThingType type) {
        if (!byUid.containsKey(uid) && asked.add(uid)) {
            here.canyonAround(uid).ifPresent(this::load);
        }
        Node node = byUid.get(uid);
        if (node == null) {
            here.head(uid).ifPresent(head -> {
                throw new InputException(Sentence.of(
                        "The id {0} is that of something that was taken out here ({1}); the list of changes brings it"
                                + " back.",
                        uid.text(), Sentence.word(head.type())));
            });
            return Optional.empty();
        }
        if (node.type() != type) {
            throw new InputException(Sentence.of(
                    "The id {0} is that of another kind of thing here: {1}, where the row means {2}.",
                    uid.text(), node.type().inWords(), type.inWords()));
        }
        return Optional.of(node);
    }

    /** The canyons that go by that name, here or in the file. */
    List<Node> canyonsNamed(String name) {
        String folded = Fold.fold(name);
        if (askedNames.add(folded)) {
            here.canyonsNamed(name).forEach(this::load);
        }
        return canyons.values().stream()
                .filter(node -> node.foldedName().equals(folded))
                .toList();
    }

    /** A new thing; under a new id where the file gives it none. */
    Node fresh(ThingType type, Optional<Uid> uid, Optional<Node> parent) {
        Node node = Node.fresh(type, uid.orElseGet(mint), parent);
        byUid.put(node.uid(), node);
        if (type == ThingType.CANYON) {
            canyons.put(node.uid(), node);
        }
        return node;
    }

    private void load(Uid canyon) {
        if (!canyons.containsKey(canyon)) {
            here.canyon(canyon).ifPresent(this::plant);
        }
    }

    private void plant(CanyonRecord record) {
        Node canyon = known(ThingBody.of(record.canyon()), Optional.empty());
        canyons.put(canyon.uid(), canyon);
        for (LineRecord place : record.line()) {
            Node obstacle = known(ThingBody.of(place.obstacle()), Optional.of(canyon));
            for (StationRecord at : place.stations()) {
                Node station = known(ThingBody.of(at.station()), Optional.of(obstacle));
                for (AnchorRecord with : at.anchors()) {
                    Node anchor = known(ThingBody.of(with.anchor()), Optional.of(station));
                    with.parts().forEach(part -> {
                        known(ThingBody.of(part.part()), Optional.of(anchor));
                        parts.put(part.part().uid(), part);
                    });
                }
            }
        }
    }

    private Node known(ThingBody thing, Optional<Node> parent) {
        Node node = Node.known(thing, parent);
        byUid.put(node.uid(), node);
        return node;
    }

    /**
     * The one among several that goes by that name.
     *
     * @throws InputException when several do, naming them
     */
    static Optional<Node> named(List<Node> among, String name) {
        String folded = Fold.fold(name);
        List<Node> named =
                among.stream().filter(node -> node.foldedName().equals(folded)).toList();
        if (named.size() > 1) {
            throw ambiguous(named, name);
        }
        return named.stream().findFirst();
    }

    /** Says which ones a name may mean. */
    static InputException ambiguous(List<Node> named, String name) {
        String both = String.join(
                "; ",
                named.stream()
                        .map(node -> where(node) + " (" + node.uid().text() + ")")
                        .toList());
        return new InputException(Sentence.of(
                "\"{0}\" may be any of these; say which by its id, in a column of its own: {1}.", name, both));
    }

    /** A thing with what it is in, as "Gully/3/Left ledge". */
    static String where(Node node) {
        String within = node.parent().map(Forest::where).orElse("");
        String own = node.type() == ThingType.OBSTACLE ? number(node) : node.name();
        return within.isEmpty() || own.isEmpty() ? within + own : within + "/" + own;
    }

    /** The number of a place on the line, from 1. */
    static String number(Node place) {
        return place.number() > 0
                ? Integer.toString(place.number())
                : place.parent()
                        .map(canyon -> Integer.toString(canyon.children().indexOf(place) + 1))
                        .orElse("");
    }
}
