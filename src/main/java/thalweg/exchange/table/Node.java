package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thalweg.body.Entered;
import thalweg.body.ThingBody;
import thalweg.body.ThingType;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.json.JsonText;
import thalweg.ledger.OrderKey;
import thalweg.ledger.Uid;
import thalweg.text.Fold;

/** A thing while rows are read: as it is here, or new, with what rows say of it. */
final class Node {

    private static final String ORDER = "order";

    /** Stands in until the places in line are known. */
    private static final String SOME_ORDER = OrderKey.between("", "");

    private final ThingType type;
    private final Uid uid;
    private final Optional<Node> parent;
    private final Optional<Json.Fields> before;
    private final List<Node> children = new ArrayList<>();
    private final Map<String, Integer> setOn = new HashMap<>();
    private Json.Fields body;
    private String folded = "";
    private int number;
    private boolean used;

    private Node(ThingType type, Uid uid, Optional<Node> parent, Optional<Json.Fields> before, Json.Fields body) {
        this.type = type;
        this.uid = uid;
        this.parent = parent;
        this.before = before;
        this.body = body;
        parent.ifPresent(node -> node.children.add(this));
    }

    /** A thing that is here. */
    static Node known(ThingBody thing, Optional<Node> parent) {
        return new Node(thing.type(), thing.uid(), parent, Optional.of(thing.body()), thing.body());
    }

    /** A thing that is new, after all that are in its parent. */
    static Node fresh(ThingType type, Uid uid, Optional<Node> parent) {
        Json.Fields body = Json.fields().done();
        if (parent.isPresent()) {
            body = body.with(type.parentKey(), Json.of(parent.get().uid.text())).with(ORDER, Json.of(SOME_ORDER));
        }
        return new Node(type, uid, parent, Optional.empty(), body);
    }

    ThingType type() {
        return type;
    }

    Uid uid() {
        return uid;
    }

    Optional<Node> parent() {
        return parent;
    }

    boolean isFresh() {
        return before.isEmpty();
    }

    /** As it was here; of a new thing nothing. */
    Optional<Json.Fields> before() {
        return before;
    }

    List<Node> children() {
        return children;
    }

    /** The number that the file gives a new place; 0 where it gives none. */
    int number() {
        return number;
    }

    /** Puts a new place where the file has it, if the line is that long already. */
    void numbered(int at) {
        number = at;
        parent.ifPresent(node -> {
            if (at < node.children.size()) {
                node.children.remove(this);
                node.children.add(at - 1, this);
            }
        });
    }

    /** Notes that a row is about it or about something in it. */
    void use() {
        used = true;
        parent.ifPresent(Node::use);
    }

    boolean isUsed() {
        return used;
    }

    /** Whether that line was the first to say something of it. */
    boolean isSetOn(int line) {
        return setOn.containsValue(line);
    }

    /** Whether it would be another than it is here. */
    boolean differs() {
        return before.filter(body::equals).isEmpty();
    }

    /** Puts new places at the end into the order of their numbers, those without one last. */
    void sortNewPlaces() {
        int from = children.size();
        while (from > 0 && children.get(from - 1).isFresh()) {
            from--;
        }
        children.subList(from, children.size())
                .sort(Comparator.comparingInt(node -> node.number == 0 ? Integer.MAX_VALUE : node.number));
    }

    Json.Fields body() {
        return body;
    }

    /** What people call it. */
    String name() {
        return body.text(type == ThingType.PART ? "label" : "name");
    }

    /** The same for comparing, whatever its accents and case. */
    String foldedName() {
        if (folded.isEmpty()) {
            folded = Fold.fold(name());
        }
        return folded;
    }

    /**
     * Sets a field.
     *
     * @param line of the file that says so
     * @throws InputException when another line says something else of it
     */
    void set(String key, Json value, int line) {
        Integer other = setOn.get(key);
        if (other != null
                && !JsonText.canonical(value)
                        .equals(JsonText.canonical(body.field(key).orElse(Json.NOTHING)))) {
            throw new InputException(
                    Sentence.of("is not what line {0} says of the same thing; make the two alike.", other));
        }
        setOn.put(key, other == null ? line : other);
        body = body.with(key, value);
        folded = "";
    }

    /** Takes what was set through the door for what people type: cleaned, within limits. */
    void clean() {
        body = Entered.of(thing()).body();
        folded = "";
    }

    /** As the ledger takes it. */
    ThingBody thing() {
        return new ThingBody(type, uid, name(), body);
    }

    /** Gives the new ones among its children their places in line, between those that are here. */
    void orderChildren() {
        for (int from = 0; from < children.size(); from++) {
            if (!children.get(from).isFresh()) {
                continue;
            }
            int to = from;
            while (to < children.size() && children.get(to).isFresh()) {
                to++;
            }
            String low = from == 0 ? "" : children.get(from - 1).order();
            String high = children.subList(to, children.size()).stream()
                    .map(Node::order)
                    .filter(order -> order.compareTo(low) > 0)
                    .findFirst()
                    .orElse("");
            between(low, high, children.subList(from, to));
            from = to - 1;
        }
    }

    /** Halves the room again and again, so that the keys of many stay short. */
    private static void between(String low, String high, List<Node> nodes) {
        if (nodes.isEmpty()) {
            return;
        }
        String key = OrderKey.between(low, high);
        if (!OrderKey.isKey(key)) {
            throw new InputException(Sentence.of("There is no room for so many in one line; import fewer at a time."));
        }
        int middle = nodes.size() / 2;
        between(low, key, nodes.subList(0, middle));
        nodes.get(middle).body = nodes.get(middle).body.with(ORDER, Json.of(key));
        between(key, high, nodes.subList(middle + 1, nodes.size()));
    }

    private String order() {
        return body.text(ORDER);
    }
}
