package thalweg.rig;

import java.util.Arrays;
import java.util.List;

/**
 * What the strands of a network store, less what the load gives, as a function of the places of its free nodes [kJ].
 *
 * <p>{@code sum of count/2 EA/L0 max(0, l - L0)^2 - load . x_master}; for a load that is directed to a place, its size
 * times the way there in the place of the last part. The function is convex: a length is convex in
 * the places, and the square of its positive excess is convex and never falling in the length. A stretch of length s
 * counts as {@code sqrt(s^2 + rounding^2)}, which gives a node that lies on another one a slope; where s is 0 the slope
 * is one of the subgradients of the length.
 */
final class Energy {

    private final int fixedCount;
    private final int size;

    /** Places of all nodes [m], the free ones where they were looked at last. */
    private final double[] nodes;

    private final int[][] froms;
    private final int[][] tos;
    private final double[] unloaded;
    private final double[] springs;
    private final double[] trueSprings;
    /** Where the load is always directed to [m]; none where it keeps its direction. */
    private final double[] toward;

    private final double loadX;
    private final double loadY;
    private final double loadZ;
    private final double[] slope;

    /** Of the strand that was measured last, by stretch: three coordinates from end to end [m], their directions. */
    private final double[] ways;

    private final double[] directions;

    /** The same stretches' lengths [m]. */
    private final double[] lengths;

    private double roundingSquared;

    Energy(Network network, Vector3 load) {
        this(network, Pull.of(load));
    }

    Energy(Network network, Pull pull) {
        this(network.fixed(), network.free().size(), network.strands(), pull);
    }

    /**
     * @param places of the fixed nodes, which are numbered first [m]
     * @param free how many nodes there are besides; 0 or more, the last of them bears the load
     * @param strands through nodes of both sorts
     * @param load on the last free node, no pull where there is none [kN]
     */
    Energy(List<Vector3> places, int free, List<Strand> strands, Vector3 load) {
        this(places, free, strands, Pull.of(load));
    }

    private Energy(List<Vector3> places, int free, List<Strand> strands, Pull pull) {
        Vector3 load = pull.force();
        toward = pull.toward().map(place -> flat(List.of(place))).orElse(new double[0]);
        fixedCount = places.size();
        size = 3 * free;
        nodes = Arrays.copyOf(flat(places), 3 * fixedCount + size);
        froms = new int[strands.size()][];
        tos = new int[strands.size()][];
        unloaded = new double[strands.size()];
        springs = new double[strands.size()];
        for (int i = 0; i < strands.size(); i++) {
            Strand strand = strands.get(i);
            froms[i] = new int[strand.stretches()];
            tos[i] = new int[strand.stretches()];
            for (int j = 0; j < strand.stretches(); j++) {
                froms[i][j] = strand.path().get(j);
                tos[i][j] = strand.after(j);
            }
            unloaded[i] = strand.unloadedMetres();
            springs[i] = strand.count() * strand.stiffnessKilonewtons() / strand.unloadedMetres();
        }
        trueSprings = springs.clone();
        loadX = load.x();
        loadY = load.y();
        loadZ = load.z();
        slope = new double[size];
        int most = strands.stream().mapToInt(Strand::stretches).max().orElse(0);
        ways = new double[3 * most];
        directions = new double[3 * most];
        lengths = new double[most];
    }

    static double[] flat(List<Vector3> places) {
        double[] flat = new double[3 * places.size()];
        for (int i = 0; i < places.size(); i++) {
            flat[3 * i] = places.get(i).x();
            flat[3 * i + 1] = places.get(i).y();
            flat[3 * i + 2] = places.get(i).z();
        }
        return flat;
    }

    /**
     * @param metres by how much a stretch of length 0 is rounded off, above 0 [m]
     */
    void roundOff(double metres) {
        roundingSquared = metres * metres;
    }

    /**
     * Makes every strand softer than it is.
     *
     * @param part of its true stiffness, above 0; 1 makes it as stiff as it is
     */
    void soften(double part) {
        for (int i = 0; i < springs.length; i++) {
            springs[i] = part * trueSprings[i];
        }
    }

    /** Puts a fixed node elsewhere [m]. */
    void moveFixed(int node, double x, double y, double z) {
        nodes[3 * node] = x;
        nodes[3 * node + 1] = y;
        nodes[3 * node + 2] = z;
    }

    /** How many coordinates the free nodes have. */
    int size() {
        return size;
    }

    /** The length of a strand's path [m]. */
    double length(int strand, double[] places) {
        put(places);
        return measured(strand);
    }

    /** By how much a strand is longer than unloaded, below 0 where it is slack [m]. */
    double excess(int strand, double[] places) {
        return length(strand, places) - unloaded[strand];
    }

    private void put(double[] places) {
        System.arraycopy(places, 0, nodes, 3 * fixedCount, size);
    }

    private double excess(int strand) {
        return measured(strand) - unloaded[strand];
    }

    /** Measures the stretches of a strand; the length of its path [m]. */
    private double measured(int strand) {
        double sum = 0;
        for (int j = 0; j < froms[strand].length; j++) {
            int from = 3 * froms[strand][j];
            int to = 3 * tos[strand][j];
            double x = nodes[to] - nodes[from];
            double y = nodes[to + 1] - nodes[from + 1];
            double z = nodes[to + 2] - nodes[from + 2];
            double length = Math.sqrt(x * x + y * y + z * z + roundingSquared);
            ways[3 * j] = x;
            ways[3 * j + 1] = y;
            ways[3 * j + 2] = z;
            lengths[j] = length;
            sum += length;
        }
        return sum;
    }

    /** What all strands store [kJ]. */
    double stored(double[] places) {
        put(places);
        double sum = 0;
        for (int i = 0; i < froms.length; i++) {
            double excess = Math.max(0, excess(i));
            sum += 0.5 * springs[i] * excess * excess;
        }
        return sum;
    }

    /**
     * The sum of the tensions that reach each fixed node.
     *
     * @param pulls filled, three coordinates a node [kN]
     */
    void pullsOnFixed(double[] places, double[] pulls) {
        put(places);
        Arrays.fill(pulls, 0);
        for (int i = 0; i < froms.length; i++) {
            double tension = springs[i] * excess(i);
            for (int j = 0; j < froms[i].length && tension > 0; j++) {
                int from = froms[i][j];
                int to = tos[i][j];
                double part = tension / lengths[j];
                for (int axis = 0; axis < 3; axis++) {
                    double along = part * ways[3 * j + axis];
                    if (from < fixedCount) {
                        pulls[3 * from + axis] += along;
                    }
                    if (to < fixedCount) {
                        pulls[3 * to + axis] -= along;
                    }
                }
            }
        }
    }

    /**
     * Energy, and its slope.
     *
     * @param gradient filled [kN]
     * @return the energy [kJ]
     */
    double slopeAt(double[] places, double[] gradient) {
        double energy = beginWithLoad(places, gradient);
        for (int i = 0; i < froms.length; i++) {
            double excess = excess(i);
            if (excess > 0) {
                energy += 0.5 * springs[i] * excess * excess;
                lengthSlope(i);
                double tension = springs[i] * excess;
                for (int a = 0; a < size; a++) {
                    gradient[a] += tension * slope[a];
                }
            }
        }
        return energy;
    }

    /**
     * Energy, slope and curvature. A strand that is just taut counts as taut.
     *
     * @param gradient filled [kN]
     * @param curvature filled, its lower half [kN/m]
     * @return the energy [kJ]
     */
    double curvatureAt(double[] places, double[] gradient, double[][] curvature) {
        double energy = beginWithLoad(places, gradient);
        for (double[] row : curvature) {
            Arrays.fill(row, 0);
        }
        if (toward.length > 0) {
            bendTowards(places, gradient, curvature);
        }
        for (int i = 0; i < froms.length; i++) {
            double excess = excess(i);
            if (excess >= 0) {
                energy += 0.5 * springs[i] * excess * excess;
                lengthSlope(i);
                double tension = springs[i] * excess;
                for (int a = 0; a < size; a++) {
                    gradient[a] += tension * slope[a];
                    double along = springs[i] * slope[a];
                    for (int b = 0; b <= a; b++) {
                        curvature[a][b] += along * slope[b];
                    }
                }
                for (int j = 0; j < froms[i].length; j++) {
                    addBend(i, j, tension, curvature);
                }
            }
        }
        return energy;
    }

    private double beginWithLoad(double[] places, double[] gradient) {
        put(places);
        Arrays.fill(gradient, 0);
        if (toward.length > 0) {
            return beginTowards(places, gradient);
        }
        gradient[size - 3] = -loadX;
        gradient[size - 2] = -loadY;
        gradient[size - 1] = -loadZ;
        return -loadX * places[size - 3] - loadY * places[size - 2] - loadZ * places[size - 1];
    }

    /** The size of the load times the way to the place that it is directed to. */
    private double beginTowards(double[] places, double[] gradient) {
        double way = wayToward(places);
        for (int axis = 0; axis < 3; axis++) {
            gradient[size - 3 + axis] = force() * (places[size - 3 + axis] - toward[axis]) / way;
        }
        return force() * way;
    }

    /** The curvature of that: (1 - u u') times the size of the load over the way. */
    private void bendTowards(double[] places, double[] gradient, double[][] curvature) {
        double rate = force() / wayToward(places);
        int first = size - 3;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b <= a; b++) {
                double along = gradient[first + a] * gradient[first + b] / (force() * force());
                curvature[first + a][first + b] += rate * ((a == b ? 1 : 0) - along);
            }
        }
    }

    private double force() {
        return Math.sqrt(loadX * loadX + loadY * loadY + loadZ * loadZ);
    }

    private double wayToward(double[] places) {
        double square = roundingSquared;
        for (int axis = 0; axis < 3; axis++) {
            double part = places[size - 3 + axis] - toward[axis];
            square += part * part;
        }
        return Math.sqrt(square);
    }

    /** The slope of the length of the strand that was measured last. */
    private void lengthSlope(int strand) {
        Arrays.fill(slope, 0);
        for (int j = 0; j < froms[strand].length; j++) {
            int from = 3 * (froms[strand][j] - fixedCount);
            int to = 3 * (tos[strand][j] - fixedCount);
            for (int axis = 0; axis < 3; axis++) {
                double along = ways[3 * j + axis] / lengths[j];
                directions[3 * j + axis] = along;
                if (to >= 0) {
                    slope[to + axis] += along;
                }
                if (from >= 0) {
                    slope[from + axis] -= along;
                }
            }
        }
    }

    /** Adds tension times the curvature of a stretch's length: (1 - u u') / length. */
    private void addBend(int strand, int stretch, double tension, double[][] curvature) {
        int from = 3 * (froms[strand][stretch] - fixedCount);
        int to = 3 * (tos[strand][stretch] - fixedCount);
        if (from == to) {
            return;
        }
        double rate = tension / lengths[stretch];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                double bend = rate * ((a == b ? 1 : 0) - directions[3 * stretch + a] * directions[3 * stretch + b]);
                if (to >= 0 && b <= a) {
                    curvature[to + a][to + b] += bend;
                }
                if (from >= 0 && b <= a) {
                    curvature[from + a][from + b] += bend;
                }
                if (to >= 0 && from >= 0) {
                    curvature[Math.max(to, from) + a][Math.min(to, from) + b] -= bend;
                }
            }
        }
    }
}
