package laminate.theory.failure;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Failure of a quasi-isotropic laminate of eight plies; a surface of 10,000 points is to take less than 1 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class FailureBenchmark {
    private final Lamina glass = Lamina.of(45e9, 12e9, 5e9, 0.28)
            .withExpansion(8e-6, 26e-6)
            .withStrength(PlyStrength.of(1000e6, 700e6, 40e6, 140e6, 70e6));
    private final Laminate laminate = Laminate.of(List.of(0, 45, -45, 90, 90, -45, 45, 0).stream()
            .map(angle -> new Ply(glass, 0.0005, angle))
            .toList());
    private final LaminateLoad load = LaminateLoad.NONE.with(Term.NX, 1e5).withTemperatureChange(-40);

    /** A surface of 10,000 points. */
    @Benchmark
    public FailureSurface surface() {
        return FailureSurface.trace(laminate, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.TSAI_WU, 10_000);
    }

    /** First-ply failure under one load. */
    @Benchmark
    public Optional<PlyReserve> firstPly() {
        return FailureAnalysis.of(laminate, load).firstPly(Criterion.TSAI_WU);
    }

    /** From the first ply to the last. */
    @Benchmark
    public ProgressiveFailure progressive() {
        return ProgressiveFailure.of(laminate, load, Criterion.HASHIN, PlyDiscount.BY_MODE);
    }
}
