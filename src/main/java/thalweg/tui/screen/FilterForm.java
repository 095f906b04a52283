package thalweg.tui.screen;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import thalweg.logbook.CanyonFilter;
import thalweg.logbook.CanyonMeasure;
import thalweg.logbook.Condition;
import thalweg.logbook.Span;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;

/** Which canyons are wanted as a form, there and back. */
final class FilterForm {

    private static final String YES = "yes";
    private static final String NO = "no";

    private FilterForm() {}

    /** The form that shows a filter. */
    static Form of(CanyonFilter filter, Surroundings around) {
        Build build = new Build(around);
        for (CanyonMeasure measure : CanyonMeasure.values()) {
            build.value(
                    key(measure),
                    "filter_form." + key(measure),
                    shown(measure, measure.print(filter.of(measure), around.units()), around),
                    typed -> read(measure, typed, around));
        }
        build.text("region", "filter_form.region", filter.region());
        build.text("country", "filter_form.country", filter.country());
        List<String> options = List.of(NO, YES);
        List<String> labels = List.of(around.say("filter_form.no"), around.say("filter_form.yes"));
        build.options(
                "never_seen", around.say("filter_form.never_seen"), options, labels, filter.neverSeen() ? YES : NO);
        build.options(
                "unknown_too", around.say("filter_form.unknown_too"), options, labels, filter.unknownToo() ? YES : NO);
        return Form.of(build.done());
    }

    /** A value of a measure as people read it. */
    static String shown(CanyonMeasure measure, String printed, Surroundings around) {
        return measure == CanyonMeasure.WORST ? conditions(around).shown(printed) : printed;
    }

    private static Span read(CanyonMeasure measure, String typed, Surroundings around) {
        return measure.read(measure == CanyonMeasure.WORST ? conditions(around).read(typed) : typed);
    }

    private static TypedWords<Condition> conditions(Surroundings around) {
        return TypedWords.whole("condition", Condition.class, around);
    }

    private static String key(CanyonMeasure measure) {
        return measure.name().toLowerCase(Locale.ROOT);
    }

    /** The filter that the form says, when no field has a fault; what nobody touched stays to the centimetre. */
    static CanyonFilter filled(CanyonFilter before, Filled filled, Surroundings around) {
        Map<CanyonMeasure, Span> spans = new EnumMap<>(CanyonMeasure.class);
        for (CanyonMeasure measure : CanyonMeasure.values()) {
            boolean same =
                    filled.last().value(key(measure)).equals(filled.first().value(key(measure)));
            spans.put(measure, same ? before.of(measure) : read(measure, filled.text(key(measure)), around));
        }
        return new CanyonFilter(
                filled.text("region"),
                filled.text("country"),
                spans,
                filled.last().value("never_seen").equals(YES),
                filled.last().value("unknown_too").equals(YES));
    }
}
