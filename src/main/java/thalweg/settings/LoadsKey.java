package thalweg.settings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import thalweg.fault.Sentence;
import thalweg.json.FieldReader;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Mass;

/** Reads the key {@code loads}: a list of loads, which stands in the place of the standard ones. */
final class LoadsKey {

    private static final String KEY = "loads";
    private static final String NAME = "name";
    private static final String MASS = "mass_kg";
    private static final String FORCE = "force_kN";
    private static final String FACTOR = "factor";
    private static final Sentence NEITHER = Sentence.of("states neither mass_kg nor force_kN; state one.");
    private static final int LONGEST_NAME = 40;
    private static final int LONGEST_SOURCE = 200;

    /** As in the rig file. */
    private static final double LEAST_KILOGRAMS = 1e-3;

    private static final double MOST_KILOGRAMS = 100_000;
    private static final double LEAST_KILONEWTONS = 1e-6;
    private static final double MOST_KILONEWTONS = 1000;

    private LoadsKey() {}

    /** The loads that are set; empty where the key is missing. Reasons go to the reader's findings. */
    static Optional<List<LoadPreset>> read(FieldReader in, Phrases phrases) {
        if (!in.has(KEY)) {
            return Optional.empty();
        }
        List<LoadPreset> loads = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (FieldReader one : in.objects(KEY)) {
            preset(one, names, phrases).ifPresent(loads::add);
        }
        return Optional.of(loads);
    }

    private static Optional<LoadPreset> preset(FieldReader in, Set<String> names, Phrases phrases) {
        String name = in.text(NAME, LONGEST_NAME);
        if (in.sound() && !names.add(name)) {
            in.refuse(NAME, Sentence.of("is the name of another load as well: {0}.", name));
        }
        OptionalDouble mass = number(in, MASS, LEAST_KILOGRAMS, MOST_KILOGRAMS);
        OptionalDouble force = number(in, FORCE, LEAST_KILONEWTONS, MOST_KILONEWTONS);
        if (in.has(MASS) == in.has(FORCE)) {
            in.refuse("", in.has(MASS) ? Sentence.of("states both mass_kg and force_kN; state one.") : NEITHER);
        }
        double factor = number(in, FACTOR, LoadPreset.LEAST_FACTOR, LoadPreset.MOST_FACTOR)
                .orElse(LoadPreset.LEAST_FACTOR);
        String source =
                in.optionalText("source", LONGEST_SOURCE).orElseGet(() -> phrases.say("settings.load_source.own"));
        in.refuseUnasked();
        if (!in.sound()) {
            return Optional.empty();
        }
        Optional<Mass> known = mass.isPresent() ? Optional.of(new Mass(mass.getAsDouble())) : Optional.empty();
        Optional<Force> pull =
                force.isPresent() ? Optional.of(Force.kilonewtons(force.getAsDouble())) : Optional.empty();
        return Optional.of(new LoadPreset(name, known, pull, factor, source));
    }

    private static OptionalDouble number(FieldReader in, String key, double least, double most) {
        OptionalDouble value = in.real(key);
        if (value.isPresent() && (value.getAsDouble() < least || value.getAsDouble() > most)) {
            in.refuse(
                    key,
                    Sentence.of("is out of range; it should be a number from {0} to {1}.", plain(least), plain(most)));
            return OptionalDouble.empty();
        }
        return value;
    }

    private static String plain(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }
}
