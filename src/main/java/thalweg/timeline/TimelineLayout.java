package thalweg.timeline;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionWords;
import thalweg.logbook.Inspection;
import thalweg.text.Phrases;
import thalweg.text.Width;

/**
 * Where everything stands: the part's name, the years, the state now.
 *
 * @param rows one a part, in the order of the timeline
 * @param axis of the years
 * @param nameRoom letters for names
 * @param left column at which the years begin
 * @param stateAt column at which states begin
 */
record TimelineLayout(List<Row> rows, Axis axis, int nameRoom, int left, int stateAt) {

    /** From so many columns on there is room for the state's word, not only its mark. */
    private static final int ROOMY = 56;

    private static final int LEAST_NAME = 6;
    private static final int GAP = 2;

    /** The fewest letters in which it says something: a short name, two years, a mark. */
    static final int LEAST_COLUMNS = 24;

    /** Columns of the years, from the first to the last. */
    record Stretch(int from, int to) {}

    /**
     * One part.
     *
     * @param name cut to the room
     * @param state now, as mark and word or as mark alone
     * @param there while it was there, as far as anybody knows
     * @param before whether it was placed before the years begin
     * @param vague where a date says no more than a month or a year, and is longer than a letter
     * @param signs what was found
     */
    record Row(
            PartLine line,
            String name,
            String state,
            List<Stretch> there,
            boolean before,
            List<Stretch> vague,
            List<Sign> signs) {

        Row {
            there = List.copyOf(there);
            vague = List.copyOf(vague);
            signs = List.copyOf(signs);
        }
    }

    TimelineLayout {
        rows = List.copyOf(rows);
    }

    /**
     * The layout in that many letters.
     *
     * @param timeline that can be drawn
     * @param columns at least {@link #LEAST_COLUMNS}
     */
    static TimelineLayout of(Timeline timeline, int columns, Phrases phrases) {
        if (columns < LEAST_COLUMNS) {
            throw new IllegalArgumentException("a timeline has room for a name, the years and a mark");
        }
        int longest = timeline.lines().stream()
                .mapToInt(line -> Width.of(line.part().label()))
                .max()
                .orElse(0);
        int names = Math.min(longest, Math.max(LEAST_NAME, columns / 4));
        boolean roomy = columns >= ROOMY;
        int states = timeline.lines().stream()
                .mapToInt(line -> Width.of(state(line, roomy, phrases)))
                .max()
                .orElse(0);
        int left = names + GAP;
        Axis axis = new Axis(timeline.first().orElseThrow(), timeline.last(), columns - left - GAP - states);
        List<Row> rows = timeline.lines().stream()
                .map(line -> row(line, axis, timeline.today(), names, state(line, roomy, phrases), phrases))
                .toList();
        return new TimelineLayout(rows, axis, names, left, columns - states);
    }

    private static String state(PartLine line, boolean roomy, Phrases phrases) {
        return roomy
                ? ConditionWords.told(line.state().condition(), phrases)
                : ConditionWords.mark(line.state().condition(), phrases);
    }

    private static Row row(PartLine line, Axis axis, LocalDate today, int names, String state, Phrases phrases) {
        List<Stretch> vague = new ArrayList<>();
        for (Inspection inspection : line.inspections()) {
            Stretch meant = new Stretch(
                    axis.column(inspection.on().earliest()),
                    axis.column(inspection.on().latest()));
            if (meant.to() > meant.from()) {
                vague.add(meant);
            }
        }
        boolean before = line.part()
                .placed()
                .filter(placed -> placed.earliest().isBefore(axis.first()))
                .isPresent();
        return new Row(
                line,
                Width.cut(line.part().label(), names),
                state,
                there(line, axis, today),
                before,
                vague,
                Sign.of(line.inspections(), axis, phrases));
    }

    /** From being placed or first seen on; not from being found gone until it is seen again. */
    private static List<Stretch> there(PartLine line, Axis axis, LocalDate today) {
        List<Stretch> there = new ArrayList<>();
        Optional<LocalDate> since = line.begins();
        for (Inspection inspection : line.inspections()) {
            if (inspection.afterwards().equals(Optional.of(Condition.GONE))) {
                since.filter(day -> !day.isAfter(inspection.on().latest()))
                        .ifPresent(day ->
                                there.add(stretch(axis, day, inspection.on().latest())));
                since = Optional.empty();
            } else if (inspection.wasSeen() && since.isEmpty()) {
                since = Optional.of(inspection.on().earliest());
            }
        }
        since.filter(day -> !day.isAfter(today)).ifPresent(day -> there.add(stretch(axis, day, today)));
        return there;
    }

    private static Stretch stretch(Axis axis, LocalDate from, LocalDate to) {
        return new Stretch(axis.column(from), axis.column(to));
    }

    /** Whether the mark of being placed earlier has room at the left edge of a row. */
    static boolean showsBefore(Row row) {
        return row.before() && row.signs().stream().noneMatch(sign -> sign.column() == 0);
    }
}
