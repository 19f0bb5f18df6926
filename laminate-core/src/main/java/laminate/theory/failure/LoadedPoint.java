package laminate.theory.failure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateResponse;
import laminate.theory.PlyPoint;
import laminate.theory.Vector3;

/** A point of the thickness with its lamina and its stress as the load grows. */
record LoadedPoint(int ply, PlyPoint.At at, double z, Lamina lamina, StressPath path) {
    private static final int POINTS = PlyPoint.At.values().length;

    /** The points of a laminate under a constant load and one that grows, in the order of the response. */
    static List<LoadedPoint> of(Laminate laminate, LaminateResponse constant, LaminateResponse growing) {
        Vector3[] heldForce = pressing(laminate, constant);
        Vector3[] force = pressing(laminate, growing);
        List<LoadedPoint> points = new ArrayList<>();
        for (int i = 0; i < force.length; i++) {
            PlyPoint still = constant.points().get(i);
            PlyPoint moving = growing.points().get(i);
            Vector3 held = constant.deformation().curvature();
            Vector3 curvature = growing.deformation().curvature();
            StressState from = state(still, dot(held, heldForce[i]));
            StressState per = state(moving, dot(held, force[i]) + dot(curvature, heldForce[i]));
            StressPath path = new StressPath(from, per, dot(curvature, force[i]));
            points.add(new LoadedPoint(
                    moving.ply(),
                    moving.at(),
                    moving.z(),
                    laminate.plies().get(moving.ply()).lamina(),
                    path));
        }
        return points;
    }

    private static StressState state(PlyPoint point, double normal) {
        return new StressState(point.plyStress(), point.plyShear(), normal);
    }

    /** F − N/2 at each point: what is carried below it, less half of all (N/m), see {@link CoreFailure#crushing}. */
    private static Vector3[] pressing(Laminate laminate, LaminateResponse response) {
        Vector3[] below = new Vector3[response.points().size()];
        Vector3 sum = Vector3.ZERO;
        for (int i = 0; i < laminate.plies().size(); i++) {
            double t = laminate.plies().get(i).thickness();
            Vector3 side = response.points().get(POINTS * i).stress();
            Vector3 middle = response.points().get(POINTS * i + 1).stress();
            below[POINTS * i] = sum;
            below[POINTS * i + 1] = sum.plus(side.plus(middle).times(t / 4));
            sum = sum.plus(middle.times(t));
            below[POINTS * i + 2] = sum;
        }
        Vector3 half = sum.times(0.5);
        return Arrays.stream(below).map(force -> force.minus(half)).toArray(Vector3[]::new);
    }

    private static double dot(Vector3 curvature, Vector3 force) {
        return curvature.x() * force.x() + curvature.y() * force.y() + curvature.xy() * force.xy();
    }

    LoadedPoint along(StressPath other) {
        return new LoadedPoint(ply, at, z, lamina, other);
    }

    /** The least reserve factor by what the chosen criterion calls in. */
    Optional<ReserveFactor> least(Criterion chosen) {
        return lamina.strength().stream()
                .flatMap(strength -> chosen.inFor(strength).stream())
                .flatMap(criterion -> criterion.reserve(lamina, path).stream())
                .min(Comparator.comparingDouble(ReserveFactor::value));
    }

    PlyReserve with(ReserveFactor reserve) {
        return new PlyReserve(ply, at, z, reserve);
    }
}
