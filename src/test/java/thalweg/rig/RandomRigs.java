package thalweg.rig;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Rigs by chance, the same ones for the same seed: up to six points, some with slack legs, in three dimensions. */
final class RandomRigs {

    private final RigKind kind;
    private final SplittableRandom random;

    RandomRigs(RigKind kind, long seed) {
        this.kind = kind;
        this.random = new SplittableRandom(seed);
    }

    /** That many different focused rigs. */
    static Stream<RigInput> some(long seed, int count) {
        return some(RigKind.FOCUSED, seed, count);
    }

    /** That many different rigs of a kind. */
    static Stream<RigInput> some(RigKind kind, long seed, int count) {
        RandomRigs rigs = new RandomRigs(kind, seed);
        return Stream.generate(rigs::next).limit(count);
    }

    /** That many different rigs of a kind, with slings of every tie round most of their points. */
    static Stream<RigInput> slung(RigKind kind, long seed, int count) {
        RandomRigs rigs = new RandomRigs(kind, seed);
        return Stream.generate(rigs::nextSlung).limit(count);
    }

    /** That many different rigs of each kind. */
    static Stream<RigInput> ofEachKind(long seed, int count) {
        return Stream.of(RigKind.values()).flatMap(kind -> some(kind, seed, count));
    }

    RigInput next() {
        while (true) {
            Optional<RigInput> input = draft().check().input();
            if (input.isPresent()) {
                return input.get();
            }
        }
    }

    RigInput nextSlung() {
        while (true) {
            RigDraft draft = draft();
            List<PointDraft> points =
                    draft.points().stream().map(this::perhapsSlung).toList();
            Optional<RigInput> input = draft.withPoints(points).check().input();
            boolean slung = points.stream().anyMatch(point -> point.sling().isPresent());
            if (slung && input.isPresent()) {
                return input.get();
            }
        }
    }

    private PointDraft perhapsSlung(PointDraft point) {
        if (random.nextInt(4) == 0) {
            return point;
        }
        List<SlingTie> ties = List.of(SlingTie.values());
        SlingTie tie = ties.get(random.nextInt(ties.size()));
        SlingDraft sling = SlingDraft.of(tie, random.nextInt(8) == 0 ? 0 : between(0.05, 0.6))
                .withStiffness(between(10, 300));
        boolean reaches = kind.takesSlingsAsLegs() && random.nextInt(3) == 0;
        return point.slungWith(PointKind.TREE, reaches ? sling : sling.withReach(between(0.05, 1)));
    }

    private RigDraft draft() {
        int count = kind.fewestPoints() + random.nextInt(kind.mostPoints() - kind.fewestPoints() + 1);
        List<PointDraft> points = new ArrayList<>();
        Map<String, Double> slack = new HashMap<>();
        for (int i = 0; i < count; i++) {
            String name = "P" + (i + 1);
            points.add(PointDraft.of(name, between(-1, 1), between(-0.4, 1), between(-0.3, 0.3)));
            if (random.nextInt(4) == 0 && kind.takes("slack_m")) {
                slack.put(name, between(0, 0.2));
            }
        }
        LoadDraft load = LoadDraft.ofForce(between(0.1, 5), between(-60, 60), between(0, 30))
                .withLeanOut(random.nextInt(3) == 0 ? between(-30, 30) : 0);
        SetupDraft rig = new SetupDraft(
                Optional.of(kind),
                List.of(between(-0.5, 0.5), between(-1.2, 0), between(-0.1, 0.1)),
                OptionalDouble.of(between(10, 300)),
                kind.takes("strands") ? OptionalLong.of(1 + random.nextInt(3)) : OptionalLong.empty(),
                slack,
                kind.takes("captured") ? Optional.of(random.nextInt(4) > 0) : Optional.empty(),
                kind.takes("friction") ? OptionalDouble.of(between(0, 0.5)) : OptionalDouble.empty(),
                kind.takes("limit_m") ? limits() : LimitDraft.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return new RigDraft("", points, load, rig);
    }

    /** Most of them as short as people tie them, some longer, and some found from a range of directions. */
    private LimitDraft limits() {
        double most = random.nextBoolean() ? 0.15 : 0.8;
        double from = between(-40, 30);
        LimitDraft limits = random.nextInt(4) == 0
                ? LimitDraft.over(from, from + between(0, 40))
                : LimitDraft.at(between(0, most), between(0, most));
        return limits.withStrands(1 + random.nextInt(2));
    }

    private double between(double low, double high) {
        return random.nextDouble(low, high);
    }
}
