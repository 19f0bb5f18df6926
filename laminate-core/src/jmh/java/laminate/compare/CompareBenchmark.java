package laminate.compare;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import laminate.estimate.PartEstimate;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of a comparison of three processes. To be reached: that of three estimates. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CompareBenchmark {
    private final List<Candidate> ways = TestWays.threeProcesses();

    /** Three estimates by themselves. */
    @Benchmark
    public List<PartEstimate> threeEstimates() {
        return ways.stream().map(way -> way.estimator().estimate(way.part())).toList();
    }

    /** The same reinforcement by three processes. */
    @Benchmark
    public SideBySide sameReinforcement() {
        return SideBySide.of(ways, CompareOptions.USUAL);
    }

    /** The same bending stiffness by three processes, whole layers laid. */
    @Benchmark
    public SideBySide sameStiffness() {
        return SideBySide.of(ways, CompareOptions.USUAL.with(Basis.SAME_STIFFNESS));
    }

    /** All lines, break-evens and curves of one comparison. */
    @Benchmark
    public List<Object> everyLine() {
        SideBySide sides = SideBySide.of(ways, CompareOptions.USUAL);
        return Arrays.asList(sides.rows(), sides.costs(), sides.breakEvens(), sides.counts(), sides.splits());
    }
}
