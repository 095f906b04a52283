package thalweg.rig;

import java.util.OptionalDouble;
import thalweg.units.Angle;

/** Judges the letter A of the checklist: how wide the strands spread at the master. */
final class CheckAngle {

    /** Common practice of the trade, without a source: the ideal is at most this [°]. */
    static final double IDEAL_DEGREES = 60;

    /**
     * Design limit of a load-sharing anchor study [°].
     *
     * @see "McKently, Parker and Smith, International Technical Rescue Symposium: outer angle at most 90 degrees"
     */
    static final double DESIGN_LIMIT_DEGREES = 90;

    /** Common practice of the trade, without a source, never past this [°]: there each of two legs bears the load. */
    static final double NEVER_PAST_DEGREES = 120;

    private CheckAngle() {}

    static LetterCheck of(RigKind kind, RigState steady, RigSector sector) {
        if (sector.widest().isEmpty()) {
            return new LetterCheck(
                    CheckLetter.A,
                    RigVerdict.UNKNOWN,
                    OptionalDouble.empty(),
                    "No direction of the load pulls on two strands at once, so there is no angle to judge.");
        }
        WidestAngle widest = sector.widest().get();
        double degrees = asTwoLegs(kind, widest.angle().degrees());
        RigVerdict verdict;
        String line;
        if (degrees <= IDEAL_DEGREES) {
            verdict = RigVerdict.GOOD;
            line = "within the ideal of " + Figures.degrees(IDEAL_DEGREES) + " that practice names";
        } else if (degrees <= NEVER_PAST_DEGREES) {
            verdict = RigVerdict.WATCH;
            line = degrees <= DESIGN_LIMIT_DEGREES
                    ? "past the ideal of " + Figures.degrees(IDEAL_DEGREES) + " that practice names"
                    : "past the " + Figures.degrees(DESIGN_LIMIT_DEGREES)
                            + " to which one study of load-sharing anchors kept its designs";
        } else {
            verdict = RigVerdict.POOR;
            line = "past the " + Figures.degrees(NEVER_PAST_DEGREES)
                    + " that practice never goes beyond: there each of two like legs bears the whole load";
        }
        String where = steady.angle()
                .map(angle -> "The strands meet at " + one(angle) + " at the aim, and at most at " + one(widest.angle())
                        + ", with the load at " + one(widest.direction()))
                .orElse("At the aim only one strand is loaded; elsewhere they meet at most at " + one(widest.angle())
                        + ", with the load at " + one(widest.direction()));
        return new LetterCheck(
                CheckLetter.A,
                verdict,
                OptionalDouble.of(widest.angle().degrees()),
                where + like(kind, degrees) + ": " + line + ".");
    }

    /**
     * The angle of two legs that pull their points as hard [°]. A triangle draws its points together as well: with the
     * angle a it pulls them as two legs of the angle 90 + a/2 would.
     */
    private static double asTwoLegs(RigKind kind, double degrees) {
        return kind == RigKind.LOOP ? 90 + degrees / 2 : degrees;
    }

    private static String like(RigKind kind, double degrees) {
        return kind == RigKind.LOOP
                ? ". A triangle of that angle pulls its points as hard as two legs at " + Figures.fixed(degrees, 1)
                        + "° would"
                : "";
    }

    private static String one(Angle angle) {
        return Figures.fixed(angle.degrees(), 1) + "°";
    }
}
