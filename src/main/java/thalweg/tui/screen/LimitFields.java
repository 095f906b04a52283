package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.LimitDraft;
import thalweg.rig.RigDefaults;
import thalweg.rig.RigDraft;
import thalweg.rig.RigKind;
import thalweg.tui.core.Surroundings;
import thalweg.units.Angle;
import thalweg.units.Length;

/** The fields of a form that say where limiter knots are, or over which sway the master slides freely. */
final class LimitFields {

    private static final Pattern RANGE = Pattern.compile("(.+?)\\s+to\\s+(.+)");
    private static final String KNOT = "limit_";
    private static final String FREE = "limit_range";
    private static final String STRANDS = "slider";

    private LimitFields() {}

    /** Adds them where there are as many points as a limited rig takes. */
    static void add(Build form, RigDraft draft, Surroundings around) {
        if (!fits(draft)) {
            return;
        }
        LimitDraft limits = draft.rig().limits();
        for (int i = 0; i < draft.points().size(); i++) {
            int leg = i;
            String metres = limits.metres()
                    .filter(stated -> leg < stated.size())
                    .map(stated -> new Length(stated.get(leg)).printFine(around.units()))
                    .orElse("");
            form.labelledValue(
                    KNOT + i,
                    around.say("rig_form.limit", draft.points().get(i).name()),
                    around.say("help.rig_form.limit"),
                    metres,
                    Length::parse);
        }
        form.value(
                FREE,
                "rig_form.limit_range",
                limits.rangeDegrees().map(LimitFields::printed).orElse(""),
                LimitFields::range);
        form.options(
                STRANDS,
                around.say("rig_form.slider"),
                List.of("1", "2"),
                List.of(around.say("rig_form.slider.1"), around.say("rig_form.slider.2")),
                Long.toString(limits.sliderStrands().orElse(RigDefaults.SLIDER_STRANDS)));
    }

    private static boolean fits(RigDraft draft) {
        return draft.points().size() == RigKind.LIMITED.mostPoints();
    }

    private static String printed(List<Double> range) {
        return range.stream()
                .map(degrees -> new Angle(degrees).printFine())
                .reduce((from, to) -> from + " to " + to)
                .orElse("");
    }

    /** Two directions [°]: "-10 to 15". */
    private static List<Double> range(String text) {
        Matcher matcher = RANGE.matcher(text.strip());
        if (!matcher.matches()) {
            throw new InputException(
                    Sentence.of("\"{0}\" is no range of directions; write one such as -10 to 15.", text.strip()));
        }
        return List.of(
                Angle.parse(matcher.group(1)).degrees(),
                Angle.parse(matcher.group(2)).degrees());
    }

    /** The key of the rig file that a field of this kind states. */
    static Optional<String> rigKey(String field) {
        if (field.equals(STRANDS)) {
            return Optional.of("slider_strands");
        }
        return field.startsWith(KNOT) ? Optional.of("limit_m") : Optional.empty();
    }

    /** What the form says; nothing where it had no such fields. */
    static LimitDraft filled(RigDraft before, RigOptions options) {
        Filled filled = options.filled();
        if (!fits(before)) {
            return LimitDraft.NONE;
        }
        LimitDraft limits = before.rig().limits();
        List<Double> metres = new ArrayList<>();
        for (int i = 0; i < before.points().size(); i++) {
            int leg = i;
            Optional<Double> stated =
                    limits.metres().filter(known -> leg < known.size()).map(known -> known.get(leg));
            filled.value(KNOT + i, stated, text -> Length.parse(text).metres()).ifPresent(metres::add);
        }
        return new LimitDraft(
                metres.isEmpty() ? Optional.empty() : Optional.of(metres),
                filled.value(FREE, limits.rangeDegrees(), LimitFields::range),
                strands(limits, options));
    }

    /** A choice at its default that nobody changed or confirmed stays unstated. */
    private static OptionalLong strands(LimitDraft before, RigOptions options) {
        return options.states(STRANDS)
                ? OptionalLong.of(Long.parseLong(options.filled().text(STRANDS)))
                : before.sliderStrands();
    }
}
