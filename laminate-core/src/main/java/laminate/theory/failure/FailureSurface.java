package laminate.theory.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;

/**
 * The first-ply failure surface of a laminate in the plane of two terms of its load, as points for a plot.
 *
 * <p>Rays from the unloaded state, equally spaced in angle after each term is divided by its own failure value, so that
 * terms of different units share the picture; each ends where the first ply fails. All else of the load is constant.
 *
 * @param xTerm term of the first axis
 * @param yTerm term of the second axis
 * @param points in order of angle from +x towards +y; rays on which nothing fails are left out
 */
public record FailureSurface(Term xTerm, Term yTerm, List<SurfacePoint> points) {
    /**
     * Keeps a copy.
     *
     * @param xTerm term of the first axis
     * @param yTerm term of the second axis
     * @param points in order of angle from +x towards +y
     */
    public FailureSurface {
        points = List.copyOf(points);
    }

    /**
     * Traces the surface.
     *
     * @param laminate the laminate
     * @param constant what stays: other terms, temperature, moisture; {@link LaminateLoad#NONE} for none
     * @param xTerm term of the first axis
     * @param yTerm term of the second axis, not that of x nor its conjugate
     * @param chosen the criterion for plies with directions; mats and cores have their own
     * @param rays how many rays, at least 1
     * @return the surface; without points where the constant load fails alone
     * @throws IllegalArgumentException if the terms cannot be given together, the constant load has one of them, or
     *     there is no ray
     */
    public static FailureSurface trace(
            Laminate laminate, LaminateLoad constant, Term xTerm, Term yTerm, Criterion chosen, int rays) {
        check(constant, xTerm, yTerm, rays);
        LaminateLoad still = constant.with(xTerm, 0).with(yTerm, 0);
        LaminateLoad none = still.mechanical().times(0);
        double xUnit = unit(laminate, still, none.with(xTerm, 1), chosen);
        double yUnit = unit(laminate, still, none.with(yTerm, 1), chosen);
        LaminateLoad x = none.with(xTerm, xUnit);
        LaminateLoad y = none.with(yTerm, yUnit);
        FailureRays tracer = new FailureRays(laminate, still, x, y, x.with(yTerm, yUnit), chosen);
        List<SurfacePoint> points = new ArrayList<>();
        for (int i = 0; i < rays && xUnit > 0 && yUnit > 0; i++) {
            double c = Math.cos(2 * Math.PI * i / rays);
            double s = Math.sin(2 * Math.PI * i / rays);
            Optional<PlyReserve> first = tracer.first(c, s);
            first.ifPresent(f -> points.add(new SurfacePoint(f.factor() * c * xUnit, f.factor() * s * yUnit, f)));
        }
        return new FailureSurface(xTerm, yTerm, points);
    }

    /** The failure value of a term alone, of either sign; 1 if it never fails, 0 if the constant load does. */
    private static double unit(Laminate laminate, LaminateLoad still, LaminateLoad term, Criterion chosen) {
        return FailureAnalysis.of(laminate, still, term)
                .firstPly(chosen)
                .or(() -> FailureAnalysis.of(laminate, still, term.times(-1)).firstPly(chosen))
                .map(PlyReserve::factor)
                .orElse(1.0);
    }

    private static void check(LaminateLoad constant, Term xTerm, Term yTerm, int rays) {
        if (rays < 1) {
            throw new IllegalArgumentException("a failure surface has at least one ray, was given " + rays);
        }
        if (xTerm == yTerm) {
            throw new IllegalArgumentException("the two terms must differ, were both " + xTerm);
        }
        for (Term term : List.of(xTerm, yTerm)) {
            if (constant.given().containsKey(term)) {
                throw new IllegalArgumentException(
                        term + " is a term of the surface and cannot be constant, was given as "
                                + constant.given().get(term));
            }
        }
    }
}
