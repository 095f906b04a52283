package thalweg.profile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.text.Width;

/**
 * Finds room for the labels of places, none across another or across the line. Each place first gets its number; places
 * for which there is none share that of a neighbour ("7-9"); then labels say more where there is room.
 */
final class Labels {

    /**
     * Where one place is.
     *
     * @param stop which it is
     * @param column of its mark
     * @param rowAbove the first free one above its mark
     * @param rowBelow the first free one below its foot
     * @param rowLip that of the line before it
     * @param rowFoot that of the line after it
     */
    record Site(Stop stop, int column, int rowAbove, int rowBelow, int rowLip, int rowFoot) {}

    /** Rows from a place to a label that says more than its number. */
    private static final int FAR = 7;

    private final Captions captions;
    private final List<Site> sites;
    private final List<List<String>> texts;
    private final int chosen;
    private final Cells cells;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Stop> unnumbered = new ArrayList<>();

    /**
     * @param sites in the order of the line
     * @param texts of each, from the shortest to the longest
     * @param chosen the one that is marked, counted from 0; -1 for none
     * @param cells of the picture, with the line on them
     */
    Labels(Captions captions, List<Site> sites, List<List<String>> texts, int chosen, Cells cells) {
        this.captions = captions;
        this.sites = sites;
        this.texts = texts;
        this.chosen = chosen;
        this.cells = cells;
    }

    /** Takes a cell beside the line if nothing stands there, and says whether it did. */
    boolean takeIfFree(int row, int column) {
        boolean free = cells.isFree(row, column, 1);
        if (free) {
            cells.take(new Placed(-1, -1, "", row, column, 1, Placed.Side.BESIDE, column, row));
        }
        return free;
    }

    /** Gives each place a number, alone or with its neighbours. */
    void number() {
        List<Integer> missing = new ArrayList<>();
        if (chosen >= 0 && !putSomewhere(chosen)) {
            missing.add(chosen);
        }
        for (int i = sites.size() - 1; i >= 0; i--) {
            if (i != chosen && !put(i, i, text(i, 0), Placed.Side.ABOVE, cells.rows())) {
                missing.add(i);
            }
        }
        missing.sort(Comparator.naturalOrder());
        missing.removeIf(this::putSomewhere);
        missing.removeIf(this::share);
        // Once more from the other end: a label that was made meanwhile may be next to one that found none.
        Collections.reverse(missing);
        missing.removeIf(this::share);
        Collections.reverse(missing);
        missing.forEach(index -> unnumbered.add(stop(index)));
    }

    /** Lets labels say more where there is room. */
    void lengthen() {
        int most = texts.stream().mapToInt(List::size).max().orElse(0);
        List<Integer> order = byImportance();
        for (int level = 1; level < most; level++) {
            for (int i : order) {
                lengthen(i, level);
            }
        }
    }

    List<Placed> placed() {
        return placed;
    }

    /** Places without a number, for which there was no room. */
    List<Stop> unnumbered() {
        return unnumbered;
    }

    private boolean putSomewhere(int index) {
        String text = text(index, 0);
        return Arrays.stream(Placed.Side.values()).anyMatch(side -> put(index, index, text, side, cells.rows()));
    }

    /** What calls for care first, then the large falls. */
    private List<Integer> byImportance() {
        Comparator<Integer> byHeight = Comparator.comparingDouble(i -> -stop(i).height());
        return IntStream.range(0, sites.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(i -> i == chosen ? 0 : 1)
                        .thenComparing(i -> switch (stop(i).place().obstacle().kind()) {
                            case HAZARD, ESCAPE -> 0;
                            case DROP, DOWNCLIMB, HANDLINE, JUMP, SLIDE -> 1;
                            case SWIM, WALK, OTHER -> 2;
                        })
                        .thenComparing(byHeight))
                .toList();
    }

    private Stop stop(int index) {
        return sites.get(index).stop();
    }

    private String text(int index, int level) {
        List<String> its = texts.get(index);
        return marked(index, index, its.get(Math.min(level, its.size() - 1)));
    }

    private String marked(int first, int last, String text) {
        return chosen >= first && chosen <= last ? "[" + text + "]" : text;
    }

    private void lengthen(int index, int level) {
        Optional<Placed> alone = placed.stream()
                .filter(label -> label.first() == index && label.last() == index)
                .findFirst();
        String text = text(index, level);
        if (alone.isEmpty() || alone.get().text().equals(text)) {
            return;
        }
        Placed before = alone.get();
        remove(before);
        boolean longer = put(index, index, text, before.side(), FAR)
                || Arrays.stream(Placed.Side.values())
                        .anyMatch(side -> side != before.side() && put(index, index, text, side, FAR));
        if (!longer) {
            add(before);
        }
    }

    /** A place without room shares the label of the one before it, else that of the one after it. */
    private boolean share(int index) {
        Optional<Placed> before =
                placed.stream().filter(label -> label.last() == index - 1).findFirst();
        Optional<Placed> after =
                placed.stream().filter(label -> label.first() == index + 1).findFirst();
        return before.filter(label -> widened(label, label.first(), index)).isPresent()
                || after.filter(label -> widened(label, index, label.last())).isPresent();
    }

    private boolean widened(Placed label, int first, int last) {
        remove(label);
        List<Stop> stops =
                sites.subList(first, last + 1).stream().map(Site::stop).toList();
        String text = marked(first, last, captions.of(stops));
        if (put(first, last, text, Placed.Side.ABOVE, cells.rows())
                || put(first, last, text, Placed.Side.BELOW, cells.rows())) {
            return true;
        }
        add(label);
        return false;
    }

    private void add(Placed label) {
        cells.take(label);
        placed.add(label);
    }

    private void remove(Placed label) {
        cells.give(label);
        placed.remove(label);
    }

    /**
     * Nearest first; above the line texts go on to the right, below it to the left, because it falls to the right.
     *
     * @param most rows that it may be away
     */
    private boolean put(int first, int last, String text, Placed.Side side, int most) {
        Site site = sites.get(side == Placed.Side.BELOW ? last : first);
        int width = Width.of(text);
        int lead = site.column();
        int end = lead - width + 1;
        Placed nearest = new Placed(first, last, text, 0, 0, width, side, lead, 0);
        return switch (side) {
            case ABOVE -> putAlong(nearest, site.rowAbove(), -1, most, lead, (lead + end) / 2, end);
            case BELOW -> putAlong(nearest, site.rowBelow(), 1, most, end, (lead + end) / 2, lead);
            case BESIDE ->
                site.stop().foot() > site.stop().lip()
                        && IntStream.rangeClosed(site.rowLip(), site.rowFoot())
                                .anyMatch(row -> putBeside(nearest, row));
        };
    }

    /** Away from the line row by row, as long as the stroke that leads there can pass. */
    private boolean putAlong(Placed label, int near, int step, int most, int... columns) {
        for (int row = near; row >= 0 && row < cells.rows() && Math.abs(row - near) < most; row += step) {
            if (row != near && !cells.letsPass(row - step, label.lead())) {
                return false;
            }
            if (putAt(label, row, near, columns)) {
                return true;
            }
        }
        return false;
    }

    /** With nothing between it and its fall, lest it seem to belong to something else. */
    private boolean putBeside(Placed label, int row) {
        int right = label.lead() + 1;
        int left = label.lead() - 1;
        return (cells.letsPass(row, right) && putAt(label, row, row, right + 1))
                || (cells.letsPass(row, left) && putAt(label, row, row, left - label.width()));
    }

    private boolean putAt(Placed label, int row, int near, int... columns) {
        for (int column : columns) {
            int inside = Math.max(cells.firstColumn(), Math.min(cells.columns() - label.width(), column));
            boolean beside = label.side() == Placed.Side.BESIDE;
            if ((!beside || inside == column) && cells.isFree(row, inside, label.width())) {
                add(new Placed(
                        label.first(),
                        label.last(),
                        label.text(),
                        row,
                        inside,
                        label.width(),
                        label.side(),
                        label.lead(),
                        near));
                return true;
            }
        }
        return false;
    }
}
