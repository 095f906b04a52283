package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * Whether everything that is left after a loss stays within its strength at the model peak.
 *
 * @param verdict empty where a strength or the peak is unknown, and nothing is over its strength as far as is known
 * @param ratio the least strength over its peak, of the parts of which both are known [-]; empty where there is none
 * @param saying a sentence that names the part concerned
 */
public record WithinStrength(Optional<Boolean> verdict, OptionalDouble ratio, Sentence saying) {

    public WithinStrength {
        if (saying.toString().isBlank()) {
            throw new IllegalArgumentException("a verdict says why");
        }
    }

    /** Why, in English. */
    public String why() {
        return saying.toString();
    }

    /** The ratio in digits, never rounded up: "0.99", "12.3"; empty text where there is none. */
    public String times() {
        return ratio.isPresent() ? Figures.times(ratio.getAsDouble()) : "";
    }
}
