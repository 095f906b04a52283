package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fixed nodes of a rig: one for each point, and a second one for each point that a sling leaves at two sides.
 *
 * @param input the rig
 * @param fixed places of the nodes [m]
 * @param owners the number of the point to which each belongs
 * @param slung where the sling of each point lies, in the order of the input; empty where it has none
 */
record SlingNodes(RigInput input, List<Vector3> fixed, List<Integer> owners, List<Optional<Slung>> slung) {

    SlingNodes {
        fixed = List.copyOf(fixed);
        owners = List.copyOf(owners);
        slung = List.copyOf(slung);
    }

    static SlingNodes of(RigInput input) {
        Vector3 focus = input.rig().focus();
        List<Optional<Slung>> slung = input.points().stream()
                .map(point -> point.sling().map(sling -> Slung.of(point, focus)))
                .toList();
        List<Vector3> fixed = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        for (int i = 0; i < slung.size(); i++) {
            fixed.add(slung.get(i)
                    .map(lies -> lies.sides().get(0))
                    .orElse(input.points().get(i).at()));
            owners.add(i);
        }
        for (int i = 0; i < slung.size(); i++) {
            if (slung.get(i).map(Slung::sides).filter(sides -> sides.size() > 1).isPresent()) {
                fixed.add(slung.get(i).orElseThrow().sides().get(1));
                owners.add(i);
            }
        }
        return new SlingNodes(input, fixed, owners, slung);
    }

    /**
     * The strands of the sling of a point that has one, from each of its sides to its end.
     *
     * @param end the node of the end
     * @param slack extra length [m]
     */
    List<Strand> strands(int point, int end, double slack) {
        RigPoint of = input.points().get(point);
        RigSling sling = of.sling().orElseThrow();
        Slung lies = slung.get(point).orElseThrow();
        List<Strand> strands = new ArrayList<>();
        for (int node = 0; node < fixed.size(); node++) {
            if (owners.get(node) == point) {
                strands.add(Strand.open(
                        StrandNames.sling(of),
                        List.of(node, end),
                        fixed.get(node).distance(lies.end()) + slack,
                        sling.stiffness().orElse(input.rig().stiffness()).inKilonewtons(),
                        sling.tie().strandsASide()));
            }
        }
        return strands;
    }
}
