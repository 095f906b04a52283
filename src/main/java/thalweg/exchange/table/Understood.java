package thalweg.exchange.table;

import java.util.List;
import thalweg.json.Json;

/**
 * What a row says, as it is understood.
 *
 * @param line of the file on which it begins
 * @param values of its cells that say something and can be read, in the order of the fields
 */
public record Understood(int line, List<Value> values) {

    /**
     * One cell.
     *
     * @param field what its column is taken for
     * @param value in the units of the records
     */
    public record Value(Field field, Json value) {}

    public Understood {
        values = List.copyOf(values);
    }
}
