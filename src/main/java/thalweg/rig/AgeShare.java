package thalweg.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import thalweg.fault.Sentence;

/**
 * What is known of the strength that textile of some age has left.
 *
 * @param factor what it leaves; empty where no published figure says
 * @param atMost where it is unknown what is left: no more than this share [-], as far as that is known
 * @param unknown whether what is left is unknown; else, without a factor, age is not allowed for, and the words say so
 * @param saying why, and where the figure is from, as a part of a sentence
 */
public record AgeShare(Optional<StrengthFactor> factor, OptionalDouble atMost, boolean unknown, Sentence saying) {

    public AgeShare {
        if (saying.toString().isBlank() || (factor.isPresent() && unknown) || (atMost.isPresent() && !unknown)) {
            throw new IllegalArgumentException("a share is known, unknown or not allowed for, and says why");
        }
    }

    static AgeShare known(StrengthFactor factor) {
        return new AgeShare(Optional.of(factor), OptionalDouble.empty(), false, factor.saying());
    }

    static AgeShare unknown(OptionalDouble atMost, Sentence why) {
        return new AgeShare(Optional.empty(), atMost, true, why);
    }

    static AgeShare notAllowedFor(Sentence why) {
        return new AgeShare(Optional.empty(), OptionalDouble.empty(), false, why);
    }
}
