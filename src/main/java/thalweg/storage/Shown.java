package thalweg.storage;

/** Where lists and searches take their rows from: the one place that says which rows they show,
 * namely what is in use and lies in nothing that is not. */
final class Shown {

    /** Canyons as c, with their summary as t. */
    static final String CANYONS = """
            canyon c
              join canyon_state t on t.canyon = c.key and c.removed = 0""";

    /** Stations as s, with the place on the line as o and the canyon as c. */
    static final String STATIONS = """
            station s
              join obstacle o on o.key = s.parent and s.removed = 0 and o.removed = 0
              join canyon c on c.key = o.parent and c.removed = 0""";

    /** Parts as p, with their anchor as a and all above it. */
    static final String PARTS = """
            part p
              join anchor a on a.key = p.parent and p.removed = 0 and a.removed = 0
              join station s on s.key = a.parent and s.removed = 0
              join obstacle o on o.key = s.parent and o.removed = 0
              join canyon c on c.key = o.parent and c.removed = 0""";

    /** The same from the canyon down, in an order that the indexes have: no row waits for all to be sorted. */
    static final String PARTS_DOWN = """
            canyon c
              cross join obstacle o on o.parent = c.key and c.removed = 0 and o.removed = 0
              cross join station s on s.parent = o.key and s.removed = 0
              cross join anchor a on a.parent = s.key and a.removed = 0
              cross join part p on p.parent = a.key and p.removed = 0""";

    private Shown() {}
}
