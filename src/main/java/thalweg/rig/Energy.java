package thalweg.rig;

import java.util.Arrays;
import java.util.List;

/**
 * What the strands of a network store, less what the load gives, as a function of the places of its free nodes [kJ].
 *
 * <p>{@code sum of count/2 EA/L0 max(0, l - L0)^2 - load . x_master}. The function is convex: a length is convex in
 * the places, and the square of its positive excess is convex and never falling in the length. A stretch of length s
 * counts as {@code sqrt(s^2 + rounding^2)}, which gives a node that lies on another one a slope; where s is 0 the slope
 * is one of the subgradients of the length.
 */
final class Energy {

    private final int fixedCount;
    private final int size;
    private final double[] fixed;
    private final int[][] froms;
    private final int[][] tos;
    private final double[] unloaded;
    private final double[] springs;
    private final double[] trueSprings;
    private final double loadX;
    private final double loadY;
    private final double loadZ;
    private final double[] slope;

    private double roundingSquared;

    Energy(Network network, Vector3 load) {
        this(network.fixed(), network.free().size(), network.strands(), load);
    }

    /**
     * @param places of the fixed nodes, which are numbered first [m]
     * @param free how many nodes there are besides; 0 or more, the last of them bears the load
     * @param strands through nodes of both sorts
     * @param load on the last free node, no pull where there is none [kN]
     */
    Energy(List<Vector3> places, int free, List<Strand> strands, Vector3 load) {
        fixedCount = places.size();
        size = 3 * free;
        fixed = flat(places);
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
        fixed[3 * node] = x;
        fixed[3 * node + 1] = y;
        fixed[3 * node + 2] = z;
    }

    /** How many coordinates the free nodes have. */
    int size() {
        return size;
    }

    /** The length of a strand's path [m]. */
    double length(int strand, double[] places) {
        double length = 0;
        for (int j = 0; j < froms[strand].length; j++) {
            length += stretch(froms[strand][j], tos[strand][j], places);
        }
        return length;
    }

    /** By how much a strand is longer than unloaded, below 0 where it is slack [m]. */
    double excess(int strand, double[] places) {
        return length(strand, places) - unloaded[strand];
    }

    /** What all strands store [kJ]. */
    double stored(double[] places) {
        double sum = 0;
        for (int i = 0; i < froms.length; i++) {
            double excess = Math.max(0, excess(i, places));
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
        Arrays.fill(pulls, 0);
        for (int i = 0; i < froms.length; i++) {
            double tension = springs[i] * excess(i, places);
            for (int j = 0; j < froms[i].length && tension > 0; j++) {
                int from = froms[i][j];
                int to = tos[i][j];
                double part = tension / stretch(from, to, places);
                for (int axis = 0; axis < 3; axis++) {
                    double along = part * (at(to, axis, places) - at(from, axis, places));
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
     */
    double slopeAt(double[] places, double[] gradient) {
        double energy = beginWithLoad(places, gradient);
        for (int i = 0; i < froms.length; i++) {
            double excess = excess(i, places);
            if (excess > 0) {
                energy += 0.5 * springs[i] * excess * excess;
                lengthSlope(i, places);
                for (int a = 0; a < size; a++) {
                    gradient[a] += springs[i] * excess * slope[a];
                }
            }
        }
        return energy;
    }

    /**
     * Slope and curvature. A strand that is just taut counts as taut.
     *
     * @param gradient filled [kN]
     * @param curvature filled, its lower half [kN/m]
     */
    void curvatureAt(double[] places, double[] gradient, double[][] curvature) {
        beginWithLoad(places, gradient);
        for (double[] row : curvature) {
            Arrays.fill(row, 0);
        }
        for (int i = 0; i < froms.length; i++) {
            double excess = excess(i, places);
            if (excess >= 0) {
                lengthSlope(i, places);
                for (int a = 0; a < size; a++) {
                    gradient[a] += springs[i] * excess * slope[a];
                    for (int b = 0; b <= a; b++) {
                        curvature[a][b] += springs[i] * slope[a] * slope[b];
                    }
                }
                for (int j = 0; j < froms[i].length; j++) {
                    addBend(froms[i][j], tos[i][j], springs[i] * excess, places, curvature);
                }
            }
        }
    }

    private double beginWithLoad(double[] places, double[] gradient) {
        Arrays.fill(gradient, 0);
        gradient[size - 3] = -loadX;
        gradient[size - 2] = -loadY;
        gradient[size - 1] = -loadZ;
        return -loadX * places[size - 3] - loadY * places[size - 2] - loadZ * places[size - 1];
    }

    private void lengthSlope(int strand, double[] places) {
        Arrays.fill(slope, 0);
        for (int j = 0; j < froms[strand].length; j++) {
            int from = froms[strand][j];
            int to = tos[strand][j];
            double length = stretch(from, to, places);
            for (int axis = 0; axis < 3; axis++) {
                double along = (at(to, axis, places) - at(from, axis, places)) / length;
                if (to >= fixedCount) {
                    slope[3 * (to - fixedCount) + axis] += along;
                }
                if (from >= fixedCount) {
                    slope[3 * (from - fixedCount) + axis] -= along;
                }
            }
        }
    }

    /** Adds tension times the curvature of a stretch's length: (1 - u u') / length. */
    private void addBend(int from, int to, double tension, double[] places, double[][] curvature) {
        double length = stretch(from, to, places);
        for (int a = 0; a < 3; a++) {
            double alongA = (at(to, a, places) - at(from, a, places)) / length;
            for (int b = 0; b < 3; b++) {
                double alongB = (at(to, b, places) - at(from, b, places)) / length;
                double bend = tension / length * ((a == b ? 1 : 0) - alongA * alongB);
                addIfFree(to, a, to, b, bend, curvature);
                addIfFree(from, a, from, b, bend, curvature);
                addIfFree(to, a, from, b, -bend, curvature);
                addIfFree(from, a, to, b, -bend, curvature);
            }
        }
    }

    private void addIfFree(int one, int a, int two, int b, double amount, double[][] curvature) {
        if (one >= fixedCount && two >= fixedCount) {
            int row = 3 * (one - fixedCount) + a;
            int column = 3 * (two - fixedCount) + b;
            if (column <= row) {
                curvature[row][column] += amount;
            }
        }
    }

    private double stretch(int from, int to, double[] places) {
        double x = at(to, 0, places) - at(from, 0, places);
        double y = at(to, 1, places) - at(from, 1, places);
        double z = at(to, 2, places) - at(from, 2, places);
        return Math.sqrt(x * x + y * y + z * z + roundingSquared);
    }

    private double at(int node, int axis, double[] places) {
        return node < fixedCount ? fixed[3 * node + axis] : places[3 * (node - fixedCount) + axis];
    }
}
