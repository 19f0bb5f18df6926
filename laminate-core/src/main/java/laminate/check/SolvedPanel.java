package laminate.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.theory.panel.Convergence;
import laminate.theory.panel.LargeDeflection;
import laminate.theory.panel.PanelBending;
import laminate.theory.panel.PanelBuckling;
import laminate.theory.panel.PanelPoint;
import laminate.theory.panel.PanelResponse;

/** A panel in one make-up; each of its parts is reckoned when first asked for. */
final class SolvedPanel implements Solved {
    private static final List<ReserveKind> KINDS = List.of(
            ReserveKind.FIRST_PLY,
            ReserveKind.LAST_PLY,
            ReserveKind.CORE_SHEAR,
            ReserveKind.CRUSHING,
            ReserveKind.WRINKLING,
            ReserveKind.DIMPLING,
            ReserveKind.SHEAR_CRIMPING,
            ReserveKind.BUCKLING);

    private final PanelPlan plan;
    private final MakeUp makeUp;
    private final CheckOptions options;
    private final PanelBending bending;
    private final Map<ReserveKind, List<Reserve>> byPoint = new EnumMap<>(ReserveKind.class);
    private Optional<LargeDeflection> large = Optional.empty();
    private boolean largeSought;

    SolvedPanel(PanelPlan plan, MakeUp makeUp, CheckOptions options) {
        this.plan = plan;
        this.makeUp = makeUp;
        this.options = options;
        bending = PanelBending.of(plan.in(makeUp.laminate()), plan.loads());
    }

    PanelPlan plan() {
        return plan;
    }

    CheckOptions options() {
        return options;
    }

    PanelBending bending() {
        return bending;
    }

    boolean isBeyondSmallDeflection() {
        return PanelCheck.isBeyondSmallDeflection(bending.deflection(), makeUp.laminate());
    }

    /** The large deflection; empty where none is found, as of a panel pressed far beyond buckling. */
    Optional<LargeDeflection> large() {
        if (!largeSought) {
            largeSought = true;
            large = LargeDeflection.find(plan.in(makeUp.laminate()), plan.loads());
        }
        return large;
    }

    /** The state that counts: that of large deflection where small-deflection theory is beyond its range. */
    PanelResponse response() {
        return isBeyondSmallDeflection()
                ? large().map(LargeDeflection::response).orElseGet(bending::response)
                : bending.response();
    }

    private PanelReserves state() {
        return new PanelReserves(plan, makeUp, options, response(), bending.response());
    }

    @Override
    public OptionalDouble deflection() {
        return OptionalDouble.of(Math.abs(response().mostDeflected().deflection()));
    }

    @Override
    public double span() {
        return plan.span();
    }

    @Override
    public double doubtOfDeflection() {
        double change = response().convergence().deflection();
        return change > Convergence.DEFLECTION_TOLERANCE ? change : 0;
    }

    @Override
    public double doubtOfStress() {
        double change = response().convergence().moment();
        return change > Convergence.MOMENT_TOLERANCE ? change : 0;
    }

    @Override
    public Optional<Reserve> reserve(ReserveKind kind) {
        return least(kind, state(), this::atPoints, plan, makeUp);
    }

    /** The least reserve of a kind in a state, of whose kinds by point a list is at hand. */
    static Optional<Reserve> least(
            ReserveKind kind, PanelReserves state, Places places, PanelPlan plan, MakeUp makeUp) {
        if (kind == ReserveKind.BUCKLING) {
            return buckling(plan, makeUp);
        }
        if (kind == ReserveKind.LAST_PLY) {
            return places.reserves(ReserveKind.FIRST_PLY).stream()
                    .findFirst()
                    .map(PanelPlace::of)
                    .flatMap(place -> state.at(state.at(place)).lastPly().map(last -> last.at(place.x(), place.y())));
        }
        List<Reserve> found = new ArrayList<>(places.reserves(kind));
        found.addAll(state.underLoads());
        found.removeIf(reserve -> reserve.kind() != kind);
        return LeastReserves.least(found);
    }

    /** Reserves of one kind, least first. */
    interface Places {
        List<Reserve> reserves(ReserveKind kind);
    }

    /** Reserves of one kind at every point, least first. */
    List<Reserve> atPoints(ReserveKind kind) {
        return byPoint.computeIfAbsent(kind, any -> state().of(kind, state().points()));
    }

    /** The panel as a whole under its edge forces, whatever else acts on it. */
    private static Optional<Reserve> buckling(PanelPlan plan, MakeUp makeUp) {
        return PanelReserves.edgeForces(plan).stream()
                .flatMapToDouble(forces -> PanelBuckling.of(plan.in(makeUp.laminate()), forces).factor().stream())
                .mapToObj(factor -> Reserve.whole(ReserveKind.BUCKLING, factor))
                .findFirst();
    }

    List<Reserve> reserves() {
        LeastReserves found = new LeastReserves();
        KINDS.forEach(kind -> reserve(kind).ifPresent(found::add));
        return found.sorted();
    }

    @Override
    public List<ReserveKind> kinds() {
        return KINDS;
    }

    @Override
    public Solved near(MakeUp changed) {
        return new NearPanel(this, changed);
    }

    /** Where a ply comes nearest to failure; where the panel moves most if none does. */
    PanelPoint worst() {
        return atPoints(ReserveKind.FIRST_PLY).stream()
                .findFirst()
                .map(PanelPlace::of)
                .map(state()::at)
                .orElseGet(response()::mostDeflected);
    }

    LaminateReserves at(PanelPoint point) {
        return state().at(point);
    }
}
