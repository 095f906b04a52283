package thalweg.timeline;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.logbook.PartRecord;
import thalweg.route.PartialDate;
import thalweg.text.Phrases;

/**
 * Parts over the years.
 *
 * @param lines the worst on top: gone, unsafe, doubtful, never inspected, worn, sound; among those alike the one that
 *     nobody has looked at longest first; may be empty
 * @param today the day up to which it goes
 */
public record Timeline(List<PartLine> lines, LocalDate today) {

    /** A part that was placed longer before the first look than this begins at the edge of the picture; our choice [years]. */
    private static final int MOST_BEFORE = 10;

    public Timeline {
        lines = List.copyOf(lines);
    }

    /** Those parts, of which those alike and looked at on the same day stay in their order. */
    public static Timeline of(Collection<PartRecord> parts, LocalDate today) {
        Comparator<PartLine> longestFirst = Comparator.comparing(
                line -> line.state().seenOn().map(PartialDate::latest).orElse(LocalDate.MIN));
        List<PartLine> lines = parts.stream()
                .map(PartLine::of)
                .sorted(Comparator.comparingInt(Timeline::rank).thenComparing(longestFirst))
                .toList();
        return new Timeline(lines, today);
    }

    /** Nobody knows of a part that was never inspected whether it is bad, so that it stands between good and bad. */
    private static int rank(PartLine line) {
        return line.state()
                .condition()
                .map(condition -> switch (condition) {
                    case GONE -> 0;
                    case UNSAFE -> 1;
                    case DOUBTFUL -> 2;
                    case WORN -> 4;
                    case SOUND -> 5;
                })
                .orElse(3);
    }

    /** Whether there is a date to draw. */
    public boolean canBeDrawn() {
        return first().isPresent();
    }

    /** All that the picture says, in words. */
    public String told(Phrases phrases) {
        return new TimelineWords(phrases).told(this);
    }

    /** The same, a line a part, the worst first. */
    public List<String> toldByPart(Phrases phrases) {
        TimelineWords words = new TimelineWords(phrases);
        return lines.stream().map(words::told).toList();
    }

    /** The first day of the picture, a first of January; empty where no date is known. */
    Optional<LocalDate> first() {
        Optional<LocalDate> looked =
                lines.stream().flatMap(line -> line.firstLook().stream()).min(Comparator.naturalOrder());
        Stream<LocalDate> placed = lines.stream()
                .flatMap(line -> line.part().placed().stream())
                .map(PartialDate::earliest)
                .filter(day -> looked.isEmpty() || !day.isBefore(looked.get().minusYears(MOST_BEFORE)));
        return Stream.concat(placed, looked.stream())
                .filter(day -> !day.isAfter(today))
                .min(Comparator.naturalOrder())
                .map(day -> day.withDayOfYear(1));
    }

    /** The last day of the picture: today or, where an entry can mean a later one, that, but no more than a year ahead. */
    LocalDate last() {
        LocalDate ahead = today.plusYears(1);
        return lines.stream()
                .flatMap(line -> line.inspections().stream())
                .map(inspection -> inspection.on().latest())
                .map(day -> day.isAfter(ahead) ? ahead : day)
                .reduce(today, (one, other) -> one.isAfter(other) ? one : other);
    }
}
