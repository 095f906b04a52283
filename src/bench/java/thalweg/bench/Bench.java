package thalweg.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Measures one group or all, and prints a table. */
public final class Bench {

    /** Classes of benchmarks by group; what the program does on a terminal is measured by hand. */
    private static final Map<String, String> GROUPS = new LinkedHashMap<>();

    /** What was set out to be reached. */
    private static final Map<String, String> TARGETS = Map.ofEntries(
            Map.entry("steady FOCUSED", "10 us"),
            Map.entry("analysis FOCUSED", "5 ms"),
            Map.entry("analysis SLIDING", "5 ms"),
            Map.entry("analysis LIMITED", "5 ms"),
            Map.entry("analysis LOOP", "5 ms"),
            Map.entry("cascade FOCUSED", "500 ms"),
            Map.entry("cascade SLIDING", "500 ms"),
            Map.entry("cascade LIMITED", "500 ms"),
            Map.entry("cascade LOOP", "500 ms"),
            Map.entry("openCanyon", "10 ms p95"),
            Map.entry("importInspections", "2 s"),
            Map.entry("html 30", "50 ms"),
            Map.entry("pdf 30", "1 s"));

    static {
        GROUPS.put("rig", "thalweg.rig.RigBench");
        GROUPS.put("records", "thalweg.bench.(RecordsBench|TableBench)");
        GROUPS.put("sheets", SheetsBench.class.getName());
        GROUPS.put(StartBench.GROUP, "");
        GROUPS.put(KeysBench.GROUP, "");
    }

    private Bench() {}

    /**
     * Measures and prints.
     *
     * @param arguments groups; none are all of them
     */
    public static void main(String[] arguments) throws Exception {
        List<String> groups = arguments.length == 0 ? List.copyOf(GROUPS.keySet()) : List.of(arguments);
        for (String group : groups) {
            if (!GROUPS.containsKey(group)) {
                throw new IllegalArgumentException(
                        "There is no group " + group + "; there are " + String.join(", ", GROUPS.keySet()) + ".");
            }
        }
        String before = load();
        List<Figure> figures = new ArrayList<>();
        for (String group : groups) {
            figures.addAll(
                    switch (group) {
                        case StartBench.GROUP -> StartBench.figures();
                        case KeysBench.GROUP -> KeysBench.figures();
                        default -> measured(group);
                    });
        }
        System.out.println(String.format(
                Locale.ROOT,
                "%d processors, %s %s, load %s before and %s after",
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.vm.name"),
                System.getProperty("java.version"),
                before,
                load()));
        System.out.println(Figure.head());
        figures.forEach(figure -> System.out.println(figure.row()));
    }

    /** How many wanted a processor in the last minute. */
    private static String load() {
        return String.format(
                Locale.ROOT,
                "%.1f",
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
    }

    private static List<Figure> measured(String group) throws RunnerException, IOException {
        Files.createDirectories(Path.of("target"));
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(GROUPS.get(group) + "\\.")
                        .forks(1)
                        .warmupIterations(5)
                        .warmupTime(TimeValue.seconds(2))
                        .measurementIterations(10)
                        .measurementTime(TimeValue.seconds(1))
                        .jvmArgs("-XX:+UseSerialGC", "-Dslf4j.internal.verbosity=ERROR")
                        .timeUnit(TimeUnit.MICROSECONDS)
                        .addProfiler(CpuTime.class)
                        .shouldFailOnError(true)
                        .verbosity(VerboseMode.NORMAL)
                        .output("target/bench-" + group + ".log")
                        .build())
                .run();
        return results.stream().map(result -> figure(group, result)).toList();
    }

    private static Figure figure(String group, RunResult result) {
        Result<?> primary = result.getPrimaryResult();
        String name = result.getParams().getBenchmark();
        String what = name.substring(name.lastIndexOf('.') + 1);
        for (String key : result.getParams().getParamsKeys()) {
            what += " " + result.getParams().getParam(key);
        }
        boolean sampled = result.getParams().getMode() == Mode.SampleTime;
        double error = primary.getScoreError();
        return new Figure(
                group,
                what,
                Figure.time(primary.getScore()),
                Figure.time(Double.isFinite(error) ? OptionalDouble.of(error) : OptionalDouble.empty()),
                Figure.time(Objects.requireNonNull(result.getSecondaryResults().get(CpuTime.NAME))
                        .getScore()),
                sampled ? Figure.time(primary.getStatistics().getPercentile(95)) : "",
                TARGETS.getOrDefault(what, ""));
    }
}
