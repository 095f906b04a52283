package thalweg.logbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.ledger.Uid;
import thalweg.route.Obstacle;
import thalweg.route.ObstacleKind;
import thalweg.route.Part;
import thalweg.route.PartialDate;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/**
 * What in the records of a canyon cannot all be true. Only what contradicts itself is found, never what is merely unknown
 * or unusual.
 */
public final class RecordRules {

    private final LocalDate today;
    private final List<Broken> broken = new ArrayList<>();
    private final Set<Uid> rounds = new HashSet<>();

    private RecordRules(LocalDate today) {
        this.today = today;
    }

    /**
     * A rule that is broken.
     *
     * @param where names of the things that lead there, the canyon first
     * @param sentence what contradicts what
     */
    public record Broken(List<String> where, String sentence) {
        public Broken {
            where = List.copyOf(where);
        }
    }

    /**
     * Every rule that a canyon breaks, in the order of its line.
     *
     * @param today nothing that was seen can be later
     */
    public static List<Broken> brokenBy(CanyonRecord canyon, LocalDate today) {
        RecordRules rules = new RecordRules(today);
        rules.canyon(canyon);
        return rules.broken;
    }

    private void add(List<String> where, String sentence) {
        broken.add(new Broken(where, sentence));
    }

    private void canyon(CanyonRecord record) {
        List<String> here = List.of(record.canyon().name());
        record.rounds().forEach(round -> rounds.add(round.uid()));
        record.countingRounds().forEach(round -> seen(round.content().on(), "A round", here));
        longestDrop(record, here);
        Optional<LineRecord> last = Optional.empty();
        for (LineRecord place : record.line()) {
            List<String> there = and(here, name(place));
            distance(last, place, there);
            place.stations()
                    .forEach(station ->
                            station(place, station, and(there, station.station().name())));
            if (place.obstacle().distance().isPresent()) {
                last = Optional.of(place);
            }
        }
    }

    private void longestDrop(CanyonRecord record, List<String> here) {
        Optional<Length> stated = record.canyon().longestDrop();
        record.line().stream()
                .filter(place -> place.obstacle().kind() == ObstacleKind.DROP)
                .filter(place -> stated.isPresent()
                        && place.obstacle()
                                .height()
                                .filter(height -> height.compareTo(stated.get()) > 0)
                                .isPresent())
                .forEach(place -> add(
                        and(here, name(place)),
                        "is " + metres(place.obstacle().height())
                                + " high, but the longest drop of the canyon is said to be " + metres(stated) + "."));
    }

    private void distance(Optional<LineRecord> last, LineRecord place, List<String> there) {
        Optional<Length> before = last.flatMap(one -> one.obstacle().distance());
        Optional<Length> here = place.obstacle().distance();
        if (before.isPresent() && here.isPresent() && here.get().compareTo(before.get()) < 0) {
            add(
                    there,
                    "is at " + metres(here) + " along the line, but " + name(last.orElseThrow()) + " before it at "
                            + metres(before) + ".");
        }
    }

    private void station(LineRecord place, StationRecord record, List<String> here) {
        Obstacle obstacle = place.obstacle();
        Optional<Length> rope = record.station().ropeNeeded();
        if (obstacle.kind() == ObstacleKind.DROP
                && place.stations().size() == 1
                && rope.isPresent()
                && obstacle.height()
                        .filter(height -> rope.get().compareTo(height) < 0)
                        .isPresent()) {
            add(
                    here,
                    "needs " + metres(rope) + " of rope, less than its drop is high (" + metres(obstacle.height())
                            + ").");
        }
        for (AnchorRecord anchor : record.anchors()) {
            sameLabels(anchor, here);
            anchor.parts().forEach(part -> part(part, and(here, part.part().label())));
        }
        record.countingNotes().forEach(note -> seen(note.content().on(), "A rigging note", here));
        record.countingAnalyses().forEach(analysis -> future(analysis.content().on(), "A rig analysis", here));
    }

    private void sameLabels(AnchorRecord anchor, List<String> here) {
        anchor.parts().stream()
                .collect(Collectors.groupingBy(part -> part.part().label(), Collectors.counting()))
                .entrySet()
                .stream()
                .filter(label -> label.getValue() > 1)
                .sorted((one, other) -> one.getKey().compareTo(other.getKey()))
                .forEach(label -> add(
                        here,
                        "has " + label.getValue() + " parts called \"" + label.getKey()
                                + "\" in one anchor; nobody can tell which was inspected."));
    }

    private void part(PartRecord record, List<String> here) {
        Part part = record.part();
        part.placed().ifPresent(placed -> future(placed, "Its placing", here));
        olderThanItself(record, here);
        record.counting().forEach(inspection -> inspection(inspection, here));
    }

    /** A part that was replaced goes on under its label: what was found before is about the one before. */
    private void olderThanItself(PartRecord record, List<String> here) {
        Optional<PartialDate> placed = record.part().placed();
        if (placed.isEmpty() || record.lastReplaced().isPresent()) {
            return;
        }
        record.counting().stream()
                .filter(Inspection::wasSeen)
                .map(Inspection::on)
                .filter(on -> on.latest().isBefore(placed.get().earliest()))
                .findFirst()
                .ifPresent(on -> add(
                        here,
                        "was inspected on " + on.print() + ", before it was placed ("
                                + placed.get().print() + "), and no inspection says that it was replaced."));
    }

    private void inspection(Inspection inspection, List<String> here) {
        String which = "The inspection of " + inspection.on().print();
        seen(inspection.on(), "An inspection", here);
        boolean mended = inspection.found().isPresent()
                && inspection.left().isPresent()
                && inspection.found().get().isWorseThan(inspection.left().get());
        if (mended && inspection.work().isEmpty()) {
            add(here, which + " left the part better than it was found, but no work is noted.");
        }
        if (inspection.round().filter(round -> !rounds.contains(round)).isPresent()) {
            add(here, which + " belongs to a round that is not among those of the canyon.");
        }
    }

    private void seen(PartialDate date, String what, List<String> here) {
        date.tooEarlyToBeSeen()
                .ifPresent(why -> add(here, what + " is dated " + date.print() + ", which " + why + "."));
        future(date, what, here);
    }

    private void future(PartialDate date, String what, List<String> here) {
        if (!date.hasBegunBy(today)) {
            add(here, what + " is dated " + date.print() + ", which has not come yet.");
        }
    }

    private static List<String> and(List<String> here, String name) {
        List<String> there = new ArrayList<>(here);
        there.add(name);
        return there;
    }

    private static String name(LineRecord place) {
        String name = place.obstacle().name();
        return name.isEmpty() ? "place " + place.number() : "place " + place.number() + " " + name;
    }

    private static String metres(Optional<Length> length) {
        return length.orElseThrow().print(UnitSystem.METRIC);
    }
}
