package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A redirect as it was typed or read, right or wrong; empty is not stated.
 *
 * @param name as stated; empty text where not
 * @param at two or three numbers [m]; empty where not stated
 * @param strengthKilonewtons what it is taken to hold [kN]
 */
public record RedirectDraft(String name, List<Double> at, OptionalDouble strengthKilonewtons) {

    public RedirectDraft {
        at = List.copyOf(at);
    }

    static RedirectDraft of(RigRedirect redirect) {
        return new RedirectDraft(
                redirect.name(),
                List.of(redirect.at().x(), redirect.at().y(), redirect.at().z()),
                Stated.kilonewtons(redirect.strength()));
    }

    /** A redirect of which only the place is stated. */
    public static Optional<RedirectDraft> at(double x, double y, double z) {
        return Optional.of(new RedirectDraft("", List.of(x, y, z), OptionalDouble.empty()));
    }
}
