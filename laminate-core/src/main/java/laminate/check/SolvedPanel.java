package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.theory.CoreStrength;
import laminate.theory.LaminateLoad;
import laminate.theory.Matrix3;
import laminate.theory.Resultants;
import laminate.theory.Vector3;
import laminate.theory.panel.Convergence;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.LargeDeflection;
import laminate.theory.panel.PanelBending;
import laminate.theory.panel.PanelBuckling;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelPoint;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.Sandwich;

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
    private boolean largeSought;
    private Optional<LargeDeflection> large = Optional.empty();
    private Optional<LeastReserves> least = Optional.empty();
    private PanelPoint worst;

    SolvedPanel(PanelPlan plan, MakeUp makeUp, CheckOptions options) {
        this.plan = plan;
        this.makeUp = makeUp;
        this.options = options;
        bending = PanelBending.of(plan.in(makeUp.laminate()), plan.loads());
        worst = bending.response().mostDeflected();
    }

    PanelBending bending() {
        return bending;
    }

    boolean isBeyondSmallDeflection() {
        return PanelCheck.isBeyondSmallDeflection(bending, makeUp.laminate().thickness());
    }

    /** The large deflection; empty where none is found, as of a panel pressed far beyond buckling. */
    Optional<LargeDeflection> large() {
        if (!largeSought) {
            largeSought = true;
            try {
                large = Optional.of(LargeDeflection.of(plan.in(makeUp.laminate()), plan.loads()));
            } catch (IllegalArgumentException e) {
                large = Optional.empty();
            }
        }
        return large;
    }

    private Optional<LargeDeflection> governingLarge() {
        return isBeyondSmallDeflection() ? large() : Optional.empty();
    }

    @Override
    public OptionalDouble deflection() {
        double w = governingLarge().map(LargeDeflection::deflection).orElseGet(bending::deflection);
        return OptionalDouble.of(Math.abs(w));
    }

    @Override
    public double span() {
        return plan.span();
    }

    @Override
    public double doubtOfDeflection() {
        double change = governingLarge()
                .map(LargeDeflection::response)
                .orElseGet(bending::response)
                .convergence()
                .deflection();
        return change > Convergence.DEFLECTION_TOLERANCE ? change : 0;
    }

    @Override
    public double doubtOfStress() {
        double change = bending.response().convergence().moment();
        return change > Convergence.MOMENT_TOLERANCE ? change : 0;
    }

    @Override
    public Optional<Reserve> reserve(ReserveKind kind) {
        return kind == ReserveKind.BUCKLING ? buckling() : leastReserves().of(kind);
    }

    /** The panel as a whole under its edge forces, whatever else acts on it. */
    private Optional<Reserve> buckling() {
        return edgeForces().stream()
                .flatMapToDouble(forces -> PanelBuckling.of(plan.in(makeUp.laminate()), forces).factor().stream())
                .mapToObj(factor -> Reserve.whole(ReserveKind.BUCKLING, factor))
                .findFirst();
    }

    List<Reserve> reserves() {
        return leastReserves().sorted();
    }

    @Override
    public List<ReserveKind> kinds() {
        return KINDS;
    }

    /** Where a ply comes nearest to failure. */
    PanelPoint worst() {
        leastReserves();
        return worst;
    }

    LaminateReserves at(PanelPoint point) {
        LaminateLoad load = LaminateLoad.of(resultants(point)).withShear(point.Qx(), point.Qy());
        return new LaminateReserves(makeUp, load, options);
    }

    /**
     * The resultants at a point. Edge forces on edges that may pull in are taken as uniform, as they are for buckling;
     * the ends of the neighbouring edges, which do not move along themselves, would bear most of them otherwise.
     */
    private Resultants resultants(PanelPoint point) {
        boolean uniform =
                plan.inPlane() == InPlane.FREE_TO_PULL_IN && !makeUp.laminate().isCoupled();
        return edgeForces()
                .filter(forces -> uniform)
                .map(forces -> new Resultants(
                        new Vector3(forces.Nx(), forces.Ny(), forces.Nxy()),
                        point.resultants().moment()))
                .orElse(point.resultants());
    }

    private Optional<PanelLoad.EdgeForces> edgeForces() {
        return plan.loads().stream()
                .filter(PanelLoad.EdgeForces.class::isInstance)
                .map(PanelLoad.EdgeForces.class::cast)
                .findFirst();
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
        for (PanelPoint point : points()) {
            List<Reserve> here = at(point).reserves();
            here.forEach(reserve -> found.add(reserve.at(point.x(), point.y())));
            double least = LeastReserves.ofPlies(here);
            if (least < lowest) {
                lowest = least;
                worst = point;
            }
        }
        at(worst).lastPly().ifPresent(last -> found.add(last.at(worst.x(), worst.y())));
        buckling().ifPresent(found::add);
        plan.loads().stream()
                .filter(PanelLoad.Patch.class::isInstance)
                .map(PanelLoad.Patch.class::cast)
                .forEach(patch -> found.addAll(punching(patch)));
        bearing().forEach(local -> found.add(Reserve.of(ReserveKind.CRUSHING, local)));
        return found;
    }

    private List<PanelPoint> points() {
        List<PanelPoint> points = new ArrayList<>(bending.response().candidates());
        points.removeIf(this::isOpenCorner);
        for (PanelLoad load : plan.loads()) {
            if (load instanceof PanelLoad.Patch patch) {
                points.addAll(around(patch));
            }
        }
        return points;
    }

    /** The middle of a patch and of its sides, where moment and shear force peak. */
    private List<PanelPoint> around(PanelLoad.Patch patch) {
        double[][] places = {{0, 0}, {-1, 0}, {1, 0}, {0, -1}, {0, 1}};
        List<PanelPoint> points = new ArrayList<>();
        for (double[] place : places) {
            double x = patch.x() + place[0] * patch.alongX() / 2;
            double y = patch.y() + place[1] * patch.alongY() / 2;
            points.add(bending.response().at(within(x, plan.length()), within(y, plan.width())));
        }
        return points;
    }

    /**
     * Mean shear of each core round a patch, force by perimeter and distance of the faces, against the weaker shear
     * strength: by equilibrium the greatest is no less, while polynomials smooth out what a small patch does.
     */
    private List<Reserve> punching(PanelLoad.Patch patch) {
        double perimeter = 2 * (patch.alongX() + patch.alongY());
        List<Reserve> found = new ArrayList<>();
        for (Sandwich sandwich : makeUp.sandwiches()) {
            double stress = Math.abs(patch.force()) / perimeter / sandwich.faceDistance();
            sandwich.core().plies().stream()
                    .flatMap(ply -> ply.lamina().strength().stream())
                    .filter(CoreStrength.class::isInstance)
                    .map(CoreStrength.class::cast)
                    .mapToDouble(core -> Math.min(core.shear13(), core.shear23()))
                    .filter(strength -> stress > 0)
                    .mapToObj(strength -> Reserve.whole(ReserveKind.CORE_SHEAR, strength / stress))
                    .forEach(reserve -> found.add(reserve.at(patch.x(), patch.y())));
        }
        return found;
    }

    private static double within(double value, double size) {
        return Math.min(Math.max(value, 0), size);
    }

    /** A corner where the theory has no finite value, as two kinds of edge meet or the laminate twists when bent. */
    private boolean isOpenCorner(PanelPoint point) {
        boolean corner =
                (point.x() == 0 || point.x() == plan.length()) && (point.y() == 0 || point.y() == plan.width());
        if (!corner) {
            return false;
        }
        Edges edges = plan.edges();
        Matrix3 d = makeUp.laminate().bending();
        boolean alike =
                (point.x() == 0 ? edges.xStart() : edges.xEnd()) == (point.y() == 0 ? edges.yStart() : edges.yEnd());
        return !alike || d.m16() != 0 || d.m26() != 0;
    }

    /** The greatest pressure on the face against the strength of each core. */
    private List<LocalCheck> bearing() {
        double pressure =
                plan.loads().stream().mapToDouble(SolvedPanel::pressure).sum();
        List<LocalCheck> found = new ArrayList<>();
        for (Sandwich sandwich : makeUp.sandwiches()) {
            makeUp.localChecks(sandwich).bearing(pressure).ifPresent(found::add);
        }
        return found;
    }

    private static double pressure(PanelLoad load) {
        if (load instanceof PanelLoad.Uniform uniform) {
            return Math.abs(uniform.pressure());
        }
        if (load instanceof PanelLoad.Head head) {
            return head.greatestPressure();
        }
        return load instanceof PanelLoad.Patch patch ? Math.abs(patch.force()) / (patch.alongX() * patch.alongY()) : 0;
    }
}
