package laminate.theory.panel;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
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
 * Time of a panel, to the tolerance of {@link Convergence}. To be reached: a linear symmetric panel 5 ms, an
 * unsymmetric one 30 ms, a patch 50 ms, large deflection 300 ms.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PanelBenchmark {
    private static final Lamina ROVING = Lamina.of(40e9, 10e9, 4e9, 0.3);
    private static final List<PanelLoad> PRESSURE = List.of(new PanelLoad.Uniform(10e3));
    private static final List<PanelLoad> HEAD = List.of(new PanelLoad.Head(0.6, 1000, PanelLoad.Upright.WIDTH));
    private static final List<PanelLoad> FOOT = List.of(new PanelLoad.Patch(0.22, 0.17, 0.08, 0.08, 900));
    private static final Edges CLAMPED = Edges.all(Edge.CLAMPED);

    private final Panel sandwich = panel(sandwich());
    private final Panel twisting = panel(plies(30, -30, -30, 30));
    private final Panel unsymmetric = panel(plies(0, 45, -30, 20));

    private final Panel lopsided =
            unsymmetric.with(new Edges(Edge.CLAMPED, Edge.SIMPLY_SUPPORTED, Edge.CLAMPED, Edge.SOFT_SIMPLY_SUPPORTED));

    private static Panel panel(Laminate laminate) {
        return new Panel(laminate, 0.6, 0.4, CLAMPED, InPlane.HELD);
    }

    private static Laminate sandwich() {
        Ply skin = new Ply(ROVING, 0.0018, 0);
        return Laminate.of(List.of(skin, new Ply(Lamina.isotropic(80e6, 0.33), 0.015, 0), skin));
    }

    private static Laminate plies(double... angles) {
        return Laminate.of(
                Arrays.stream(angles).mapToObj(a -> new Ply(ROVING, 0.001, a)).toList());
    }

    /** Sandwich of symmetric cross-plies, clamped. */
    @Benchmark
    public double symmetric() {
        return PanelBending.of(sandwich, PRESSURE).deflection();
    }

    /** Symmetric angle-ply, clamped: D16 and D26 count. */
    @Benchmark
    public double symmetricTwisting() {
        return PanelBending.of(twisting, PRESSURE).deflection();
    }

    /** Unsymmetric, every coupling there is, clamped and held. */
    @Benchmark
    public double unsymmetric() {
        return PanelBending.of(unsymmetric, PRESSURE).deflection();
    }

    /** The symmetric angle-ply by von Kármán, edges held. */
    @Benchmark
    public double largeDeflection() {
        return LargeDeflection.of(twisting, PRESSURE).deflection();
    }

    /** The unsymmetric panel by von Kármán, edges held. */
    @Benchmark
    public double largeDeflectionUnsymmetric() {
        return LargeDeflection.of(unsymmetric, PRESSURE).deflection();
    }

    /** No symmetry of laminate, edges or load to make use of. */
    @Benchmark
    public double largeDeflectionLopsided() {
        return LargeDeflection.of(lopsided, HEAD).deflection();
    }

    /** A foot off the middle of a clamped sandwich. */
    @Benchmark
    public double patch() {
        return PanelBending.of(sandwich, FOOT).deflection();
    }

    /** The angle-ply buckling under compression and shear. */
    @Benchmark
    public double buckling() {
        return PanelBuckling.of(twisting, new PanelLoad.EdgeForces(-1, 0, 0.5))
                .factor()
                .orElseThrow();
    }
}
