package thalweg.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Inspection;
import thalweg.logbook.Work;
import thalweg.text.Phrases;

/**
 * What stands for one inspection or several in a row of the picture.
 *
 * @param column of its first letter, counted from the left edge of the years
 * @param text of it, in ASCII
 * @param worst condition that it tells; empty where the part was not seen
 * @param several whether it stands for more than one inspection
 */
record Sign(int column, String text, Optional<Condition> worst, boolean several) {

    /** Between what was found and what stands there since. */
    static final String REPLACED = "|";

    /** Between a condition as found and as left. */
    static final String MENDED = ">";

    /** After the worst of several. */
    static final String SEVERAL = "*";

    private int end() {
        return column + text.length();
    }

    /**
     * The signs of a row, from left to right, none across another: where there is no room for each, one stands for several
     * and tells the worst, so that nothing looks better than it was found.
     *
     * @param inspections oldest first
     * @param axis on which they are put
     */
    static List<Sign> of(List<Inspection> inspections, Axis axis, Phrases phrases) {
        List<Sign> signs = new ArrayList<>();
        for (Inspection inspection : inspections) {
            Sign next = of(inspection, axis, phrases);
            while (!signs.isEmpty() && next.column < signs.get(signs.size() - 1).end()) {
                next = together(signs.remove(signs.size() - 1), next, axis, phrases);
            }
            signs.add(next);
        }
        return signs;
    }

    private static Sign of(Inspection inspection, Axis axis, Phrases phrases) {
        boolean replaced = inspection.work().contains(Work.REPLACED);
        boolean changed = replaced
                || (inspection.found().isPresent()
                        && inspection.left().isPresent()
                        && !inspection.left().equals(inspection.found()));
        String text = changed
                ? inspection
                                .found()
                                .map(condition -> mark(Optional.of(condition), phrases))
                                .orElse("")
                        + (replaced ? REPLACED : MENDED)
                        + inspection
                                .left()
                                .map(condition -> mark(Optional.of(condition), phrases))
                                .orElse("")
                : mark(inspection.afterwards(), phrases);
        Optional<Condition> worst = Stream.of(inspection.found(), inspection.left())
                .flatMap(Optional::stream)
                .reduce(Condition::worse);
        int middle = (axis.column(inspection.on().earliest())
                        + axis.column(inspection.on().latest()))
                / 2;
        return new Sign(axis.inside(middle - text.length() / 2, text.length()), text, worst, false);
    }

    private static Sign together(Sign one, Sign other, Axis axis, Phrases phrases) {
        Optional<Condition> worst =
                Stream.of(one.worst, other.worst).flatMap(Optional::stream).reduce(Condition::worse);
        String text = mark(worst, phrases) + SEVERAL;
        return new Sign(axis.inside(Math.min(one.column, other.column), text.length()), text, worst, true);
    }

    private static String mark(Optional<Condition> condition, Phrases phrases) {
        return condition.isPresent() ? ConditionWords.mark(condition, phrases) : phrases.say("timeline.mark.not_seen");
    }
}
