package thalweg.rig;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * Forces on the points over the directions of a load: solved at the 21 directions of a sector and half way between, at
 * more where a straight line between two of them is off, and only where somebody asks. In between, straight lines.
 *
 * <p>It holds a bounded number of directions, however often it is asked.
 */
final class DirectionTable {

    /** Steps between the directions of a sector. */
    static final int CELLS = RigSector.DIRECTIONS - 1;

    private static final double[][] NOT_SOLVED = new double[0][];
    private static final double[][] NOT_KNOWN = new double[1][];

    /** A step is halved at least once, so that it is known how far off a straight line is, and at most so often. */
    private final int mostHalvings;

    private final double tolerance;
    private final DoubleFunction<Optional<double[]>> solve;
    private final Map<Integer, Optional<double[]>> solved = new HashMap<>();

    /** For each step, the forces at equal parts of it, both ends among them. */
    private final double[][][] cells = new double[CELLS][][];

    private double error;

    /**
     * @param mostHalvings of a step between the directions of a sector, 1 or more
     * @param tolerance by which half way between two directions the line may be off [kN]
     * @param solve the forces on all points at a place of the sector, 0 to {@link #CELLS} [kN]; empty where unknown
     */
    DirectionTable(int mostHalvings, double tolerance, DoubleFunction<Optional<double[]>> solve) {
        this.mostHalvings = mostHalvings;
        this.tolerance = tolerance;
        this.solve = solve;
        Arrays.fill(cells, NOT_SOLVED);
    }

    /**
     * The forces at a place of the sector.
     *
     * @param place 0 to {@link #CELLS}
     * @param forces into which they are written [kN]
     * @return whether they are known
     */
    boolean at(double place, double[] forces) {
        int cell = Math.min(CELLS - 1, (int) place);
        if (cells[cell].length == NOT_SOLVED.length) {
            cells[cell] = fill(cell);
        }
        double[][] nodes = cells[cell];
        if (nodes.length == NOT_KNOWN.length) {
            return false;
        }
        double along = (place - cell) * (nodes.length - 1);
        int node = Math.min(nodes.length - 2, (int) along);
        double part = along - node;
        for (int i = 0; i < forces.length; i++) {
            forces[i] = nodes[node][i] + part * (nodes[node + 1][i] - nodes[node][i]);
        }
        return true;
    }

    /** The largest that a straight line was off where that was last looked at [kN]. */
    double error() {
        return error;
    }

    /** Halves the step until the lines are near enough. */
    private double[][] fill(int cell) {
        double off = Double.POSITIVE_INFINITY;
        double[][] nodes = NOT_KNOWN;
        for (int halvings = 1; halvings <= mostHalvings && off > tolerance; halvings++) {
            nodes = nodes(cell, halvings);
            if (nodes.length == NOT_KNOWN.length) {
                return NOT_KNOWN;
            }
            off = off(nodes);
        }
        error = Math.max(error, off);
        return nodes;
    }

    private double[][] nodes(int cell, int halvings) {
        int parts = 1 << halvings;
        int finest = 1 << mostHalvings;
        double[][] nodes = new double[parts + 1][];
        for (int i = 0; i <= parts; i++) {
            int key = cell * finest + i * (finest / parts);
            Optional<double[]> there = solved.computeIfAbsent(key, fine -> solve.apply((double) fine / finest));
            if (there.isEmpty()) {
                return NOT_KNOWN;
            }
            nodes[i] = there.get();
        }
        return nodes;
    }

    /** How far the directions in the middle lie from the lines between their neighbours. */
    private static double off(double[][] nodes) {
        double off = 0;
        for (int i = 1; i < nodes.length; i += 2) {
            for (int point = 0; point < nodes[i].length; point++) {
                double line = (nodes[i - 1][point] + nodes[i + 1][point]) / 2;
                off = Math.max(off, Math.abs(nodes[i][point] - line));
            }
        }
        return off;
    }
}
