package thalweg.rig;

import java.util.OptionalDouble;
import thalweg.fault.Sentence;
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
                    Sentence.of(
                            "No direction of the load pulls on two strands at once, so there is no angle to judge."));
        }
        WidestAngle widest = sector.widest().get();
        double degrees = asTwoLegs(kind, widest.angle().degrees());
        RigVerdict verdict;
        Sentence line;
        if (degrees <= IDEAL_DEGREES) {
            verdict = RigVerdict.GOOD;
            line = Sentence.of("within the ideal of {0} that practice names", Figures.degrees(IDEAL_DEGREES));
        } else if (degrees <= NEVER_PAST_DEGREES) {
            verdict = RigVerdict.WATCH;
            line = degrees <= DESIGN_LIMIT_DEGREES
                    ? Sentence.of("past the ideal of {0} that practice names", Figures.degrees(IDEAL_DEGREES))
                    : Sentence.of(
                            "past the {0} to which one study of load-sharing anchors kept its designs",
                            Figures.degrees(DESIGN_LIMIT_DEGREES));
        } else {
            verdict = RigVerdict.POOR;
            line = Sentence.of(
                    "past the {0} that practice never goes beyond: there each of two like legs bears the whole load",
                    Figures.degrees(NEVER_PAST_DEGREES));
        }
        Sentence where = steady.angle()
                .map(angle -> Sentence.of(
                        "The strands meet at {0} at the aim, and at most at {1}, with the load at {2}",
                        one(angle), one(widest.angle()), one(widest.direction())))
                .orElseGet(() -> Sentence.of(
                        "At the aim only one strand is loaded; elsewhere they meet at most at {0}, with the load at {1}",
                        one(widest.angle()), one(widest.direction())));
        return new LetterCheck(
                CheckLetter.A,
                verdict,
                OptionalDouble.of(widest.angle().degrees()),
                kind == RigKind.LOOP
                        ? Sentence.of(
                                "{0}. A triangle of that angle pulls its points as hard as two legs at {1}° would: {2}.",
                                where, Figures.fixed(degrees, 1), line)
                        : Sentence.of("{0}: {1}.", where, line));
    }

    /**
     * The angle of two legs that pull their points as hard [°]. A triangle draws its points together as well: with the
     * angle a it pulls them as two legs of the angle 90 + a/2 would.
     */
    private static double asTwoLegs(RigKind kind, double degrees) {
        return kind == RigKind.LOOP ? 90 + degrees / 2 : degrees;
    }

    private static String one(Angle angle) {
        return Figures.fixed(angle.degrees(), 1) + "°";
    }
}
