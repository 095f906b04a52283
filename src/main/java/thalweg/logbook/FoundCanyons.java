package thalweg.logbook;

import java.util.List;

/**
 * What a search among canyons found.
 *
 * @param canyons in the order of their names; those that may fit are among them where they were asked for
 * @param unknown how many canyons may fit, whether they are among the found or not
 * @param stations that the words find by a name of their own, in canyons that fit; at most so many as can be chosen from
 * @param moreStations whether there are more
 */
public record FoundCanyons(List<FoundCanyon> canyons, int unknown, List<StationRow> stations, boolean moreStations) {

    public FoundCanyons {
        canyons = List.copyOf(canyons);
        stations = List.copyOf(stations);
    }

    /** The canyons as a list shows them. */
    public List<CanyonRow> rows() {
        return canyons.stream().map(FoundCanyon::row).toList();
    }
}
