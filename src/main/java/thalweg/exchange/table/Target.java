package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a column is.
 *
 * @param field of the records
 * @param unit of its bare numbers; empty text where the cells say it, or where there is none
 */
public record Target(Field field, String unit) {

    public Target {
        if (!unit.isEmpty() && !field.shape().units().contains(unit)) {
            throw new IllegalArgumentException(field + " is not measured in " + unit);
        }
    }

    /** Without a unit. */
    public static Target of(Field field) {
        return new Target(field, "");
    }

    /** A field by itself, and with each unit in which its bare numbers may be. */
    public static List<Target> all(Field field) {
        List<Target> all = new ArrayList<>(List.of(of(field)));
        if (field.needsUnit()) {
            field.shape().units().forEach(unit -> all.add(new Target(field, unit)));
        }
        return all;
    }

    /** As it is typed, and as the headings of exported tables have it: "height", "height_cm". */
    public String word() {
        return unit.isEmpty() ? field.word() : field.word() + "_" + unit;
    }

    /** The target of that word: a field, perhaps with its unit behind it. */
    public static Optional<Target> of(String word) {
        Optional<Field> plain = Field.of(word);
        if (plain.isPresent()) {
            return plain.map(Target::of);
        }
        int cut = word.lastIndexOf('_');
        if (cut < 0) {
            return Optional.empty();
        }
        String unit = word.substring(cut + 1);
        return Field.of(word.substring(0, cut))
                .filter(field -> field.shape().units().contains(unit))
                .map(field -> new Target(field, unit));
    }
}
