package laminate.order.cut;

import java.util.List;
import java.util.Random;
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

/** Time of a plan of 300 different pieces, the usual effort included. To be reached: under 1 s. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CutBenchmark {
    private final List<Piece> pieces = pieces();

    private static List<Piece> pieces() {
        Random random = new Random(1);
        return IntStream.range(0, 300)
                .mapToObj(i -> new Piece("no " + i, size(random), size(random), Turn.NONE))
                .toList();
    }

    private static double size(Random random) {
        return (100 + random.nextInt(1100)) / 1000.0;
    }

    /** A roll of 1.27 m, the direction fixed. */
    @Benchmark
    public double roll() {
        return RollPlanner.of(1.27).plan(pieces).length();
    }

    /** The same with cuts straight across. */
    @Benchmark
    public double rollCutAcross() {
        return RollPlanner.of(1.27).withCuts(Cuts.ACROSS).plan(pieces).length();
    }

    /** Sheets of 1.22 by 2.44 m. */
    @Benchmark
    public int sheets() {
        return SheetPlanner.of(1.22, 2.44).plan(pieces).sheets().size();
    }
}
