package thalweg.rig;

import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * What published tests say of the strength that textile has left with age: little, of few things, and for few years.
 * Outside of what was tested it answers that it is unknown, never with a guess.
 *
 * <p>Slings of UHMWPE in ordinary use: under 3 years just under 20 kN of 22 on average, 3 to 5 years 16 kN. Left outdoors,
 * polyester levels off near 30 % lost, most of it in the first 12 months; nylon loses steadily, 50 to 60 % after 36 months.
 * The averages are published and their scatter is not: where a band stands around them, it is our choice and says so.
 *
 * @see "DAV Panorama 4/2015, p. 60 (slings)"
 * @see "WSTDA outdoor exposure test 1997 to 2004 (polyester and nylon)"
 */
public final class TextileAge {

    /** At most so old, by the makers, from the day of manufacture and however little it was used [years]. */
    public static final double MAKERS_LIMIT_YEARS = 10;

    /** As long as the last figure of the outdoor test says, 36 months [years]. */
    static final double OUTDOORS_TESTED_YEARS = 3;

    private static final double FIRST_YEAR = 1;

    /** Slings of up to this age, and from there to the next, were averaged together [years]. */
    private static final double YOUNG_SLINGS_YEARS = 3;

    private static final double OLD_SLINGS_YEARS = 5;

    /** Of new ones, by their standard [kN]. */
    private static final double NEW_SLING = 22;

    private static final double YOUNG_SLING = 20;
    private static final double OLD_SLING = 16;

    /** As far below the older slings as those are below the younger: our choice of a lower bound [kN]. */
    private static final double WEAK_OLD_SLING = 12;

    private static final double POLYESTER_LEVEL = 0.70;

    /** "Near 30 %" read as up to 35: our choice. */
    private static final double POLYESTER_LOW = 0.65;

    /** Most of the 30 %, which is more than half of it, is lost by then. */
    private static final double POLYESTER_AFTER_A_YEAR_HIGH = 0.85;

    private static final double NYLON_LOST_AT_LEAST = 0.50;
    private static final double NYLON_LOST_AT_MOST = 0.60;

    private static final String AGE = "age";
    private static final String SLINGS = "DAV Panorama 4/2015, p. 60";
    private static final String OUTDOOR_TEST = "WSTDA outdoor exposure test 1997 to 2004";

    private TextileAge() {}

    /**
     * What is left.
     *
     * @param years since it was made, 0 or more
     */
    public static AgeShare of(Fibre fibre, Kept kept, double years) {
        if (!(years >= 0)) {
            throw new IllegalArgumentException("an age is 0 or more");
        }
        AgeShare tested = kept == Kept.OUTDOORS ? outdoors(fibre, years) : indoors(fibre, years);
        return years > MAKERS_LIMIT_YEARS ? AgeShare.unknown(tested.atMost(), tooOld(years)) : tested;
    }

    /** Why nothing is known of textile beyond the makers' limit, as a part of a sentence. */
    static Sentence tooOld(double years) {
        return Sentence.of("textile of {0} is past the 10 years that makers give it at most", age(years));
    }

    private static AgeShare indoors(Fibre fibre, double years) {
        return fibre == Fibre.UHMWPE
                ? slings(years)
                : AgeShare.notAllowedFor(Sentence.of(
                        "age is not allowed for: no published figure for {0} kept indoors",
                        Sentence.word(fibre.words())));
    }

    private static AgeShare slings(double years) {
        if (years > OLD_SLINGS_YEARS) {
            return AgeShare.unknown(
                    OptionalDouble.of(OLD_SLING / NEW_SLING),
                    Sentence.of(
                            "no published figure for UHMWPE of more than 5 years; at 3 to 5 it had 73 % left ({0})",
                            SLINGS));
        }
        return years < YOUNG_SLINGS_YEARS
                ? band(
                        OLD_SLING / NEW_SLING,
                        YOUNG_SLING / NEW_SLING,
                        1,
                        FactorSource.PUBLISHED,
                        Sentence.of(
                                "UHMWPE slings under 3 years, just under 20 of 22 kN on average; range our choice, {0}",
                                SLINGS))
                : band(
                        WEAK_OLD_SLING / NEW_SLING,
                        OLD_SLING / NEW_SLING,
                        YOUNG_SLING / NEW_SLING,
                        FactorSource.PUBLISHED,
                        Sentence.of(
                                "UHMWPE slings of 3 to 5 years, 16 of 22 kN on average; range our choice, {0}",
                                SLINGS));
    }

    private static AgeShare outdoors(Fibre fibre, double years) {
        return switch (fibre) {
            case NYLON -> nylonOutdoors(years);
            case POLYESTER -> polyesterOutdoors(years);
            case UHMWPE -> {
                OptionalDouble used =
                        OptionalDouble.of(years < YOUNG_SLINGS_YEARS ? YOUNG_SLING / NEW_SLING : OLD_SLING / NEW_SLING);
                yield AgeShare.unknown(used, Sentence.of("no published figure for UHMWPE left outdoors"));
            }
        };
    }

    /** A straight line from new to what was found after 36 months, as "steadily" has it. */
    private static AgeShare nylonOutdoors(double years) {
        if (years > OUTDOORS_TESTED_YEARS) {
            return AgeShare.unknown(
                    OptionalDouble.of(1 - NYLON_LOST_AT_LEAST),
                    Sentence.of(
                            "nylon left outdoors loses steadily, 50 to 60 % by 36 months, and nothing is published"
                                    + " beyond ({0})",
                            OUTDOOR_TEST));
        }
        double part = years / OUTDOORS_TESTED_YEARS;
        return band(
                1 - NYLON_LOST_AT_MOST * part,
                1 - (NYLON_LOST_AT_LEAST + NYLON_LOST_AT_MOST) / 2 * part,
                1 - NYLON_LOST_AT_LEAST * part,
                FactorSource.DERIVED,
                Sentence.of(
                        "nylon left outdoors for {0}, a straight line to 50 to 60 % lost after 36 months, {1}",
                        age(years), OUTDOOR_TEST));
    }

    /** The level that it comes to counts from the first day: how fast it gets there is not published. */
    private static AgeShare polyesterOutdoors(double years) {
        if (years > OUTDOORS_TESTED_YEARS) {
            return AgeShare.unknown(
                    OptionalDouble.of(POLYESTER_LEVEL),
                    Sentence.of(
                            "polyester left outdoors levels off near 30 % lost, and nothing is published beyond 36"
                                    + " months ({0})",
                            OUTDOOR_TEST));
        }
        return band(
                POLYESTER_LOW,
                POLYESTER_LEVEL,
                years < FIRST_YEAR ? 1 : POLYESTER_AFTER_A_YEAR_HIGH,
                FactorSource.PUBLISHED,
                Sentence.of(
                        "polyester left outdoors levels off near 30 % lost, most of it in 12 months; counted in full"
                                + " from the first day and range our choice, {0}",
                        OUTDOOR_TEST));
    }

    private static AgeShare band(double low, double nominal, double high, FactorSource source, Sentence words) {
        return AgeShare.known(new StrengthFactor(AGE, low, nominal, high, source, words));
    }

    private static Sentence age(double years) {
        return Sentence.of("{0} years", Figures.fixed(years, 1));
    }
}
