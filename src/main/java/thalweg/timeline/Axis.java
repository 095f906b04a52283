package thalweg.timeline;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Where days stand in a row of letters.
 *
 * @param first day, a first of January
 * @param last day, not before it
 * @param columns letters for all of them, above 0
 */
record Axis(LocalDate first, LocalDate last, int columns) {

    /** Years between figures, the fewest for which there is room. */
    private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200};

    private static final int FIGURE = 4;

    /**
     * A year that is written below.
     *
     * @param column at which it begins
     */
    record Tick(int column, int year) {}

    private long days() {
        return ChronoUnit.DAYS.between(first, last) + 1;
    }

    /** The column of a day; one before the first stands at the left edge, one after the last at the right. */
    int column(LocalDate day) {
        long since = Math.max(0, Math.min(days() - 1, ChronoUnit.DAYS.between(first, day)));
        return (int) (since * columns / days());
    }

    /** The column nearest to that one at which a text has room. */
    int inside(int column, int width) {
        return Math.max(0, Math.min(columns - width, column));
    }

    /** The years that have room, from left to right. */
    List<Tick> ticks() {
        List<Tick> ticks = new ArrayList<>();
        for (int step : STEPS) {
            ticks.clear();
            boolean clear = true;
            for (int year = first.getYear(); year <= last.getYear(); year++) {
                if (year % step == 0) {
                    int column = column(LocalDate.of(year, 1, 1));
                    boolean crowded = !ticks.isEmpty()
                            && column < ticks.get(ticks.size() - 1).column() + FIGURE + 2;
                    clear = clear && !crowded;
                    ticks.add(new Tick(column, year));
                }
            }
            if (clear && !ticks.isEmpty()) {
                break;
            }
        }
        ticks.removeIf(tick -> tick.column() + FIGURE + 1 > columns);
        return ticks.isEmpty() ? List.of(new Tick(0, first.getYear())) : List.copyOf(ticks);
    }
}
