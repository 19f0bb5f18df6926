package laminate.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.LoadCase;
import laminate.part.ReserveKind;

/** A load case in one make-up. */
final class SolvedLoadCase implements Solved {
    private static final List<ReserveKind> KINDS = List.of(
            ReserveKind.FIRST_PLY,
            ReserveKind.LAST_PLY,
            ReserveKind.CORE_SHEAR,
            ReserveKind.CRUSHING,
            ReserveKind.WRINKLING,
            ReserveKind.DIMPLING,
            ReserveKind.SHEAR_CRIMPING);

    private final LoadCase loadCase;
    private final CheckOptions options;
    private final LaminateReserves laminate;
    private final LeastReserves least = new LeastReserves();

    SolvedLoadCase(LoadCase loadCase, MakeUp makeUp, CheckOptions options) {
        this.loadCase = loadCase;
        this.options = options;
        laminate = new LaminateReserves(makeUp, loadCase.load(), options);
        least.addAll(laminate.reserves());
        laminate.lastPly().ifPresent(least::add);
    }

    LaminateReserves laminate() {
        return laminate;
    }

    List<Reserve> reserves() {
        return least.sorted();
    }

    @Override
    public Optional<Reserve> reserve(ReserveKind kind) {
        return least.of(kind);
    }

    @Override
    public OptionalDouble deflection() {
        return OptionalDouble.empty();
    }

    @Override
    public double span() {
        return 0;
    }

    @Override
    public Solved near(MakeUp changed) {
        return new SolvedLoadCase(loadCase, changed, options);
    }

    @Override
    public List<ReserveKind> kinds() {
        return KINDS;
    }
}
