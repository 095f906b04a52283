package thalweg.logbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thalweg.fault.Sentence;
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
     * @param what contradicts what
     */
    public record Broken(List<Sentence> where, Sentence what) {
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

    private void add(List<Sentence> where, Sentence what) {
        broken.add(new Broken(where, what));
    }

    private void canyon(CanyonRecord record) {
        List<Sentence> here = List.of(Sentence.plain(record.canyon().name()));
        record.rounds().forEach(round -> rounds.add(round.uid()));
        record.countingRounds().forEach(round -> seen(round.content().on(), Sentence.of("A round"), here));
        longestDrop(record, here);
        Optional<LineRecord> last = Optional.empty();
        for (LineRecord place : record.line()) {
            List<Sentence> there = and(here, name(place));
            distance(last, place, there);
            place.stations()
                    .forEach(station -> station(
                            place,
                            station,
                            and(there, Sentence.plain(station.station().name()))));
            if (place.obstacle().distance().isPresent()) {
                last = Optional.of(place);
            }
        }
    }

    private void longestDrop(CanyonRecord record, List<Sentence> here) {
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
                        Sentence.of(
                                "is {0} high, but the longest drop of the canyon is said to be {1}.",
                                metres(place.obstacle().height()), metres(stated))));
    }

    private void distance(Optional<LineRecord> last, LineRecord place, List<Sentence> there) {
        Optional<Length> before = last.flatMap(one -> one.obstacle().distance());
        Optional<Length> here = place.obstacle().distance();
        if (before.isPresent() && here.isPresent() && here.get().compareTo(before.get()) < 0) {
            add(
                    there,
                    Sentence.of(
                            "is at {0} along the line, but {1} before it at {2}.",
                            metres(here), name(last.orElseThrow()), metres(before)));
        }
    }

    private void station(LineRecord place, StationRecord record, List<Sentence> here) {
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
                    Sentence.of(
                            "needs {0} of rope, less than its drop is high ({1}).",
                            metres(rope), metres(obstacle.height())));
        }
        for (AnchorRecord anchor : record.anchors()) {
            sameLabels(anchor, here);
            anchor.parts()
                    .forEach(part ->
                            part(part, and(here, Sentence.plain(part.part().label()))));
        }
        record.countingNotes().forEach(note -> seen(note.content().on(), Sentence.of("A rigging note"), here));
        record.countingAnalyses()
                .forEach(analysis -> future(analysis.content().on(), Sentence.of("A rig analysis"), here));
    }

    private void sameLabels(AnchorRecord anchor, List<Sentence> here) {
        anchor.parts().stream()
                .collect(Collectors.groupingBy(part -> part.part().label(), Collectors.counting()))
                .entrySet()
                .stream()
                .filter(label -> label.getValue() > 1)
                .sorted((one, other) -> one.getKey().compareTo(other.getKey()))
                .forEach(label -> add(
                        here,
                        Sentence.of(
                                "has {0} parts called \"{1}\" in one anchor; nobody can tell which was inspected.",
                                label.getValue(), label.getKey())));
    }

    private void part(PartRecord record, List<Sentence> here) {
        Part part = record.part();
        part.placed().ifPresent(placed -> future(placed, Sentence.of("Its placing"), here));
        olderThanItself(record, here);
        record.counting().forEach(inspection -> inspection(inspection, here));
    }

    /** A part that was replaced goes on under its label: what was found before is about the one before. */
    private void olderThanItself(PartRecord record, List<Sentence> here) {
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
                        Sentence.of(
                                "was inspected on {0}, before it was placed ({1}), and no inspection says that it was"
                                        + " replaced.",
                                on.print(), placed.get().print())));
    }

    private void inspection(Inspection inspection, List<Sentence> here) {
        String on = inspection.on().print();
        seen(inspection.on(), Sentence.of("An inspection"), here);
        inspection.unsaid().ifPresent(why -> add(here, Sentence.of("The inspection of {0}: {1}", on, why)));
        boolean mended = inspection.found().isPresent()
                && inspection.left().isPresent()
                && inspection.found().get().isWorseThan(inspection.left().get());
        if (mended && inspection.work().isEmpty()) {
            add(
                    here,
                    Sentence.of(
                            "The inspection of {0} left the part better than it was found, but no work is noted.", on));
        }
        if (inspection.round().filter(round -> !rounds.contains(round)).isPresent()) {
            add(
                    here,
                    Sentence.of("The inspection of {0} belongs to a round that is not among those of the canyon.", on));
        }
    }

    private void seen(PartialDate date, Sentence what, List<Sentence> here) {
        date.tooEarlyToBeSeen()
                .ifPresent(why -> add(here, Sentence.of("{0} is dated {1}, which {2}.", what, date.print(), why)));
        future(date, what, here);
    }

    private void future(PartialDate date, Sentence what, List<Sentence> here) {
        if (!date.hasBegunBy(today)) {
            add(here, Sentence.of("{0} is dated {1}, which has not come yet.", what, date.print()));
        }
    }

    private static List<Sentence> and(List<Sentence> here, Sentence name) {
        List<Sentence> there = new ArrayList<>(here);
        there.add(name);
        return there;
    }

    private static Sentence name(LineRecord place) {
        String name = place.obstacle().name();
        return name.isEmpty()
                ? Sentence.of("place {0}", place.number())
                : Sentence.of("place {0} {1}", place.number(), name);
    }

    private static String metres(Optional<Length> length) {
        return length.orElseThrow().print(UnitSystem.METRIC);
    }
}
