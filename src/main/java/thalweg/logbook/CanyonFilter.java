package thalweg.logbook;

import java.util.EnumMap;
import java.util.Map;

/**
 * Which canyons are wanted. A canyon fits where everything that is asked surely holds; where it may hold, because
 * something is unknown, the canyon is never dropped in silence.
 *
 * @param region each word begins a word of the region; blank asks for nothing
 * @param country each word begins a word of the country; blank asks for nothing
 * @param spans what is wanted of each measure; a missing one asks for nothing
 * @param neverSeen whether only canyons with a part that nobody has seen are wanted
 * @param unknownToo whether canyons that may fit are shown beside those that do
 */
public record CanyonFilter(
        String region, String country, Map<CanyonMeasure, Span> spans, boolean neverSeen, boolean unknownToo) {

    /** Every canyon. */
    public static final CanyonFilter NONE = new CanyonFilter("", "", Map.of(), false, false);

    public CanyonFilter {
        Map<CanyonMeasure, Span> asked = new EnumMap<>(CanyonMeasure.class);
        spans.forEach((measure, span) -> {
            if (!span.isAny()) {
                asked.put(measure, span);
            }
        });
        spans = Map.copyOf(asked);
        region = region.strip();
        country = country.strip();
    }

    /** Whether it asks for nothing. */
    public boolean isNone() {
        return region.isEmpty() && country.isEmpty() && spans.isEmpty() && !neverSeen;
    }

    /** What is wanted of that measure. */
    public Span of(CanyonMeasure measure) {
        return spans.getOrDefault(measure, Span.ANY);
    }

    /** The same, with or without canyons that may fit. */
    public CanyonFilter withUnknown(boolean shown) {
        return new CanyonFilter(region, country, spans, neverSeen, shown);
    }
}
