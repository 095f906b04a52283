package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/** Takes from a strength as stated what each thing takes, one after the other. */
final class StrengthChain {

    /** What the factor of a knot is called. */
    static final String KNOT = "knot";

    private final Optional<Force> base;
    private final List<StrengthFactor> factors = new ArrayList<>();
    private double most = 1;
    private final List<Sentence> missing = new ArrayList<>();
    private final List<Sentence> notes = new ArrayList<>();

    /**
     * A chain that nothing has been taken from.
     *
     * @param base as stated
     * @param otherwise what is said where that is unknown, as a part of a sentence
     */
    StrengthChain(Optional<Force> base, Sentence otherwise) {
        this.base = base;
        if (base.isEmpty()) {
            missing.add(otherwise);
        }
    }

    /** Takes what the factor takes. */
    StrengthChain times(StrengthFactor factor) {
        factors.add(factor);
        return this;
    }

    /** Says that a thing of which it is unknown what it leaves leaves no more than this share [-]. */
    StrengthChain atMost(double share) {
        most *= share;
        return this;
    }

    /** Makes what is left unknown; where nothing is known to begin with, that reason is enough. */
    StrengthChain unknown(Sentence why) {
        if (base.isPresent()) {
            missing.add(why);
        }
        return this;
    }

    /** Says what is not allowed for. */
    StrengthChain note(Sentence what) {
        notes.add(what);
        return this;
    }

    PartStrength done() {
        return new PartStrength(base, factors, most, missing, notes);
    }
}
