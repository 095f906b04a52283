package thalweg.tui.screen;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thalweg.body.ThingBody;
import thalweg.draft.DraftKey;
import thalweg.draft.DraftKind;
import thalweg.route.HoldsAlone;
import thalweg.route.Part;
import thalweg.route.PartKind;
import thalweg.route.PartPlace;
import thalweg.route.PartialDate;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Form;
import thalweg.units.Force;
import thalweg.units.Length;

/**
 * A part of an anchor to enter or edit.
 *
 * @param go which, and where a new one stands
 */
record PartForm(Go.EditPart go) implements FormTask {

    @Override
    public String title(Surroundings around) {
        return go.part()
                .map(part -> around.say("form.part.edit", part.label()))
                .orElseGet(() -> around.say("form.part.new"));
    }

    @Override
    public Optional<DraftKey> draft() {
        return Optional.of(DraftKey.of(DraftKind.PART, go.part().map(Part::uid), go.anchor()));
    }

    @Override
    public Form form(Surroundings around) {
        Optional<Part> before = go.part();
        Part.Hardware made = before.map(Part::hardware).orElse(Part.Hardware.UNKNOWN);
        Build build = new Build(around)
                .name("label", "form.part.label", before.map(Part::label).orElse(""))
                .word(
                        "kind",
                        "form.part.kind",
                        "part",
                        PartKind.class,
                        before.map(Part::kind).orElse(PartKind.BOLT));
        return Form.of(HardwareFields.add(build, made)
                .past(
                        "placed",
                        "form.part.placed",
                        before.flatMap(Part::placed).map(PartialDate::print).orElse(""))
                .value(
                        "strength",
                        "form.part.strength",
                        force(before.flatMap(Part::strength), around),
                        Quantities::strength)
                .value(
                        "axial",
                        "form.part.axial",
                        force(before.flatMap(Part::axialStrength), around),
                        Quantities::strength)
                .maybe("holds", "form.part.holds", "holds", HoldsAlone.class, before.flatMap(Part::holdsAlone))
                .value("right", "form.part.right", at(before, PartPlace::right, around), Quantities::coordinate)
                .value("up", "form.part.up", at(before, PartPlace::up, around), Quantities::coordinate)
                .value("out", "form.part.out", at(before, PartPlace::out, around), Quantities::coordinate)
                .lines("note", "form.part.note", before.map(Part::note).orElse(""))
                .done());
    }

    private static String force(Optional<Force> force, Surroundings around) {
        return force.map(known -> known.print(around.units())).orElse("");
    }

    private static String at(Optional<Part> part, Function<PartPlace, Length> axis, Surroundings around) {
        return part.flatMap(Part::place)
                .map(axis)
                .map(one -> one.printFine(around.units()))
                .orElse("");
    }

    /** A place is measured in the wall plane at least; how far out is 0 where it was left empty. */
    @Override
    public String refusal(Filled filled, Surroundings around) {
        long given = Stream.of("right", "up")
                .filter(key -> !filled.text(key).isEmpty())
                .count();
        boolean onlyOut = given == 0 && !filled.text("out").isEmpty();
        return given == 1 || onlyOut ? around.say("form.part.half_a_place") : "";
    }

    @Override
    public Ask ask(Filled filled, Surroundings around) {
        Optional<PartPlace> was = go.part().flatMap(Part::place);
        Optional<Length> right = filled.value("right", was.map(PartPlace::right), Quantities::coordinate);
        Optional<Length> up = filled.value("up", was.map(PartPlace::up), Quantities::coordinate);
        Optional<Length> out = filled.value("out", was.map(PartPlace::out), Quantities::coordinate);
        Optional<PartPlace> place = right.isPresent() && up.isPresent()
                ? Optional.of(new PartPlace(right.get(), up.get(), out.orElse(new Length(0))))
                : Optional.empty();
        Part after = new Part(
                go.uid(),
                go.anchor(),
                go.order(),
                filled.text("label"),
                filled.word("kind", PartKind.class).orElseThrow(),
                HardwareFields.filled(filled),
                filled.value("placed", go.part().flatMap(Part::placed), PartialDate::parse),
                place,
                filled.value("strength", go.part().flatMap(Part::strength), Quantities::strength),
                filled.value("axial", go.part().flatMap(Part::axialStrength), Quantities::strength),
                filled.word("holds", HoldsAlone.class),
                filled.text("note"));
        return Save.of(go.part().map(ThingBody::of), ThingBody.of(after));
    }
}
