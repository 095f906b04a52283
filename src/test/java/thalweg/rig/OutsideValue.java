package thalweg.rig;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * A value that is known from outside this program, and how the calculator comes to its own.
 *
 * @param what is computed, with its figures
 * @param source where the value is from, or the formula
 * @param standing how sure the source is
 * @param given the value, as it is printed there; commas part thousands
 * @param unit of both; empty for a pure number
 * @param allowed between the two, in the same unit
 * @param bound whether ours may be smaller by any amount
 * @param ours computes it
 */
record OutsideValue(
        String what,
        String source,
        Standing standing,
        String given,
        String unit,
        double allowed,
        boolean bound,
        DoubleSupplier ours) {

    /** How sure a source is. */
    enum Standing {
        /** Read in the source or in a copy of it. */
        SEEN,
        /** Computed from what was read, or from mechanics alone, with the formula shown. */
        DERIVED,
        /** Common practice of the trade without a source. */
        PRACTICE,
        /** From memory, unconfirmed. */
        MEMORY
    }

    /** A value that was read, which ours must come near to. */
    static OutsideValue seen(
            String what, String source, String given, String unit, double allowed, DoubleSupplier ours) {
        return new OutsideValue(what, source, Standing.SEEN, given, unit, allowed, false, ours);
    }

    /** A value by a formula, which ours must come near to. */
    static OutsideValue derived(
            String what, String formula, double exact, String unit, double allowed, DoubleSupplier ours) {
        return new OutsideValue(what, formula, Standing.DERIVED, digits(exact), unit, allowed, false, ours);
    }

    /** The value as a number. */
    double value() {
        return Double.parseDouble(given.replace(",", ""));
    }

    /** Whether ours is as near as it must be. */
    boolean isMetBy(double ours) {
        return bound ? ours <= value() + allowed : Math.abs(ours - value()) <= allowed;
    }

    /** As a row of a table. */
    String row() {
        double computed = ours.getAsDouble();
        String limit = bound ? "at most" : "within " + digits(allowed, 2);
        return String.join(
                        " | ",
                        "| " + what,
                        source,
                        standing.name().toLowerCase(Locale.ROOT),
                        (given + " " + unit).strip(),
                        (digits(computed) + " " + unit).strip(),
                        bound || value() == 0 ? "" : percent(100 * (computed - value()) / value()),
                        limit)
                + " |";
    }

    private static String percent(double difference) {
        String rounded = String.format(Locale.ROOT, "%+.2f %%", difference);
        return rounded.matches("[+-]0\\.00 %") ? "0.00 %" : rounded;
    }

    /** Five digits that count. */
    private static String digits(double value) {
        return digits(value, 5);
    }

    private static String digits(double value, int count) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(count));
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    @Override
    public String toString() {
        return what + " (" + source + ")";
    }
}
