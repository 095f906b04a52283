package thalweg.tui.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.LoadDraft;
import thalweg.settings.LoadPreset;
import thalweg.sheet.LoadWords;
import thalweg.tui.core.Surroundings;
import thalweg.tui.widget.Field;
import thalweg.tui.widget.Form;
import thalweg.tui.widget.TextField;
import thalweg.units.Force;
import thalweg.units.Mass;

/** The fields of a form that say what hangs on a rig: one of the loads that have a name, or any other. */
final class LoadFields {

    private static final String OWN = "own";
    private static final String PRESET = "preset";
    private static final String LOAD = "load";
    private static final String FACTOR = "factor";
    private static final int LONGEST = 40;

    private LoadFields() {}

    /** Adds the choice, the load and its factor. */
    static void add(Build form, LoadDraft load, Surroundings around) {
        List<LoadPreset> known = around.settings().loads();
        List<String> options = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        String chosen = OWN;
        for (int i = 0; i < known.size(); i++) {
            options.add(Integer.toString(i));
            labels.add(label(known.get(i), around));
            boolean same = known.get(i)
                    .is(
                            load.massKilograms(),
                            load.forceKilonewtons(),
                            load.factor().orElse(1));
            chosen = same && chosen.equals(OWN) ? Integer.toString(i) : chosen;
        }
        options.add(OWN);
        labels.add(around.say("rig_form.preset.own"));
        form.options(PRESET, around.say("rig_form.preset"), options, labels, chosen)
                .value(LOAD, "rig_form.load", printed(load, around), LoadFields::load)
                .value(FACTOR, "rig_form.factor", LoadWords.factor(load.factor().orElse(1)), LoadFields::factor);
    }

    private static String label(LoadPreset preset, Surroundings around) {
        String load = load(preset, around);
        String times =
                preset.factor() == 1 ? load : around.say("rig.load.times", load, LoadWords.factor(preset.factor()));
        return around.say("rig_form.preset.option", preset.name(), times);
    }

    private static String load(LoadPreset preset, Surroundings around) {
        return preset.mass()
                .map(mass -> mass.print(around.units()))
                .orElseGet(() -> preset.force().orElseThrow().print(around.units()));
    }

    private static String printed(LoadDraft load, Surroundings around) {
        return load.massKilograms().isPresent()
                ? new Mass(load.massKilograms().getAsDouble()).print(around.units())
                : Force.kilonewtons(load.forceKilonewtons().orElse(0)).print(around.units());
    }

    /** The form with the figures of a load that was chosen, or without its name where they were changed. */
    static Form adapted(Form before, Form after, Surroundings around) {
        if (!after.value(PRESET).equals(before.value(PRESET))) {
            return chosen(after.value(PRESET), around)
                    .map(preset -> after.with(LOAD, typed(load(preset, around)))
                            .with(FACTOR, typed(LoadWords.factor(preset.factor()))))
                    .orElse(after);
        }
        if (after.value(LOAD).equals(before.value(LOAD)) && after.value(FACTOR).equals(before.value(FACTOR))) {
            return after;
        }
        return after.with(PRESET, turnedTo(after, like(after, around)));
    }

    private static Field.Input typed(String text) {
        return new Field.Input.Typed(TextField.of(text, LONGEST));
    }

    /** The load that has just these figures, by its key. */
    private static String like(Form form, Surroundings around) {
        List<LoadPreset> known = around.settings().loads();
        for (int i = 0; i < known.size(); i++) {
            boolean same = form.value(LOAD).strip().equals(load(known.get(i), around))
                    && form.value(FACTOR)
                            .strip()
                            .equals(LoadWords.factor(known.get(i).factor()));
            if (same) {
                return Integer.toString(i);
            }
        }
        return OWN;
    }

    private static Field.Input turnedTo(Form form, String key) {
        Field.Input.Chosen choice =
                (Field.Input.Chosen) form.field(PRESET).orElseThrow().input();
        return choice.turned(choice.options().indexOf(key) - choice.chosen());
    }

    private static Optional<LoadPreset> chosen(String key, Surroundings around) {
        return key.equals(OWN)
                ? Optional.empty()
                : Optional.of(around.settings().loads().get(Integer.parseInt(key)));
    }

    /**
     * The field with its help, which for the choice of a load says where its figures are from.
     *
     * @param help as the field was built
     */
    static Field explained(Field field, String help, Surroundings around) {
        return field.key().equals(PRESET)
                ? field.withHelp(chosen(field.value(), around)
                        .map(preset -> around.say("help.rig_form.preset", preset.source(), help))
                        .orElse(help))
                : field.withHelp(help);
    }

    /** The mass or force and its factor as the form says; straight down. */
    static LoadDraft filled(LoadDraft before, Filled filled, Surroundings around) {
        Optional<LoadPreset> preset = chosen(filled.last().value(PRESET), around);
        if (touched(filled) && preset.isPresent()) {
            return of(preset.get());
        }
        LoadDraft load = filled.text(LOAD).isEmpty() || same(filled, LOAD) ? before : load(filled.text(LOAD));
        double factor = same(filled, FACTOR)
                ? before.factor().orElse(1)
                : filled.text(FACTOR).isEmpty() ? 1 : factor(filled.text(FACTOR));
        return times(load, factor);
    }

    private static boolean touched(Filled filled) {
        return !(same(filled, PRESET) && same(filled, LOAD) && same(filled, FACTOR));
    }

    private static boolean same(Filled filled, String key) {
        return filled.last().value(key).equals(filled.first().value(key));
    }

    private static LoadDraft of(LoadPreset preset) {
        LoadDraft load = preset.mass()
                .map(mass -> LoadDraft.ofMass(mass.kilograms(), 0))
                .orElseGet(() -> LoadDraft.ofForce(preset.force().orElseThrow().inKilonewtons(), 0, 0));
        return times(load, preset.factor());
    }

    /** A factor of 1 is none. */
    private static LoadDraft times(LoadDraft load, double factor) {
        return factor == 1 ? load.withoutFactor() : load.withFactor(factor);
    }

    /** A load is a mass or a force; the unit says which. */
    private static LoadDraft load(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        boolean force = plain.endsWith("n") || plain.endsWith("lbf");
        LoadDraft load = force
                ? LoadDraft.ofForce(Force.parse(text).inKilonewtons(), 0, 0)
                : LoadDraft.ofMass(Mass.parse(text).kilograms(), 0, 0);
        load.objection().ifPresent(why -> {
            throw new InputException(Sentence.of("A load of \"{0}\" {1}.", text.strip(), why));
        });
        return load;
    }

    private static double factor(String text) {
        String plain = text.strip().replace(',', '.');
        double factor = plain.matches("\\d{1,2}(\\.\\d{1,6})?") ? Double.parseDouble(plain) : 0;
        if (factor < LoadPreset.LEAST_FACTOR || factor > LoadPreset.MOST_FACTOR) {
            throw new InputException(
                    Sentence.of("\"{0}\" is no factor of a load; write 1 to 10, such as 1.5.", text.strip()));
        }
        return factor;
    }
}
