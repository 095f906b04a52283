package thalweg.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which ropes to carry.
 *
 * @param margin by which they are counted shorter
 * @param carried indices among the ropes at hand, ascending; empty where nothing serves or nothing is needed
 * @param serves whether every drop of known length is served without passing a knot
 * @param spare whether every drop is still served when any one of the carried ropes is lost
 * @param kilograms of what is carried; empty where the weight of a rope at hand is unknown, and lengths were compared instead
 * @param drops each drop with how it is descended
 * @param deciding numbers among the drops without which less would do; all equally long ones together decide
 */
public record RopeChoice(
        RopeMargin margin,
        List<Integer> carried,
        boolean serves,
        boolean spare,
        OptionalDouble kilograms,
        List<Drop> drops,
        List<Integer> deciding) {

    public RopeChoice {
        carried = List.copyOf(carried);
        drops = List.copyOf(drops);
        deciding = List.copyOf(deciding);
    }

    /**
     * How one drop is descended with what is carried.
     *
     * @param need the drop
     * @param technique empty where its length is unknown, so that nobody can say
     * @param afterLoss how, if the rope whose loss is worst here is lost; empty where the length is unknown
     * @param lowered whether all but the last can be lowered from above on one of the ropes; empty where the length is unknown
     */
    public record Drop(
            RopeNeed need, Optional<Technique> technique, Optional<Technique> afterLoss, Optional<Boolean> lowered) {}
}
