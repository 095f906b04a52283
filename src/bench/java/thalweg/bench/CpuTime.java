package thalweg.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** What an operation takes of a processor, collector and compiler included: others on the machine hardly change that. */
public final class CpuTime implements InternalProfiler {

    /** Under which it stands beside the time on the clock. */
    static final String NAME = "cpu";

    private static final OperatingSystemMXBean SYSTEM =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private long before;

    @Override
    public String getDescription() {
        return "Processor time of the whole process for an operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = SYSTEM.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double microseconds = (SYSTEM.getProcessCpuTime() - before) / 1e3;
        long operations = Math.max(1, result.getMetadata().getAllOps());
        return List.of(new ScalarResult(NAME, microseconds / operations, "us/op", AggregationPolicy.AVG));
    }
}
