package laminate.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.theory.CoreStrength;
import laminate.theory.LaminateLoad;
import laminate.theory.Matrix3;
import laminate.theory.Resultants;
import laminate.theory.Vector3;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelPoint;
import laminate.theory.panel.PanelResponse;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.Sandwich;

/** Judges the points of a panel in one state, of small or of large deflection. */
final class PanelReserves {
    private final PanelPlan plan;
    private final MakeUp makeUp;
    private final CheckOptions options;
    private final PanelResponse response;
    private final PanelResponse small;

    /**
     * A panel in a state.
     *
     * @param response the state that counts
     * @param small the state of small deflection, which may be the same
     */
    PanelReserves(PanelPlan plan, MakeUp makeUp, CheckOptions options, PanelResponse response, PanelResponse small) {
        this.plan = plan;
        this.makeUp = makeUp;
        this.options = options;
        this.response = response;
        this.small = small;
    }

    LaminateReserves at(PanelPoint point) {
        LaminateLoad load = LaminateLoad.of(resultants(point)).withShear(point.Qx(), point.Qy());
        return new LaminateReserves(makeUp, load, options);
    }

    PanelPoint at(PanelPlace place) {
        return response.at(place.x(), place.y());
    }

    /**
     * The resultants at a point. Edge forces on edges that may pull in are taken as uniform, as they are for buckling;
     * the ends of the neighbouring edges, which do not move along themselves, would bear most of them otherwise.
     */
    private Resultants resultants(PanelPoint point) {
        boolean uniform =
                plan.inPlane() == InPlane.FREE_TO_PULL_IN && !makeUp.laminate().isCoupled();
        return edgeForces(plan)
                .filter(forces -> uniform)
                .map(forces -> new Vector3(forces.Nx(), forces.Ny(), forces.Nxy()))
                .map(force -> new Resultants(
                        force.plus(stretching(point)), point.resultants().moment()))
                .orElse(point.resultants());
    }

    /** What a large deflection adds to the forces in the plane. */
    private Vector3 stretching(PanelPoint point) {
        if (response == small) {
            return Vector3.ZERO;
        }
        Vector3 linear = small.at(point.x(), point.y()).resultants().force();
        return point.resultants().force().minus(linear);
    }

    static Optional<PanelLoad.EdgeForces> edgeForces(PanelPlan plan) {
        return plan.loads().stream()
                .filter(PanelLoad.EdgeForces.class::isInstance)
                .map(PanelLoad.EdgeForces.class::cast)
                .findFirst();
    }

    /** The reserves at points, of one kind that plies or faces fail by, least first. */
    List<Reserve> of(ReserveKind kind, List<PanelPoint> points) {
        List<Reserve> found = new ArrayList<>();
        for (PanelPoint point : points) {
            at(point).reserves(kind).stream()
                    .min(Comparator.comparingDouble(Reserve::factor))
                    .ifPresent(reserve -> found.add(reserve.at(point.x(), point.y())));
        }
        Optional<Reserve> first = LeastReserves.least(found);
        found.sort(Comparator.comparingDouble(Reserve::factor));
        first.ifPresent(least -> {
            found.remove(least);
            found.add(0, least);
        });
        return found;
    }

    /** What does not hang on the point: punching and bearing. */
    List<Reserve> underLoads() {
        List<Reserve> found = new ArrayList<>();
        for (PanelLoad load : plan.loads()) {
            if (load instanceof PanelLoad.Patch patch) {
                found.addAll(punching(patch));
            }
        }
        bearing().forEach(local -> found.add(Reserve.of(ReserveKind.CRUSHING, local)));
        return found;
    }

    /** The points to be looked at. */
    List<PanelPoint> points() {
        List<PanelPoint> points = new ArrayList<>(response.candidates());
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
            points.add(response.at(within(x, plan.length()), within(y, plan.width())));
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
                plan.loads().stream().mapToDouble(PanelReserves::pressure).sum();
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
