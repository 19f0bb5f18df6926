package laminate.process.flow;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of a filling with the fill time and the front at 21 times. To be reached: with rising viscosity and compaction 50
 * ms, to 1e-5.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FillingBenchmark {
    private final RisingViscosity viscosity = RisingViscosity.rising(0.2, 7200);
    private final FlowMesh mesh = new FlowMesh(0.001, 3e-9, 0.85);
    private final SoftBag softBag = new SoftBag(0.5, 0.07, 2000, 1e-10, 0.004, Optional.of(mesh));
    private final Drive drive = new Drive(95e3, 1100);

    private final FlowPath disc = new FlowPath(
            new Feed.Rim(0.9),
            List.of(
                    new FlowSegment(0.4, 3e-10, 0.6),
                    new FlowSegment(0.3, 1e-10, 0.5),
                    new FlowSegment(0.2, 2e-10, 0.5)),
            0.2,
            Optional.of(Supply.toDisc(List.of(new Hose(0.01, 2)), 0.005)));

    private static List<FrontPoint> front(Filling filling) {
        double end = filling.fillTime().orElseThrow();
        return filling.front(
                IntStream.rangeClosed(0, 20).mapToObj(i -> end * i / 20).toList());
    }

    /** Under mesh and a bag that gives way, from a line. */
    @Benchmark
    public List<FrontPoint> softBag() {
        return front(Filling.softBag(softBag, 1, 95e3, viscosity));
    }

    /** Three beds uphill behind a hose, from a rim to the middle. */
    @Benchmark
    public List<FrontPoint> rigidDisc() {
        return front(Filling.of(disc, drive, viscosity));
    }
}
