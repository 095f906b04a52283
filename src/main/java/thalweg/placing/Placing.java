package thalweg.placing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.exchange.gpx.Waypoint;
import thalweg.logbook.CanyonRecord;
import thalweg.route.ObstacleKind;

/**
 * Waypoints on their way to a canyon's line: an immutable value, so that taking a decision back is going back to the value
 * before it. Nothing is decided that a person did not decide; no height or distance comes from a waypoint.
 *
 * @param canyon as it is, with its line; a new one has an empty line
 * @param isNew whether the canyon is entered together with what is placed
 * @param waypoints in the order of the file
 * @param decisions one a waypoint, in the same order
 * @param line the places of the canyon in their order, with those among them that waypoints become
 */
public record Placing(
        CanyonRecord canyon, boolean isNew, List<Waypoint> waypoints, List<Decision> decisions, List<Spot> line) {

    private static final Decision UNDECIDED = new Decision.Undecided();

    public Placing {
        waypoints = List.copyOf(waypoints);
        decisions = List.copyOf(decisions);
        line = List.copyOf(line);
        if (decisions.size() != waypoints.size()) {
            throw new IllegalArgumentException("every waypoint has one decision");
        }
    }

    /** Nothing decided yet. */
    public static Placing start(CanyonRecord canyon, boolean isNew, List<Waypoint> waypoints) {
        List<Spot> line = canyon.line().stream()
                .map(place -> (Spot) new Spot.Known(place.obstacle().uid()))
                .toList();
        return new Placing(canyon, isNew, waypoints, Collections.nCopies(waypoints.size(), UNDECIDED), line);
    }

    /** Why a decision about a waypoint cannot be taken, if it cannot. */
    public Optional<Refusal> refusal(int waypoint, Decision decision) {
        if (decision instanceof Decision.NewStation station && station.at().equals(new Spot.Made(waypoint))) {
            return Optional.of(Refusal.IS_THE_PLACE);
        }
        boolean same = decision.equals(decisions.get(waypoint));
        boolean placeGoes = decisions.get(waypoint) instanceof Decision.NewPlace
                && !(decision instanceof Decision.NewPlace)
                && stationsAt(new Spot.Made(waypoint)).findAny().isPresent();
        if (placeGoes) {
            return Optional.of(Refusal.CARRIES_A_STATION);
        }
        boolean oneOnly = decision instanceof Decision.PlacePosition
                || decision instanceof Decision.StationPosition
                || decision instanceof Decision.CanyonStart;
        return oneOnly && !same && decisions.contains(decision)
                ? Optional.of(Refusal.TAKEN_BY_ANOTHER)
                : Optional.empty();
    }

    /** The waypoints that become stations at that place, in the order of the file. */
    public IntStream stationsAt(Spot place) {
        return IntStream.range(0, decisions.size())
                .filter(i -> decisions.get(i) instanceof Decision.NewStation station
                        && station.at().equals(place));
    }

    /**
     * The waypoint becomes a new place; one that is a new place already moves there with its stations.
     *
     * @param at the place on the line before which it comes, counted from 0; the length of the line for its end
     */
    public Placing newPlace(int waypoint, ObstacleKind kind, int at) {
        Spot spot = new Spot.Made(waypoint);
        int now = line.indexOf(spot);
        List<Spot> changed = new ArrayList<>(line);
        changed.remove(spot);
        changed.add(now >= 0 && now < at ? at - 1 : at, spot);
        return new Placing(canyon, isNew, waypoints, deciding(waypoint, new Decision.NewPlace(kind)), changed);
    }

    /** Another kind for a waypoint that is a new place. */
    public Placing kind(int waypoint, ObstacleKind kind) {
        return new Placing(canyon, isNew, waypoints, deciding(waypoint, new Decision.NewPlace(kind)), line);
    }

    /** Any other decision, which must not be one that is refused. */
    public Placing decided(int waypoint, Decision decision) {
        if (decision instanceof Decision.NewPlace || refusal(waypoint, decision).isPresent()) {
            throw new IllegalArgumentException("this decision is refused");
        }
        List<Spot> changed = new ArrayList<>(line);
        changed.remove(new Spot.Made(waypoint));
        return new Placing(canyon, isNew, waypoints, deciding(waypoint, decision), changed);
    }

    /** All waypoints about which nothing is decided become new places, one after the other in the order of the file. */
    public Placing restAsPlaces(ObstacleKind kind, int at) {
        List<Decision> all = new ArrayList<>(decisions);
        List<Spot> made = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) instanceof Decision.Undecided) {
                all.set(i, new Decision.NewPlace(kind));
                made.add(new Spot.Made(i));
            }
        }
        List<Spot> changed = new ArrayList<>(line);
        changed.addAll(at, made);
        return new Placing(canyon, isNew, waypoints, all, changed);
    }

    private List<Decision> deciding(int waypoint, Decision decision) {
        List<Decision> changed = new ArrayList<>(decisions);
        changed.set(waypoint, decision);
        return changed;
    }

    /** The next waypoint after that one about which nothing is decided, else the first such, else that one. */
    public int nextUndecided(int from) {
        return IntStream.concat(IntStream.range(from, decisions.size()), IntStream.range(0, from))
                .filter(i -> decisions.get(i) instanceof Decision.Undecided)
                .findFirst()
                .orElse(from);
    }

    /** About how many waypoints nothing is decided. */
    public int undecided() {
        return (int) decisions.stream()
                .filter(decision -> decision instanceof Decision.Undecided)
                .count();
    }

    /** How many waypoints something is written from. */
    public int taken() {
        return (int) decisions.stream().filter(Decision::takes).count();
    }
}
