package laminate.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.part.BeamPlan;
import laminate.part.ReserveKind;
import laminate.theory.beam.Beam;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.PointLoad;
import laminate.theory.beam.Strip;
import laminate.theory.beam.StripWidth;

/** A beam in one make-up. */
final class SolvedBeam implements Solved {
    private static final List<ReserveKind> KINDS = List.of(
            ReserveKind.FIRST_PLY,
            ReserveKind.LAST_PLY,
            ReserveKind.CORE_SHEAR,
            ReserveKind.CRUSHING,
            ReserveKind.WRINKLING,
            ReserveKind.DIMPLING,
            ReserveKind.INDENTATION);
    /** Fields between places that are looked at besides those where something peaks. */
    private static final int FIELDS = 16;

    private final BeamPlan plan;
    private final MakeUp makeUp;
    private final CheckOptions options;
    private final Strip strip;
    private final BeamResponse response;
    private Optional<LeastReserves> least = Optional.empty();
    private double worst;

    SolvedBeam(BeamPlan plan, MakeUp asLaid, CheckOptions options) {
        this.plan = plan;
        this.options = options;
        makeUp = plan.along() == BeamPlan.Along.X ? asLaid : asLaid.turnedBy(-90);
        strip = new Strip(makeUp.laminate(), plan.width(), StripWidth.NARROW);
        response = new Beam(strip.section(), plan.span(), plan.supports()).under(plan.load());
        worst = response.largestMoment().x();
    }

    BeamResponse response() {
        return response;
    }

    @Override
    public OptionalDouble deflection() {
        return OptionalDouble.of(Math.abs(response.largestDeflection().total()));
    }

    @Override
    public double span() {
        return plan.span();
    }

    @Override
    public Optional<Reserve> reserve(ReserveKind kind) {
        return leastReserves().of(kind);
    }

    List<Reserve> reserves() {
        return leastReserves().sorted();
    }

    @Override
    public Solved near(MakeUp changed) {
        return new SolvedBeam(plan, changed, options);
    }

    @Override
    public List<ReserveKind> kinds() {
        return KINDS;
    }

    /** Where a ply comes nearest to failure (m). */
    double worst() {
        leastReserves();
        return worst;
    }

    LaminateReserves at(double x) {
        return new LaminateReserves(makeUp, strip.loadAt(response, x), options);
    }

    private LeastReserves leastReserves() {
        if (least.isEmpty()) {
            least = Optional.of(search());
        }
        return least.get();
    }

    private LeastReserves search() {
        LeastReserves found = new LeastReserves();
        double lowest = Double.POSITIVE_INFINITY;
        for (double x : places()) {
            List<Reserve> here = at(x).reserves();
            here.forEach(reserve -> found.add(reserve.at(x)));
            double least = LeastReserves.ofPlies(here);
            if (LeastReserves.isLess(least, lowest)) {
                lowest = least;
                worst = x;
            }
        }
        at(worst).lastPly().ifPresent(last -> found.add(last.at(worst)));
        found.addAll(new BeamIndentation(plan, makeUp, options).reserves(response));
        return found;
    }

    /** Ends, loads from either side, peaks, and places between. */
    private double[] places() {
        DoubleStream even = IntStream.rangeClosed(0, FIELDS).mapToDouble(i -> plan.span() * i / FIELDS);
        DoubleStream loads = plan.load().points().stream()
                .mapToDouble(PointLoad::position)
                .flatMap(x -> DoubleStream.of(Math.max(0, Math.nextDown(x)), x));
        DoubleStream peaks = DoubleStream.of(
                response.largestMoment().x(), response.largestShearForce().x());
        return Stream.of(even, loads, peaks)
                .flatMapToDouble(places -> places)
                .sorted()
                .distinct()
                .toArray();
    }
}
