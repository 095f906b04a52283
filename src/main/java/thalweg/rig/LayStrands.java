package thalweg.rig;

import java.util.ArrayList;
import java.util.List;

/** Lays the strands of a rig: every kind of rig is one way of doing so. */
final class LayStrands {

    private LayStrands() {}

    /** The network of a rig, with its master at the focus. */
    static Network of(RigInput input) {
        return switch (input.rig().kind()) {
            case SINGLE, FOCUSED -> legs(input);
            case SLIDING, LIMITED, LOOP -> throw new AssertionError("a draft of that kind is refused");
        };
    }

    private static Network legs(RigInput input) {
        List<Vector3> points = input.points().stream().map(RigPoint::at).toList();
        RigSetup rig = input.rig();
        int master = points.size();
        List<Strand> legs = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            double unloaded =
                    rig.focus().distance(points.get(i)) + rig.slack().get(i).metres();
            legs.add(Strand.open(
                    input.points().get(i).name() + " leg",
                    List.of(i, master),
                    unloaded,
                    rig.stiffness().inKilonewtons(),
                    rig.strands()));
        }
        return new Network(points, List.of(rig.focus()), legs);
    }
}
