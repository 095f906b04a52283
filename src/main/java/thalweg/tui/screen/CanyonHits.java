package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.ledger.Uid;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.FoundCanyons;
import thalweg.logbook.StationRow;
import thalweg.text.Fold;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Paragraph;

/**
 * The rows of the list of canyons: the canyons that were found, then the stations whose own names have the words.
 *
 * @param found what the search found
 */
record CanyonHits(FoundCanyons found) {

    /** Nothing found. */
    static final CanyonHits NONE = new CanyonHits(new FoundCanyons(List.of(), 0, List.of(), false));

    int size() {
        return found.canyons().size() + found.stations().size();
    }

    Optional<FoundCanyon> canyon(int index) {
        return index < found.canyons().size() ? Optional.of(found.canyons().get(index)) : Optional.empty();
    }

    Optional<StationRow> station(int index) {
        int at = index - found.canyons().size();
        return at >= 0 && at < found.stations().size()
                ? Optional.of(found.stations().get(at))
                : Optional.empty();
    }

    /** The thing that a row stands for. */
    private Uid uid(int index) {
        return canyon(index)
                .map(canyon -> canyon.row().uid())
                .or(() -> station(index).map(StationRow::station))
                .orElseThrow();
    }

    /** The canyon in which it is, or which it is. */
    Uid canyonOf(int index) {
        return canyon(index)
                .map(canyon -> canyon.row().uid())
                .or(() -> station(index).map(StationRow::canyon))
                .orElseThrow();
    }

    /** The things that the rows stand for. */
    List<Optional<Uid>> uids() {
        return IntStream.range(0, size()).mapToObj(row -> Optional.of(uid(row))).toList();
    }

    /** Canyons stand in the order of their names, so that those of the same name are neighbours. */
    private boolean twin(int index) {
        return IntStream.of(index - 1, index + 1)
                .filter(other -> other >= 0 && other < found.canyons().size())
                .anyMatch(other -> folded(other).equals(folded(index)));
    }

    private String folded(int index) {
        return Fold.fold(found.canyons().get(index).row().name());
    }

    /** Where a row leads. */
    Go go(int index) {
        return station(index)
                .<Go>map(row -> new Go.OneStation(row.canyon(), row.station()))
                .orElseGet(() -> new Go.OneCanyon(canyonOf(index)));
    }

    /** What is known of what a row stands for. */
    List<Paragraph> about(int index, Told.CanyonLoaded loaded, Surroundings around) {
        return station(index)
                .flatMap(row -> loaded.record().station(row.station()))
                .map(station -> About.station(station, around))
                .orElseGet(() -> AboutLocal.canyon(loaded.record(), loaded.local(), around));
    }

    /** Paints a row. */
    void paint(Canvas line, int index, Style style, CanyonColumns columns, Surroundings around) {
        canyon(index).ifPresent(canyon -> columns.row(line, canyon, twin(index), style));
        station(index)
                .ifPresent(row -> line.fit(
                        0,
                        0,
                        line.columns(),
                        around.say("canyons.station", row.stationName(), row.canyonName()),
                        style));
    }

    /** How much was found, of so many canyons in all. */
    String count(int all, Surroundings around) {
        int canyons = found.canyons().size();
        String count = canyons == all ? Integer.toString(all) : around.say("canyons.some", canyons, all);
        if (found.moreStations()) {
            return count + ", "
                    + around.say("canyons.stations.first", found.stations().size());
        }
        return switch (found.stations().size()) {
            case 0 -> count;
            case 1 -> count + ", " + around.say("canyons.stations.one");
            default ->
                count + ", "
                        + around.say("canyons.stations.more", found.stations().size());
        };
    }
}
