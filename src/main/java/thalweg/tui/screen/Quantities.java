package thalweg.tui.screen;

import thalweg.body.Limits;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.route.Times;
import thalweg.units.Force;
import thalweg.units.Length;

/** Reads quantities as forms take them: within what is believed, and rounded to what is kept. */
final class Quantities {

    private Quantities() {}

    /** A height of 0 to 1,000 m. */
    static Length height(String text) {
        return length(text, Limits.HEIGHT_CM);
    }

    /** A length of rope of 0 to 1,000 m. */
    static Length rope(String text) {
        return length(text, Limits.ROPE_CM);
    }

    /** A distance of 0 to 100 km. */
    static Length distance(String text) {
        return length(text, Limits.DISTANCE_CM);
    }

    private static Length length(String text, long mostCm) {
        long centimetres = Length.parse(text).inCentimetres();
        if (centimetres < 0 || centimetres > mostCm) {
            throw new InputException(Sentence.of("\"{0}\" is not between 0 and {1} m.", text.strip(), mostCm / 100));
        }
        return Length.centimetres(centimetres);
    }

    /** A coordinate of a point, within 50 m of the first. */
    static Length coordinate(String text) {
        refuseBare(text, Sentence.of("\"{0}\" has no unit; write {0} cm, {0} m or {0} ft.", text.strip()));
        long centimetres = Length.parse(text).inCentimetres();
        if (Math.abs(centimetres) > Limits.PLACE_CM) {
            throw new InputException(Sentence.of(
                    "\"{0}\" is more than {1} m from the first point.", text.strip(), Limits.PLACE_CM / 100));
        }
        return Length.centimetres(centimetres);
    }

    /** A strength above 0, in whole newtons. */
    static Force strength(String text) {
        refuseBare(text, Sentence.of("\"{0}\" has no unit; write {0} kN or lbf.", text.strip()));
        long newtons = Math.round(Force.parse(text).newtons());
        if (newtons < 1 || newtons > Limits.STRENGTH_N) {
            throw new InputException(
                    Sentence.of("\"{0}\" is not between 0 and {1} kN.", text.strip(), Limits.STRENGTH_N / 1000));
        }
        return new Force(newtons);
    }

    /** Where a slip of the unit would not be noticed, it is asked for. */
    private static void refuseBare(String text, Sentence why) {
        String plain = text.strip();
        if (!plain.isEmpty() && Character.isDigit(plain.charAt(plain.length() - 1)) && !plain.matches("[+-]?0+")) {
            throw new InputException(why);
        }
    }

    /** Minutes, as "90", "90 min", "1:30" or "1 h 30". */
    static int minutes(String text) {
        return Times.minutes(text);
    }
}
