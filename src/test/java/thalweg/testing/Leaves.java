package thalweg.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import thalweg.json.Json;

/** The values in a body by where they stand. */
public final class Leaves {

    private Leaves() {}

    /** Texts, numbers and flags by their keys, joined by dots, without the numbers of list entries. */
    public static Map<String, List<Json>> of(Json.Fields body) {
        Map<String, List<Json>> leaves = new TreeMap<>();
        body.values().forEach((key, value) -> add(key, value, leaves));
        return leaves;
    }

    private static void add(String path, Json value, Map<String, List<Json>> leaves) {
        if (value instanceof Json.Fields fields) {
            fields.values().forEach((key, inner) -> add(path + "." + key, inner, leaves));
        } else if (value instanceof Json.Items items) {
            items.values().forEach(inner -> add(path, inner, leaves));
        } else {
            leaves.computeIfAbsent(path, one -> new ArrayList<>()).add(value);
        }
    }
}
