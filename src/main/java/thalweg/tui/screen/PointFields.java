package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.PointDraft;
import thalweg.rig.RigDraft;
import thalweg.tui.core.Surroundings;
import thalweg.units.Length;

/** The fields of a form that say where the points of a rig are, to try what another place would do, and what they hold. */
final class PointFields {

    private static final String PLACE = "point_";
    private static final int LEAST_NUMBERS = 2;
    private static final int MOST_NUMBERS = 3;

    private PointFields() {}

    /** Adds the fields of each point. */
    static void add(Build form, RigDraft draft, Surroundings around) {
        for (int i = 0; i < draft.points().size(); i++) {
            PointDraft point = draft.points().get(i);
            form.labelledValue(
                    PLACE + i,
                    around.say("rig_form.place", point.name()),
                    around.say("help.rig_form.place"),
                    printed(point.at(), around),
                    PointFields::place);
            TraitFields.add(form, i, point, around);
            SlingFields.add(form, i, point, around);
        }
    }

    static String printed(List<Double> at, Surroundings around) {
        List<String> along = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            if (i < LEAST_NUMBERS || at.get(i) != 0) {
                along.add(new Length(at.get(i)).printFine(around.units()));
            }
        }
        return String.join(", ", along);
    }

    /** "0.3 m, 0 m": to the right, up, and out of the wall if need be [m]. */
    static List<Double> place(String text) {
        String[] parts = text.split(",", -1);
        if (parts.length < LEAST_NUMBERS || parts.length > MOST_NUMBERS) {
            throw new InputException(Sentence.of(
                    "\"{0}\" is no place; write how far to the right and up, such as 0.3 m, 0 m.", text.strip()));
        }
        List<Double> at = new ArrayList<>();
        for (String part : parts) {
            String plain = part.strip();
            boolean below = plain.startsWith("-") || plain.startsWith("−");
            double metres = Length.parse(below ? plain.substring(1) : plain).metres();
            at.add(below ? -metres : metres);
        }
        return at;
    }

    /** The points as the form says; a place that nobody touched stays as it was, not as it was rounded for showing. */
    static List<PointDraft> filled(RigDraft before, Filled filled) {
        List<PointDraft> points = new ArrayList<>();
        for (int i = 0; i < before.points().size(); i++) {
            PointDraft point = before.points().get(i);
            PointDraft tried = TraitFields.filled(point, i, filled)
                    .withPlace(filled.value(PLACE + i, Optional.of(point.at()), PointFields::place)
                            .orElse(List.of()));
            points.add(SlingFields.filled(tried, i, filled));
        }
        return points;
    }
}
