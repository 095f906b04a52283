package thalweg.cli;

import java.util.EnumMap;
import java.util.Map;
import picocli.CommandLine.Option;
import thalweg.fault.Sentence;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Span;

/** Which canyons are wanted, as options. */
// The command-line library calls the methods.
@SuppressWarnings("UnusedMethod")
final class FilterOptions {

    private final Map<CanyonMeasure, String> ranges = new EnumMap<>(CanyonMeasure.class);

    @Option(names = "--region", paramLabel = "WORDS", description = "canyons in a region of these words")
    private String region = "";

    @Option(names = "--country", paramLabel = "WORDS", description = "canyons in a country of these words")
    private String country = "";

    @Option(names = "--never-seen", description = "canyons with a part that nobody has seen")
    private boolean neverSeen;

    @Option(
            names = "--unknown-too",
            description = "also what may fit, because something that is asked for is unknown of it")
    private boolean unknownToo;

    @Option(
            names = "--vertical",
            paramLabel = "RANGE",
            description = "French v: 4, 3..5, 3.. for at least, ..4 for at most")
    private void vertical(String range) {
        ranges.put(CanyonMeasure.VERTICAL, range);
    }

    @Option(names = "--aquatic", paramLabel = "RANGE", description = "French a, in the same way")
    private void aquatic(String range) {
        ranges.put(CanyonMeasure.AQUATIC, range);
    }

    @Option(names = "--commitment", paramLabel = "RANGE", description = "French I to VI, as II..IV")
    private void commitment(String range) {
        ranges.put(CanyonMeasure.COMMITMENT, range);
    }

    @Option(names = "--class", paramLabel = "RANGE", description = "American class, 1 to 4")
    private void technical(String range) {
        ranges.put(CanyonMeasure.TECHNICAL, range);
    }

    @Option(
            names = "--water",
            paramLabel = "RANGE",
            description = "American water, A, B, C1 to C4, or C for any of these four")
    private void water(String range) {
        ranges.put(CanyonMeasure.WATER, range);
    }

    @Option(names = "--time-grade", paramLabel = "RANGE", description = "American time, I to VI")
    private void timeGrade(String range) {
        ranges.put(CanyonMeasure.TIME_GRADE, range);
    }

    @Option(names = "--risk", paramLabel = "RANGE", description = "American risk: none, R, X")
    private void risk(String range) {
        ranges.put(CanyonMeasure.RISK, range);
    }

    @Option(
            names = "--longest-drop",
            paramLabel = "RANGE",
            description = "\"30 m\" for at most, \"20 m..\" for at least, \"20 m..100 ft\"")
    private void longestDrop(String range) {
        ranges.put(CanyonMeasure.LONGEST_DROP, range);
    }

    @Option(
            names = "--time",
            paramLabel = "RANGE",
            description = "approach, descent and exit together: 5:30 for at most, 4:00.. for at least")
    private void time(String range) {
        ranges.put(CanyonMeasure.MINUTES, range);
    }

    @Option(
            names = "--worst",
            paramLabel = "RANGE",
            description = "worst condition of any part: doubtful for that or worse, ..worn for no worse")
    private void worst(String range) {
        ranges.put(CanyonMeasure.WORST, range);
    }

    /**
     * What was asked for.
     *
     * @throws thalweg.fault.InputException when a range cannot be read
     */
    CanyonFilter filter() {
        Map<CanyonMeasure, Span> spans = new EnumMap<>(CanyonMeasure.class);
        ranges.forEach((measure, range) -> spans.put(measure, measure.read(range)));
        return new CanyonFilter(region, country, spans, neverSeen, unknownToo);
    }

    /** Whether anything was asked for. */
    boolean asked() {
        return asksOfCanyons() || unknownToo;
    }

    /** Whether something was asked for that only canyons have. */
    boolean asksOfCanyons() {
        return !filter().isNone();
    }

    /** Whether what may fit is wanted too. */
    boolean unknownToo() {
        return unknownToo;
    }

    /**
     * Says that canyons were left out that may fit.
     *
     * @param canyons how many, at least one
     */
    static Sentence unknown(int canyons) {
        return canyons == 1
                ? Sentence.of("1 more is unknown in this; --unknown-too takes it in.")
                : Sentence.of("{0} more are unknown in this; --unknown-too takes them in.", canyons);
    }
}
