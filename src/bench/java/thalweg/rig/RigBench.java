package thalweg.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How long the calculator takes for a rig of two points. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RigBench {

    /** The kind of rig that is computed. */
    @Param({"FOCUSED", "SLIDING", "LIMITED", "LOOP"})
    public RigKind kind = RigKind.FOCUSED;

    private RigInput input = twoPoints(RigKind.FOCUSED);

    /** Lays the rig of the kind that is asked for. */
    @Setup
    public void lay() {
        input = twoPoints(kind);
    }

    /** Two points at unequal heights under a load that does not pull straight down: no symmetry makes it easy. */
    static RigInput twoPoints(RigKind kind) {
        RigDraft draft = Rigs.focused(
                        List.of(point("A", -0.3, 0, 0, 20), point("B", 0.3, 0.1, 0.05, 12)),
                        new Vector3(0, -0.6, 0),
                        0.9,
                        8,
                        15)
                .withRig(laid(kind));
        return Rigs.input(draft);
    }

    private static SetupDraft laid(RigKind kind) {
        SetupDraft plain = SetupDraft.of(kind, 0, -0.6, 0, Rigs.STIFFNESS_KN);
        return kind == RigKind.LIMITED ? plain.withLimits(LimitDraft.at(0.1, 0.1), RigDefaults.FRICTION) : plain;
    }

    private static PointDraft point(String name, double x, double y, double z, double kilonewtons) {
        return new PointDraft(
                name, List.of(x, y, z), OptionalDouble.of(kilonewtons), OptionalDouble.empty(), Optional.empty());
    }

    /** At rest at the aim, from where the rig was tied. */
    @Benchmark
    public RigState steady() {
        return Rigs.steady(input);
    }

    /** The same by the optimisers of a general library, on an energy that is written apart. */
    @Benchmark
    public double[] steadyByAnotherOptimiser() {
        return AgreementTest.theirRest(input);
    }

    /** The loss of each point, with free travel, rest and peaks. */
    @Benchmark
    public List<PointLoss> losses() {
        return FindLosses.of(input, Rigs.steady(input));
    }

    /** Everything: aim, sector, friction, losses, cuts and checks. */
    @Benchmark
    public RigAnswer analysis() {
        return Analyze.of(input);
    }

    /** A hundred thousand trials in which points fail by chance, with the states and peaks that they look up. */
    @Benchmark
    public CascadeOdds cascade() {
        return Cascade.of(input, 100_000, 1, (done, planned) -> true);
    }
}
