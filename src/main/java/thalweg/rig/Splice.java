package thalweg.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A network in which strands that a knot ties end to end are one strand.
 *
 * <p>A massless knot at which nothing else pulls lies in one line with both and passes their force on whole. So such a
 * chain gives way by the sum of what its strands do, and acts as one strand as long as all of them together. With the
 * knot gone, no coordinate is left that a slack strand leaves open, and no two nodes that may run into one another.
 *
 * @param whole the network with its knots
 * @param network the same without the knots that were spliced
 * @param chains what each strand of the spliced network consists of
 * @param kept the nodes of the whole network that are in the spliced one, in its order
 */
record Splice(Network whole, Network network, List<Chain> chains, List<Integer> kept) {

    Splice {
        chains = List.copyOf(chains);
        kept = List.copyOf(kept);
    }

    /** Splices every knot at which nothing but the ends of two strands meet. */
    static Splice of(Network whole) {
        List<Chain> chains = new ArrayList<>();
        IntStream.range(0, whole.strands().size())
                .forEach(i -> chains.add(Chain.of(whole.strands().get(i), i)));
        List<Integer> kept = new ArrayList<>();
        for (int node = 0; node <= whole.master(); node++) {
            boolean knot = node >= whole.fixed().size() && node < whole.master();
            if (!knot || !splice(node, chains)) {
                kept.add(node);
            }
        }
        List<Strand> strands = chains.stream()
                .map(chain -> chain.asOne(chain.path().stream()
                        .filter(kept::contains)
                        .map(kept::indexOf)
                        .toList()))
                .toList();
        List<Vector3> free = kept.stream()
                .skip(whole.fixed().size())
                .map(node -> whole.free().get(node - whole.fixed().size()))
                .toList();
        return new Splice(whole, new Network(whole.fixed(), whole.owners(), free, strands), chains, kept);
    }

    private static boolean splice(int knot, List<Chain> chains) {
        List<Chain> there =
                chains.stream().filter(chain -> chain.path().contains(knot)).toList();
        if (there.size() != 2 || !there.stream().allMatch(chain -> chain.endsAt(knot))) {
            return false;
        }
        chains.set(chains.indexOf(there.get(0)), there.get(0).tiedTo(there.get(1), knot));
        chains.remove(there.get(1));
        return true;
    }

    /**
     * What each strand of the whole network bears where the spliced strands bear so much.
     *
     * @param tensions in one of the parallel strands of each spliced strand [kN]; more behind them is left out
     * @return in one of the parallel strands of each strand of the whole network [kN]
     */
    double[] tensions(double[] tensions) {
        double[] all = new double[whole.strands().size()];
        for (int i = 0; i < chains.size(); i++) {
            double force = tensions[i] * network.strands().get(i).count();
            for (Chain.Part part : chains.get(i).parts()) {
                all[part.number()] = force / part.strand().count();
            }
        }
        return all;
    }

    /**
     * The whole network at rest, its knots where they lie on their strands.
     *
     * @param rest of the spliced network
     */
    Equilibrium restored(Equilibrium rest) {
        int fixed = whole.fixed().size();
        Vector3[] free = new Vector3[whole.free().size()];
        for (int node = fixed; node < kept.size(); node++) {
            free[kept.get(node) - fixed] = rest.place(node);
        }
        Double[] lengths = new Double[whole.strands().size()];
        for (int i = 0; i < chains.size(); i++) {
            List<Chain.Part> parts = chains.get(i).parts();
            Strand strand = network.strands().get(i);
            List<Vector3> line = strand.path().stream().map(rest::place).toList();
            double force = rest.tension(i) * strand.count();
            double taut =
                    parts.stream().mapToDouble(part -> part.lengthUnder(force)).sum();
            double slackness =
                    parts.size() == 1 ? 1 : Math.min(1, rest.lengths().get(i) / taut);
            double way = 0;
            for (int j = 0; j < parts.size(); j++) {
                if (j > 0) {
                    free[parts.get(j).path().get(0) - fixed] = along(line, way);
                }
                double length = parts.size() == 1
                        ? rest.lengths().get(i)
                        : slackness * parts.get(j).lengthUnder(force);
                lengths[parts.get(j).number()] = length;
                way += length;
            }
        }
        return new Equilibrium(
                whole.startingAt(List.of(free)), List.of(lengths), rest.rounding(), rest.residual(), rest.steps());
    }

    /** The place on a line through others at which one stands who has gone so far from its beginning. */
    private static Vector3 along(List<Vector3> places, double way) {
        double left = way;
        for (int i = 0; i + 2 < places.size(); i++) {
            double stretch = places.get(i + 1).distance(places.get(i));
            if (left <= stretch) {
                return between(places.get(i), places.get(i + 1), left);
            }
            left -= stretch;
        }
        return between(places.get(places.size() - 2), places.get(places.size() - 1), left);
    }

    private static Vector3 between(Vector3 from, Vector3 to, double way) {
        Vector3 line = to.minus(from);
        double length = line.length();
        return length == 0 ? from : from.plus(line.times(Math.min(1, way / length)));
    }
}
