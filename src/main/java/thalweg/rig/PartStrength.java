package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import thalweg.fault.Sentence;
import thalweg.units.Force;

/**
 * What a part is taken to hold: its strength as stated, times what each of a chain of things leaves of it. Every ratio of a
 * strength to a force is made with this one, so that none forgets a thing that another allows for.
 *
 * @param base as stated, in all of its parallel strands, above 0; for a bolt of two strengths the radial one; empty where
 *     unknown
 * @param factors in the order in which they are multiplied; may be empty
 * @param most what all that is unknown leaves together at most [-], above 0 and at most 1; 1 where that is not known
 * @param missing why what is left is not known, each as a part of a sentence; empty where it is known
 * @param notes what is not allowed for, each as a part of a sentence
 */
public record PartStrength(
        Optional<Force> base, List<StrengthFactor> factors, double most, List<Sentence> missing, List<Sentence> notes) {

    /** How a sentence calls a strength from which nothing but its knots was taken. */
    static final String STATED = "stated";

    public PartStrength {
        factors = List.copyOf(factors);
        missing = List.copyOf(missing);
        notes = List.copyOf(notes);
        if ((base.isEmpty() && missing.isEmpty()) || !(most > 0) || most > 1) {
            throw new IllegalArgumentException("what is not known has a reason, and leaves something");
        }
    }

    /** What is left, with each factor at its nominal figure; empty where it is unknown. */
    public Optional<Force> left() {
        return known(StrengthFactor::nominal);
    }

    /** The least that is taken to be left; empty where it is unknown. */
    public Optional<Force> low() {
        return known(StrengthFactor::low);
    }

    /** The most that is taken to be left; empty where it is unknown. */
    public Optional<Force> high() {
        return known(StrengthFactor::high);
    }

    /**
     * What it does not hold more than, as far as anything is known: the strength as stated with the factors that are
     * known. It may show that a part is too weak, and never that it is strong enough.
     */
    public Optional<Force> atMost() {
        return times(StrengthFactor::nominal).map(force -> Force.kilonewtons(force.inKilonewtons() * most));
    }

    /** Why it is unknown, as a part of a sentence; empty text where it is known. */
    public String why() {
        return saying().toString();
    }

    /** The same as it is said. */
    public Sentence saying() {
        return Sentence.joined("; ", missing);
    }

    /** Whether low and high are apart. */
    public boolean isRange() {
        return missing.isEmpty() && factors.stream().anyMatch(StrengthFactor::isRange);
    }

    /** "stated" where only its knots weaken what was stated, else "taken": the verb for a sentence about it. */
    String believed() {
        boolean asStated = factors.stream()
                .filter(StrengthFactor::takesOff)
                .allMatch(factor -> factor.name().equals(StrengthChain.KNOT));
        return asStated ? STATED : "taken";
    }

    private Optional<Force> known(ToDoubleFunction<StrengthFactor> share) {
        return missing.isEmpty() ? times(share) : Optional.empty();
    }

    private Optional<Force> times(ToDoubleFunction<StrengthFactor> share) {
        double product = factors.stream().mapToDouble(share).reduce(1, (one, other) -> one * other);
        return base.map(force -> Force.kilonewtons(force.inKilonewtons() * product));
    }
}
