package thalweg.rig;

import java.util.Optional;
import java.util.stream.IntStream;
import thalweg.fault.Sentence;

/** What the strands of a point are called, and to which point a strand belongs that is called so. */
final class StrandNames {

    private static final String LEG = " leg";
    private static final String SLING = " sling";

    private static final String CONNECTOR = " connector";

    private StrandNames() {}

    static String connector(RigPoint point) {
        return point.name() + CONNECTOR;
    }

    /** The name of a strand or connector as it is said: "A leg", "slider". */
    static Sentence said(String label) {
        if (label.endsWith(LEG)) {
            return Sentence.of("{0} leg", label.substring(0, label.length() - LEG.length()));
        }
        if (label.endsWith(SLING)) {
            return Sentence.of("{0} sling", label.substring(0, label.length() - SLING.length()));
        }
        return label.endsWith(CONNECTOR) && !label.equals(RigInput.MASTER_CONNECTOR)
                ? Sentence.of("{0} connector", label.substring(0, label.length() - CONNECTOR.length()))
                : Sentence.word(label);
    }

    static String leg(RigPoint point) {
        return point.name() + LEG;
    }

    /** Both sides of a sling are called alike: it is one part, and a cut of either side opens it. */
    static String sling(RigPoint point) {
        return point.name() + SLING;
    }

    /** The number of the point whose sling is called so. */
    static Optional<Integer> slungPoint(RigInput input, String label) {
        return IntStream.range(0, input.points().size())
                .filter(i -> input.points().get(i).sling().isPresent())
                .filter(i -> sling(input.points().get(i)).equals(label))
                .boxed()
                .findFirst();
    }

    /** The number of the point whose leg is called so; a sling that reaches to the master is a leg. */
    static Optional<Integer> leggedPoint(RigInput input, String label) {
        return IntStream.range(0, input.points().size())
                .filter(i -> leg(input.points().get(i)).equals(label)
                        || (Slung.isLeg(input.points().get(i))
                                && sling(input.points().get(i)).equals(label)))
                .filter(i -> input.rig().kind().hasLegs())
                .boxed()
                .findFirst();
    }
}
