package thalweg.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.rig.RigLoad;
import thalweg.settings.LoadPreset;
import thalweg.text.Phrases;
import thalweg.units.Mass;
import thalweg.units.UnitSystem;

/** What hangs on a rig, in words. */
public final class LoadWords {

    private static final int DECIMALS = 2;

    private final Phrases phrases;
    private final UnitSystem units;
    private final List<LoadPreset> known;

    /**
     * @param known loads that have a name; one whose factor is more than 1 is called by it where it is stated
     */
    public LoadWords(Phrases phrases, UnitSystem units, List<LoadPreset> known) {
        this.phrases = phrases;
        this.units = units;
        this.known = List.copyOf(known);
    }

    /** Words that call no load by a name. */
    public LoadWords(Phrases phrases, UnitSystem units) {
        this(phrases, units, List.of());
    }

    /** The load alone: "90 kg", "100 kg x 1.5 (lowered, one person)". */
    public String of(RigLoad load) {
        String atRest = load.mass()
                .map(mass -> mass.print(units))
                .orElseGet(() -> load.atRest().print(units));
        if (load.factor() == 1) {
            return atRest;
        }
        String factor = factor(load.factor());
        return named(load)
                .map(name -> phrases.say("rig.load.named_times", atRest, factor, name))
                .orElseGet(() -> phrases.say("rig.load.times", atRest, factor));
    }

    /** The load and where it pulls, as the rest of a line that says "Load" already. */
    public String withAim(RigLoad load) {
        String aim = phrases.say(
                "rig.load.aim",
                load.toward().print(),
                load.sway().print(),
                load.leanOut().print());
        String pull = load.factor() == 1
                ? of(load)
                : phrases.say("rig.load.pull", of(load), load.weight().print(units));
        return pull + ", " + aim;
    }

    private Optional<String> named(RigLoad load) {
        OptionalDouble mass =
                load.mass().map(Mass::kilograms).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        OptionalDouble force = mass.isPresent()
                ? OptionalDouble.empty()
                : OptionalDouble.of(load.atRest().inKilonewtons());
        return known.stream()
                .filter(preset -> preset.is(mass, force, load.factor()))
                .map(LoadPreset::name)
                .findFirst();
    }

    /** A factor as people write it: "1.5", "2". */
    public static String factor(double factor) {
        BigDecimal rounded = BigDecimal.valueOf(factor).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.stripTrailingZeros().toPlainString();
    }
}
