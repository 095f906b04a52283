package thalweg.why;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import thalweg.fault.Sentence;
import thalweg.rig.RigLoad;
import thalweg.rig.Vector3;
import thalweg.settings.LoadPreset;
import thalweg.sheet.LoadWords;
import thalweg.text.Phrases;
import thalweg.units.Force;
import thalweg.units.Length;
import thalweg.units.UnitSystem;

/** Phrases and quantities as explanations print them: as the figures themselves are printed. */
record Words(Phrases phrases, UnitSystem units, List<LoadPreset> loads) {

    String say(Sentence sentence) {
        return phrases.say(sentence);
    }

    String say(String key, Object... values) {
        return phrases.say(key, values);
    }

    String force(Force force) {
        return force.print(units);
    }

    String kilonewtons(double kilonewtons) {
        return force(Force.kilonewtons(kilonewtons));
    }

    String length(Length length) {
        return length.printFine(units);
    }

    String metres(double metres) {
        return length(new Length(metres));
    }

    /** A place as right, up and, where it is not in the plane of the wall, out of it. */
    String place(Vector3 at) {
        return Math.abs(at.z()) < 5e-4
                ? say("why.place", metres(at.x()), metres(at.y()))
                : say("why.place.out", metres(at.x()), metres(at.y()), metres(at.z()));
    }

    String load(RigLoad load) {
        return new LoadWords(phrases, units, loads).of(load);
    }

    /** A share as "52 %". */
    String percent(double share) {
        return fixed(100 * share, 0) + " %";
    }

    /** A number with so many decimals, and never a negative zero. */
    static String fixed(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /** A number as somebody would type it. */
    String plain(double number) {
        return BigDecimal.valueOf(number)
                .setScale(4, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
