package thalweg.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import thalweg.logbook.AnchorRecord;
import thalweg.logbook.Condition;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartRecord;
import thalweg.logbook.Work;
import thalweg.route.AnchorRole;
import thalweg.route.Part;
import thalweg.route.PartKind;

/** Anchors from a seed, their parts inspected on some of the given days. */
final class RandomAnchors {

    private final Random random;
    private final Marks marks;
    private final Things things;

    RandomAnchors(Random random, Marks marks, Things things) {
        this.random = random;
        this.marks = marks;
        this.things = things;
    }

    /**
     * An anchor with up to four parts.
     *
     * @param days of inspection of the station, newest first; every part was looked at on each of them
     */
    AnchorRecord anchor(AnchorRole role, List<String> days) {
        PartRecord[] parts =
                IntStream.range(0, random.nextInt(5)).mapToObj(i -> part(days)).toArray(PartRecord[]::new);
        return things.anchor(role, marks.shown(), marks.shown(), parts);
    }

    private PartRecord part(List<String> days) {
        PartKind kind = pick(List.of(PartKind.values()));
        Part part = things.known(
                things.part(marks.shown(), kind),
                new Part.Hardware(marks.shown(), marks.shown(), marks.shown(), marks.shown(), marks.shown()),
                "",
                Optional.empty(),
                "",
                "",
                Optional.empty(),
                marks.shown());
        List<Inspection> inspections = new ArrayList<>();
        for (int day = 0; day < days.size(); day++) {
            boolean shown = day < SheetOptions.USUAL_INSPECTIONS;
            inspections.add(inspection(part, days.get(day), marks.shownIf(shown), marks.shownIf(shown)));
        }
        return things.record(part, inspections.toArray(Inspection[]::new));
    }

    private Inspection inspection(Part part, String on, String by, String note) {
        Condition condition = pick(List.of(Condition.values()));
        return switch (random.nextInt(3)) {
            case 0 -> things.seen(part, on, by, condition, note);
            case 1 -> things.notSeen(part, on, by, note);
            default -> things.worked(part, on, by, condition, Condition.SOUND, List.of(Work.REPLACED), note);
        };
    }

    private <T> T pick(List<T> among) {
        return among.get(random.nextInt(among.size()));
    }
}
