package thalweg.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How long a descent takes, from many runs whose paces are drawn around those that are stated.
 *
 * @param people who go
 * @param sets of ropes that leapfrog
 * @param steps each step of the line with its times
 * @param runs that were made
 */
public record Timetable(int people, int sets, List<Step> steps, int runs) {

    /** Runs that are made; more change the figures by less than anybody's watch. */
    public static final int RUNS = 1_000;

    private static final long SEED = 1;
    private static final int EARLY = 10;
    private static final int MIDDLE = 50;
    private static final int LATE = 90;
    private static final int HUNDRED = 100;

    /** Of the spread of a day, so much is the day and the rest is each place by itself; our choice. */
    private static final double OF_THE_DAY = 0.8;

    public Timetable {
        steps = List.copyOf(steps);
    }

    /**
     * When the last person has passed a step, from when the group stands at the beginning of the line.
     *
     * @param step of the line
     * @param early one run in ten is faster [min]
     * @param middle half of the runs are faster [min]
     * @param late one run in ten is slower [min]
     * @param lateRest from then to the end of the line; one run in ten takes longer [min]
     */
    public record Step(LineStep step, double early, double middle, double late, double lateRest) {}

    /** For a group on a line; the same for the same arguments. */
    public static Timetable of(List<LineStep> line, Party party, int sets, Paces paces, Rests rests) {
        double[][] times = new double[line.size()][RUNS];
        double[][] left = new double[line.size()][RUNS];
        SplittableRandom random = new SplittableRandom(SEED);
        for (int run = 0; run < RUNS; run++) {
            double day = StrictMath.exp(OF_THE_DAY * paces.spread() * normal(random));
            double own = StrictMath.sqrt(1 - OF_THE_DAY * OF_THE_DAY) * paces.spread();
            double[] done = new DescentRun(drawn(line, own, random), party, sets, paces.slower(day), rests).run();
            for (int i = 0; i < done.length; i++) {
                times[i][run] = done[i];
                left[i][run] = done[done.length - 1] - done[i];
            }
        }
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            Arrays.sort(times[i]);
            Arrays.sort(left[i]);
            steps.add(new Step(
                    line.get(i), at(times[i], EARLY), at(times[i], MIDDLE), at(times[i], LATE), at(left[i], LATE)));
        }
        return new Timetable(party.size(), sets, steps, RUNS);
    }

    /** The line with its lengths drawn: what takes longer there takes longer for everybody. */
    private static List<LineStep> drawn(List<LineStep> line, double spread, SplittableRandom random) {
        List<LineStep> drawn = new ArrayList<>();
        for (LineStep step : line) {
            double factor = StrictMath.exp(spread * normal(random));
            drawn.add(new LineStep(
                    step.place(),
                    step.name(),
                    step.roped(),
                    step.metres() * factor,
                    step.walk() * factor,
                    step.passes(),
                    step.escape(),
                    step.wayOut()));
        }
        return drawn;
    }

    private static double at(double[] sorted, int percent) {
        return sorted[Math.min(sorted.length - 1, sorted.length * percent / HUNDRED)];
    }

    private static double normal(SplittableRandom random) {
        double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
        return radius * StrictMath.cos(2 * Math.PI * random.nextDouble());
    }

    /** When the last is at the end of the line: early, middle and late [min]; 0 where it has no steps. */
    public double[] end() {
        if (steps.isEmpty()) {
            return new double[3];
        }
        Step last = steps.get(steps.size() - 1);
        return new double[] {last.early(), last.middle(), last.late()};
    }
}
