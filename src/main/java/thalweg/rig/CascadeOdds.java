package thalweg.rig;

import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * How often points fail and everything is lost in trials by chance, if the beliefs about strengths and load hold. It
 * compares layouts under the same beliefs, and is never a promise.
 *
 * @param seed of the chance; the same seed gives the same trials
 * @param planned how many trials were asked for
 * @param trials how many were done
 * @param anyFails in how many some point failed
 * @param allLost in how many nothing held the load in the end
 * @param directionError by how much forces between the directions that were solved may be off, in parts of the load
 * @param rising whether some peak still rose at the end of the time that is followed, so that more may fail
 * @param unknown why the odds are not known: a sentence; empty where they are
 */
public record CascadeOdds(
        long seed,
        int planned,
        int trials,
        int anyFails,
        int allLost,
        double directionError,
        boolean rising,
        Optional<Sentence> unknown) {

    /** What is tried unless somebody chooses otherwise. */
    public static final int TRIALS = 100_000;

    /** The most that may be asked for; our choice, some minutes of work. */
    public static final int MOST_TRIALS = 10_000_000;

    /** The seed unless somebody chooses otherwise. */
    public static final long SEED = 1;

    public CascadeOdds {
        if (planned < 1 || planned > MOST_TRIALS || trials < 0 || allLost > anyFails || anyFails > trials) {
            throw new IllegalArgumentException("all that is lost has failed, in one of the trials");
        }
    }

    /** Nothing tried yet. */
    public static CascadeOdds begin(int planned, long seed) {
        return new CascadeOdds(seed, planned, 0, 0, 0, 0, false, Optional.empty());
    }

    CascadeOdds because(Sentence why) {
        return new CascadeOdds(seed, planned, trials, anyFails, allLost, directionError, rising, Optional.of(why));
    }

    /** Whether nothing is left to do. */
    public boolean finished() {
        return trials == planned || unknown.isPresent();
    }

    /** In how many trials some point failed; empty where that is unknown. */
    public Optional<Share95> anyPointFails() {
        return share(anyFails);
    }

    /** In how many trials everything was lost; empty where that is unknown. */
    public Optional<Share95> everythingLost() {
        return share(allLost);
    }

    /** By how much forces between solved directions may be off, in percent of the load, rounded up: "0.1". */
    public String printError() {
        return Figures.fixed(Math.max(1, Math.ceil(1000 * directionError)) / 10, 1);
    }

    private Optional<Share95> share(int count) {
        return unknown.isPresent() || trials == 0 ? Optional.empty() : Optional.of(new Share95(count, trials));
    }
}
