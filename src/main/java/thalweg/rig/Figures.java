package thalweg.rig;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import thalweg.fault.Sentence;
import thalweg.units.Length;

/** Numbers inside sentences, whatever the machine's language. */
final class Figures {

    private static final int MOST_NAMES = 3;

    private Figures() {}

    /** With that many decimals, and never a negative zero. */
    static String fixed(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /** A ratio of strength to force, never rounded up: "0.99", "1.80", "12.3". */
    static String times(double ratio) {
        int decimals = ratio < 10 ? 2 : 1;
        double scale = Math.pow(10, decimals);
        return fixed(Math.floor(ratio * scale) / scale, decimals);
    }

    /** A length in both systems of units, as "0.12 m (0.4 ft)". */
    static String metres(double metres) {
        return fixed(metres, 2) + " m (" + fixed(metres / Length.METRES_PER_FOOT, 1) + " ft)";
    }

    /** A share as "52 %". */
    static String percent(double share) {
        return fixed(100 * share, 0) + " %";
    }

    /** An angle as "52°". */
    static String degrees(double degrees) {
        return fixed(degrees, 0) + "°";
    }

    /** Names as "A, B, C and 4 more": a sentence that names everything is not read. */
    static String listed(List<String> names) {
        int more = names.size() - MOST_NAMES;
        return more <= 1
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, MOST_NAMES)) + " and " + more + " more";
    }

    /** The same of names that are said. */
    static Sentence said(List<Sentence> names) {
        int more = names.size() - MOST_NAMES;
        return more <= 1
                ? Sentence.joined(", ", names)
                : Sentence.of("{0} and {1} more", Sentence.joined(", ", names.subList(0, MOST_NAMES)), more);
    }

    /** As somebody would type it: "0.25", "1000". */
    static String plain(double number) {
        if (!Double.isFinite(number)) {
            return "not finite";
        }
        double size = Math.abs(number);
        return size != 0 && (size < 1e-9 || size >= 1e9)
                ? Double.toString(number)
                : fixed(number, 12).replaceFirst("\\.?0+$", "");
    }
}
