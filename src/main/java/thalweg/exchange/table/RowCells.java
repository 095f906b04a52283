package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.json.Json;
import thalweg.ledger.Uid;

/** The cells of one row by their fields; what is wrong with them is collected, so that all of it is told at once. */
final class RowCells {

    private final int line;
    private final Cells cells;
    private final Map<Field, String> texts = new EnumMap<>(Field.class);
    private final Map<Field, Target> targets = new EnumMap<>(Field.class);
    private final Map<Field, String> headings = new EnumMap<>(Field.class);
    private final List<Sentence> wrong = new ArrayList<>();

    RowCells(Table.Row row, List<String> headed, Columns columns, Cells cells) {
        this.line = row.line();
        this.cells = cells;
        for (int i = 0; i < headed.size(); i++) {
            Optional<Target> target = columns.targets().get(i);
            if (target.isPresent()) {
                targets.put(target.get().field(), target.get());
                headings.put(target.get().field(), headed.get(i));
                if (!row.cells().get(i).isBlank()) {
                    texts.put(target.get().field(), row.cells().get(i));
                }
            }
        }
    }

    /** The line on which the row begins. */
    int line() {
        return line;
    }

    Cells cells() {
        return cells;
    }

    /** What was wrong so far. */
    List<Sentence> wrong() {
        return wrong;
    }

    /** Notes something that is wrong. */
    void refuse(Sentence why) {
        wrong.add(why);
    }

    /** Notes something that is wrong with one cell. */
    void refuse(Field field, Sentence why) {
        wrong.add(Sentence.of("{0}: {1}", headings.getOrDefault(field, field.word()), why));
    }

    /** Whether the file says something there. */
    boolean has(Field field) {
        return texts.containsKey(field);
    }

    /** What stands in a cell, without spaces around it; empty where it is blank or there is no such column. */
    Optional<String> text(Field field) {
        return Optional.ofNullable(texts.get(field)).map(String::strip);
    }

    /** The same for a cell of which no space may be lost. */
    Optional<String> exact(Field field) {
        return Optional.ofNullable(texts.get(field));
    }

    Target target(Field field) {
        return targets.getOrDefault(field, Target.of(field));
    }

    /** An id; empty where there is none, or none that can be read, which is noted. */
    Optional<Uid> uid(Field field) {
        return text(field).flatMap(text -> reading(field, () -> Cells.uid(text)));
    }

    /** A number of a place. */
    Optional<Integer> number(Field field) {
        return text(field).flatMap(text -> reading(field, () -> Cells.number(text)));
    }

    /** The values of those fields that say something, by their keys in the body. */
    Map<Field, Json> values(Set<Field> fields) {
        Map<Field, Json> values = new EnumMap<>(Field.class);
        for (Field field : fields) {
            exact(field)
                    .flatMap(text -> reading(field, () -> cells.value(target(field), text)))
                    .ifPresent(value -> values.put(field, value));
        }
        return values;
    }

    /** Sets a field of a thing to what the row says; a refusal is noted. */
    void set(Node node, Field field, String key, Json value) {
        try {
            node.set(key, value, line);
        } catch (InputException e) {
            refuse(field, e.saying());
        }
    }

    /** What a reader makes of a cell; a refusal is noted. */
    <T> Optional<T> reading(Field field, Supplier<T> reader) {
        try {
            return Optional.of(reader.get());
        } catch (InputException e) {
            refuse(field, e.saying());
            return Optional.empty();
        }
    }
}
