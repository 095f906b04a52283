package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Span;
import thalweg.tui.core.Surroundings;

/** A filter in words. */
final class FilterText {

    private FilterText() {}

    /** Everything that is asked for, commas between. */
    static String of(CanyonFilter filter, Surroundings around) {
        List<String> words = new ArrayList<>();
        for (CanyonMeasure measure : CanyonMeasure.values()) {
            if (!filter.of(measure).isAny()) {
                words.add(span(measure, filter.of(measure), around));
            }
        }
        if (!filter.region().isEmpty()) {
            words.add(around.say("filter.region", filter.region()));
        }
        if (!filter.country().isEmpty()) {
            words.add(around.say("filter.country", filter.country()));
        }
        if (filter.neverSeen()) {
            words.add(around.say("filter.never_seen"));
        }
        return String.join(", ", words);
    }

    private static String span(CanyonMeasure measure, Span span, Surroundings around) {
        String name = around.say("filter.of." + measure.name().toLowerCase(Locale.ROOT));
        String from = number(measure, span.from(), around);
        String to = number(measure, span.to(), around);
        boolean bad = measure == CanyonMeasure.WORST;
        if (from.isEmpty()) {
            return around.say(bad ? "filter.at_worst" : "filter.at_most", name, to);
        }
        if (to.isEmpty()) {
            return around.say(bad ? "filter.or_worse" : "filter.or_more", name, from);
        }
        return from.equals(to) ? around.say("filter.exactly", name, to) : around.say("filter.between", name, from, to);
    }

    private static String number(CanyonMeasure measure, OptionalLong number, Surroundings around) {
        return number.isPresent()
                ? FilterForm.shown(measure, measure.print(number.getAsLong(), around.units()), around)
                : "";
    }

    /**
     * How many canyons may fit, and how to see them or not.
     *
     * @param canyons at least one
     */
    static String unknown(int canyons, boolean shown, Surroundings around) {
        return shown
                ? around.say(canyons == 1 ? "filter.shown.one" : "filter.shown.more", canyons)
                : around.say(canyons == 1 ? "filter.hidden.one" : "filter.hidden.more", canyons);
    }
}
