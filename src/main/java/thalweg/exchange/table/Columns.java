package thalweg.exchange.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the columns of a table are taken for.
 *
 * @param kind of its rows
 * @param targets one a column; empty for one that is left out
 */
public record Columns(TableKind kind, List<Optional<Target>> targets) {

    public Columns {
        targets = List.copyOf(targets);
    }

    /** The fields that more than one column is taken for, in order. */
    public List<Field> twice() {
        Map<Field, Integer> counts = new EnumMap<>(Field.class);
        targets.stream().flatMap(Optional::stream).forEach(target -> counts.merge(target.field(), 1, Integer::sum));
        return counts.entrySet().stream()
                .filter(count -> count.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The headings of columns that are left out. */
    public List<String> leftOut(List<String> headings) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (targets.get(i).isEmpty() && !headings.get(i).isBlank()) {
                out.add(headings.get(i));
            }
        }
        return out;
    }

    /** The same with another target for one column. */
    public Columns with(int column, Optional<Target> target) {
        List<Optional<Target>> changed = new ArrayList<>(targets);
        changed.set(column, target);
        return new Columns(kind, changed);
    }
}
