package laminate.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.part.ReserveKind;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateResponse;
import laminate.theory.PlyPoint;
import laminate.theory.Vector3;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.FailureAnalysis;
import laminate.theory.failure.ProgressiveFailure;
import laminate.theory.failure.ReserveFactor;
import laminate.theory.sandwich.Face;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.LocalChecks;
import laminate.theory.sandwich.LocalMode;
import laminate.theory.sandwich.Sandwich;
import laminate.theory.sandwich.Wrinkling;

/** The reserve factors of a laminate under one load, by stress and by the local failures of a sandwich. */
final class LaminateReserves {
    private final MakeUp makeUp;
    private final LaminateLoad load;
    private final CheckOptions options;

    LaminateReserves(MakeUp makeUp, LaminateLoad load, CheckOptions options) {
        this.makeUp = makeUp;
        this.load = options.residualStress() ? load : load.mechanical();
        this.options = options;
    }

    /** Every kind but the last ply. */
    List<Reserve> reserves() {
        List<Reserve> found = new ArrayList<>(byStress());
        found.addAll(local());
        return found;
    }

    /** Those of one kind, but of the last ply none. */
    List<Reserve> reserves(ReserveKind kind) {
        return switch (kind) {
            case FIRST_PLY, CORE_SHEAR, CRUSHING -> byStress(FailureAnalysis.of(makeUp.laminate(), load), kind);
            case WRINKLING, DIMPLING, SHEAR_CRIMPING ->
                local().stream().filter(reserve -> reserve.kind() == kind).toList();
            case LAST_PLY, INDENTATION, BUCKLING -> List.of();
        };
    }

    private List<Reserve> byStress() {
        FailureAnalysis analysis = FailureAnalysis.of(makeUp.laminate(), load);
        List<Reserve> found = new ArrayList<>();
        for (ReserveKind kind : List.of(ReserveKind.FIRST_PLY, ReserveKind.CORE_SHEAR, ReserveKind.CRUSHING)) {
            found.addAll(byStress(analysis, kind));
        }
        return found;
    }

    private List<Reserve> byStress(FailureAnalysis analysis, ReserveKind kind) {
        Criterion criterion = switch (kind) {
            case CORE_SHEAR -> Criterion.CORE_SHEAR;
            case CRUSHING -> Criterion.CRUSHING;
            default -> options.criterion();
        };
        return analysis.reserves(criterion).stream()
                .filter(ply ->
                        kind != ReserveKind.FIRST_PLY || !isOfCore(ply.reserve().criterion()))
                .map(ply -> Reserve.of(kind, ply))
                .toList();
    }

    private static boolean isOfCore(Criterion criterion) {
        return criterion == Criterion.CORE_SHEAR || criterion == Criterion.CRUSHING;
    }

    /** By the mechanical load alone. */
    private List<Reserve> local() {
        List<Sandwich> sandwiches = makeUp.sandwiches();
        if (sandwiches.isEmpty()) {
            return List.of();
        }
        LaminateResponse response = makeUp.laminate().responseTo(load.mechanical());
        List<Reserve> found = new ArrayList<>();
        for (Sandwich sandwich : sandwiches) {
            LocalChecks checks = makeUp.localChecks(sandwich);
            for (Face face : Face.values()) {
                Vector3 stress = sandwich.meanStress(face, response.deformation());
                add(found, checks.wrinkling(face, stress, Wrinkling.DESIGN));
                add(found, checks.dimpling(face, stress));
            }
            add(found, checks.shearCrimping(response.resultants().force()));
        }
        return found;
    }

    private static void add(List<Reserve> found, Optional<LocalCheck> check) {
        check.ifPresent(local -> found.add(Reserve.of(kind(local.mode()), local)));
    }

    static ReserveKind kind(LocalMode mode) {
        return switch (mode) {
            case WRINKLING -> ReserveKind.WRINKLING;
            case DIMPLING -> ReserveKind.DIMPLING;
            case SHEAR_CRIMPING -> ReserveKind.SHEAR_CRIMPING;
            case FLEXURAL_CRUSHING, BEARING -> ReserveKind.CRUSHING;
            case INDENTATION -> ReserveKind.INDENTATION;
        };
    }

    ProgressiveFailure progressive() {
        return ProgressiveFailure.of(makeUp.laminate(), load, options.criterion(), options.discount());
    }

    /** The last ply, as long as the load stays what it is while plies fail. */
    Optional<Reserve> lastPly() {
        return progressive().lastPlyFactor().stream()
                .mapToObj(factor -> Reserve.whole(ReserveKind.LAST_PLY, factor))
                .findFirst();
    }

    LaminateCheck check() {
        FailureAnalysis analysis = FailureAnalysis.of(makeUp.laminate(), load);
        LaminateResponse response = makeUp.laminate().responseTo(load);
        List<Map<Criterion, ReserveFactor>> reserves = response.points().stream()
                .map(point -> byCriterion(analysis, point))
                .toList();
        double lowest = reserves.stream()
                .flatMap(point -> point.values().stream())
                .mapToDouble(ReserveFactor::value)
                .min()
                .orElse(0);
        List<PointCheck> points = new ArrayList<>();
        for (int i = 0; i < reserves.size(); i++) {
            reserves.get(i).values().removeIf(reserve -> !LeastReserves.isLoaded(reserve.value(), lowest));
            points.add(new PointCheck(response.points().get(i), reserves.get(i)));
        }
        return new LaminateCheck(response, points);
    }

    private static Map<Criterion, ReserveFactor> byCriterion(FailureAnalysis analysis, PlyPoint point) {
        Map<Criterion, ReserveFactor> found = new EnumMap<>(Criterion.class);
        for (Criterion criterion : Criterion.values()) {
            analysis.reserve(point.ply(), point.at(), criterion).ifPresent(reserve -> found.put(criterion, reserve));
        }
        return found;
    }
}
