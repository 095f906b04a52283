package thalweg.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * What an operation takes of a processor. Others on the machine change that far less than the time on the clock; what
 * the compiler and the collector take beside it is not counted.
 */
public final class CpuTime implements InternalProfiler {

    /** Under which it stands beside the time on the clock. */
    static final String NAME = "cpu";

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private long before;

    @Override
    public String getDescription() {
        return "Processor time of all threads of the program for an operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = spent();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double microseconds = (spent() - before) / 1e3;
        long operations = Math.max(1, result.getMetadata().getAllOps());
        return List.of(new ScalarResult(NAME, microseconds / operations, "us/op", AggregationPolicy.AVG));
    }

    /** By every thread that is alive, and the same ones measure from the first iteration to the last [ns]. */
    private static long spent() {
        long sum = 0;
        for (long thread : THREADS.getAllThreadIds()) {
            sum += Math.max(0, THREADS.getThreadCpuTime(thread));
        }
        return sum;
    }
}
