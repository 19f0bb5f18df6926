package laminate.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.theory.panel.PanelPoint;
import laminate.theory.panel.PanelResponse;

/**
 * A panel in a make-up like one that was solved, quickly: by polynomials of the order at which that settled, and looked at
 * only where that came nearest to failure.
 */
final class NearPanel implements Solved {
    /** Of the worst places; a panel that is alike on all sides has each of them four times. */
    private static final int PLACES = 12;

    private final SolvedPanel base;
    private final MakeUp makeUp;
    private final PanelResponse small;
    private final PanelResponse response;

    NearPanel(SolvedPanel base, MakeUp makeUp) {
        this.base = base;
        this.makeUp = makeUp;
        small = base.bending().responseOf(makeUp.laminate());
        boolean beyond =
                PanelCheck.isBeyondSmallDeflection(small.mostDeflected().deflection(), makeUp.laminate());
        response = beyond
                ? base.large()
                        .flatMap(like -> like.responseOf(makeUp.laminate()))
                        .orElse(small)
                : small;
    }

    @Override
    public OptionalDouble deflection() {
        return OptionalDouble.of(Math.abs(response.mostDeflected().deflection()));
    }

    @Override
    public double span() {
        return base.span();
    }

    @Override
    public Optional<Reserve> reserve(ReserveKind kind) {
        PanelPlan plan = base.plan();
        PanelReserves state = new PanelReserves(plan, makeUp, base.options(), response, small);
        return SolvedPanel.least(kind, state, of -> state.of(of, worst(state, of)), plan, makeUp);
    }

    private List<PanelPoint> worst(PanelReserves state, ReserveKind kind) {
        return base.atPoints(kind).stream()
                .limit(PLACES)
                .map(PanelPlace::of)
                .map(state::at)
                .toList();
    }

    @Override
    public List<ReserveKind> kinds() {
        return base.kinds();
    }

    @Override
    public Solved near(MakeUp changed) {
        return new NearPanel(base, changed);
    }
}
