package thalweg.rig;

import thalweg.fault.Sentence;

/**
 * One thing that leaves a part less than its strength as stated.
 *
 * @param name in a word, as files and tables have it: "knot", "condition"
 * @param low the least it is taken to leave [-], above 0 and no more than the nominal
 * @param nominal what is used [-], above 0 and at most 1
 * @param high the most it is taken to leave [-], at most 1
 * @param source how sure that is
 * @param saying what it is and where the figure is from, as a part of a sentence
 */
public record StrengthFactor(
        String name, double low, double nominal, double high, FactorSource source, Sentence saying) {

    public StrengthFactor {
        boolean ordered = low > 0 && low <= nominal && nominal <= high && high <= 1;
        if (!ordered || name.isBlank() || saying.toString().isBlank()) {
            throw new IllegalArgumentException("a factor has a name, words, and three shares in order, above 0");
        }
    }

    /** A factor of which one figure is known and no range. */
    public static StrengthFactor of(String name, double share, FactorSource source, Sentence words) {
        return new StrengthFactor(name, share, share, share, source, words);
    }

    /** Whether it leaves less than all. */
    public boolean takesOff() {
        return low < 1;
    }

    /** Whether its low and its high share are another than the nominal one. */
    public boolean isRange() {
        return low < high;
    }

    /** As one line for a person: "condition 0.5, our choice: found worn". */
    public String print() {
        return said().toString();
    }

    /** Why, in English. */
    public String words() {
        return saying.toString();
    }

    /** The same as it is said. */
    public Sentence said() {
        Sentence called = Sentence.word(name);
        Sentence from = Sentence.word(source.words());
        return isRange()
                ? Sentence.of(
                        "{0} {1} ({2} to {3}), {4}: {5}",
                        called, figure(nominal), figure(low), figure(high), from, saying)
                : Sentence.of("{0} {1}, {2}: {3}", called, figure(nominal), from, saying);
    }

    /** With up to three decimals: no factor is known better. */
    private static String figure(double share) {
        return Figures.plain(Math.rint(share * 1000) / 1000);
    }
}
