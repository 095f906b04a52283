package thalweg.tui.screen;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import thalweg.rig.RedirectDraft;
import thalweg.rig.RigDraft;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.units.Force;

/** The fields of a form that say over what the rope runs on its way from the master to the load. */
final class RedirectFields {

    private static final String PLACE = "redirect";
    private static final String NAME = "redirect_name";
    private static final String STRENGTH = "redirect_holds";

    private RedirectFields() {}

    /** Adds them. */
    static void add(Build form, RigDraft draft, Surroundings around) {
        Optional<RedirectDraft> redirect = draft.redirect();
        form.value(
                        PLACE,
                        "rig_form.redirect",
                        redirect.map(over -> PointFields.printed(over.at(), around))
                                .orElse(""),
                        PointFields::place)
                .text(
                        NAME,
                        "rig_form.redirect.name",
                        redirect.map(RedirectDraft::name).orElse(""))
                .value(
                        STRENGTH,
                        "rig_form.redirect.holds",
                        redirect.map(RedirectDraft::strengthKilonewtons)
                                .filter(OptionalDouble::isPresent)
                                .map(known ->
                                        Force.kilonewtons(known.getAsDouble()).print(around.units()))
                                .orElse(""),
                        Quantities::strength);
    }

    /** The fields of a redirect that is not there. */
    static Set<String> hidden(Form form) {
        return form.value(PLACE).isBlank() ? Set.of(NAME, STRENGTH) : Set.of();
    }

    /** What the form says; no place, no redirect. */
    static Optional<RedirectDraft> filled(RigDraft before, Filled filled) {
        Optional<RedirectDraft> known = before.redirect();
        Optional<List<Double>> at = filled.value(PLACE, known.map(RedirectDraft::at), PointFields::place);
        Optional<Double> strength = filled.value(
                STRENGTH,
                known.map(RedirectDraft::strengthKilonewtons)
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble),
                text -> Quantities.strength(text).inKilonewtons());
        return at.map(place -> new RedirectDraft(
                filled.text(NAME), place, strength.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
    }
}
