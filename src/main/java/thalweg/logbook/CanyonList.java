package thalweg.logbook;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * What a search among canyons found, and as much of it as can be in view.
 *
 * @param keys of the canyons
 * @param rows of those in view and around them, by key
 * @param awaited the key of the canyon that was awaited, where it is known
 * @param stations that the words find by a name of their own, in canyons that fit; at most so many as can be chosen from
 * @param moreStations whether there are more
 */
public record CanyonList(
        CanyonKeys keys,
        Map<Long, FoundCanyon> rows,
        OptionalLong awaited,
        List<StationRow> stations,
        boolean moreStations) {

    /** Nothing found. */
    public static final CanyonList NONE =
            new CanyonList(new CanyonKeys(RowOrder.NONE, 0), Map.of(), OptionalLong.empty(), List.of(), false);

    public CanyonList {
        rows = Map.copyOf(rows);
        stations = List.copyOf(stations);
    }
}
