package thalweg.cli;

import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import thalweg.fault.InputException;
import thalweg.fault.Sentence;
import thalweg.rig.CascadeOdds;
import thalweg.rig.CascadeWatch;
import thalweg.rig.RigInput;
import thalweg.service.RunCascade;

/** Whether points are to fail by chance, and how often that is tried. */
final class CascadeOptions {

    /** Progress is told so often, and only of more trials than are usual. */
    private static final int TOLD = 10;

    @Option(
            names = "--cascade",
            description = "let points fail by chance, and say how often some point fails and everything is lost: a"
                    + " comparison of layouts under the same beliefs, never a promise")
    private boolean cascade;

    @Option(names = "--trials", paramLabel = "N", description = "trials of --cascade; 100000 unless stated")
    private @Nullable Integer trials;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "of the chance of --cascade, a whole number; 1 unless stated")
    private @Nullable Long seed;

    /** Whether it was asked for. */
    boolean asked() {
        return cascade;
    }

    /** Refuses what cannot be done, before anything is. */
    void check() {
        if (!cascade && (trials != null || seed != null)) {
            throw new InputException(
                    Sentence.of("--trials and --seed belong to --cascade; add it, or leave them out."));
        }
        if (trials != null && (trials < 1 || trials > CascadeOdds.MOST_TRIALS)) {
            throw new InputException(Sentence.of(
                    "--trials is {0}; it must be at least 1 and at most {1}.", trials, CascadeOdds.MOST_TRIALS));
        }
    }

    /**
     * What it comes to, if it was asked for.
     *
     * @param tell is told how far it is
     */
    Optional<CascadeOdds> odds(RigInput input, Consumer<String> tell) {
        if (!cascade) {
            return Optional.empty();
        }
        int planned = trials == null ? CascadeOdds.TRIALS : trials;
        int part = planned / TOLD;
        return Optional.of(
                RunCascade.all(input, planned, seed == null ? CascadeOdds.SEED : seed, new Progress(part, tell)));
    }

    /** Tells of each tenth of a long run. */
    private static final class Progress implements CascadeWatch {

        private final int part;
        private final Consumer<String> tell;
        private int told;

        Progress(int part, Consumer<String> tell) {
            this.part = part;
            this.tell = tell;
        }

        @Override
        public boolean goOn(int done, int planned) {
            if (planned > CascadeOdds.TRIALS && done >= told + part) {
                told = done;
                tell.accept(done + " of " + planned + " trials done.");
            }
            return true;
        }
    }
}
