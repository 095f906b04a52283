package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thalweg.ledger.Uid;
import thalweg.logbook.CanyonList;
import thalweg.logbook.FoundCanyon;
import thalweg.logbook.StationRow;
import thalweg.text.Fold;
import thalweg.tui.core.Canvas;
import thalweg.tui.core.Style;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.ListState;
import thalweg.tui.widget.Paragraph;

/**
 * The rows of the list of canyons: the canyons that were found, then the stations whose own names have the words.
 *
 * @param canyons of which those around the view are read; the chosen row may be a station behind them
 * @param stations all of them
 * @param moreStations whether there are more that cannot be shown
 */
record CanyonHits(LongList<FoundCanyon> canyons, List<StationRow> stations, boolean moreStations) {

    CanyonHits {
        stations = List.copyOf(stations);
    }

    /** What was found, with the choice as it was. */
    static CanyonHits of(CanyonList found, ListState state) {
        LongList<FoundCanyon> canyons = new LongList<>(found.keys().order(), found.rows(), state);
        return new CanyonHits(canyons, found.stations(), found.moreStations());
    }

    int size() {
        return canyons.size() + stations.size();
    }

    /** The index of the chosen row; 0 where there is none. */
    int chosen() {
        return Math.max(0, Math.min(canyons.state().chosen(), size() - 1));
    }

    /** The key of the chosen row, where it is a canyon. */
    OptionalLong chosenKey() {
        int chosen = chosen();
        return chosen < canyons.size() ? OptionalLong.of(canyons.keys().at(chosen)) : OptionalLong.empty();
    }

    Optional<StationRow> station(int index) {
        int at = index - canyons.size();
        return at >= 0 && at < stations.size() ? Optional.of(stations.get(at)) : Optional.empty();
    }

    /** The canyon in which it is, or which it is; empty while that is being read. */
    Optional<Uid> canyonOf(int index) {
        return canyons.row(index)
                .map(canyon -> canyon.row().uid())
                .or(() -> station(index).map(StationRow::canyon));
    }

    /** These rows with the cursor on what was awaited, else on what was chosen before, else on the nearest to that. */
    CanyonHits placed(Told.CanyonsFound answer, CanyonHits before) {
        if (!answer.asked().keeps()) {
            return at(ListState.START);
        }
        OptionalInt row = Stream.of(rowOf(answer.found().awaited()), rowOf(before.chosenKey()), rowOfStation(before))
                .filter(OptionalInt::isPresent)
                .findFirst()
                .orElseGet(OptionalInt::empty);
        return at(canyons.state().at(row.orElse(answer.asked().view().row()), size()));
    }

    private CanyonHits at(ListState state) {
        return new CanyonHits(canyons.moved(state), stations, moreStations);
    }

    private OptionalInt rowOf(OptionalLong key) {
        return key.isPresent() ? canyons.keys().rowOf(key.getAsLong()) : OptionalInt.empty();
    }

    private OptionalInt rowOfStation(CanyonHits before) {
        Optional<Uid> same = before.station(before.chosen()).map(StationRow::station);
        return IntStream.range(0, stations.size())
                .filter(at -> same.equals(Optional.of(stations.get(at).station())))
                .map(at -> canyons.size() + at)
                .findFirst();
    }

    /** Canyons stand in the order of their names, so that those of the same name are neighbours. */
    private boolean twin(int index, FoundCanyon canyon) {
        String name = Fold.fold(canyon.row().name());
        return Stream.of(index - 1, index + 1)
                .filter(other -> other >= 0)
                .flatMap(other -> canyons.row(other).stream())
                .anyMatch(other -> Fold.fold(other.row().name()).equals(name));
    }

    /** Where a row leads; empty while it is being read. */
    Optional<Go> go(int index) {
        return station(index)
                .<Go>map(row -> new Go.OneStation(row.canyon(), row.station()))
                .or(() -> canyonOf(index).map(Go.OneCanyon::new));
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
        Optional<StationRow> station = station(index);
        if (station.isPresent()) {
            String row = around.say(
                    "canyons.station",
                    station.get().stationName(),
                    station.get().canyonName());
            line.fit(0, 0, line.columns(), row, style);
            return;
        }
        canyons.row(index)
                .ifPresentOrElse(
                        canyon -> columns.row(line, canyon, twin(index, canyon), style),
                        () -> line.put(0, 0, around.say("loading"), style));
    }

    /** How much was found, of so many canyons in all. */
    String count(int all, Surroundings around) {
        String count = canyons.size() == all ? Integer.toString(all) : around.say("canyons.some", canyons.size(), all);
        if (moreStations) {
            return count + ", " + around.say("canyons.stations.first", stations.size());
        }
        return switch (stations.size()) {
            case 0 -> count;
            case 1 -> count + ", " + around.say("canyons.stations.one");
            default -> count + ", " + around.say("canyons.stations.more", stations.size());
        };
    }
}
