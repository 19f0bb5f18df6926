package laminate.theory.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import laminate.theory.Require;

/**
 * Moment, shear force and deflection of a beam under a load, exact for the theory of the package.
 *
 * <p>With Iₙ(x) the load integrated n + 1 times from the start (Timoshenko and Gere 1972, Macaulay's brackets):
 *
 * <pre>
 *   V = V0 − I0                                     w = wb + ws
 *   M = M0 + V0 x − I1                              ws = (M − M0)/S
 *   wb = θ0 x − (M0 x²/2 + V0 x³/6 − I3)/EI
 * </pre>
 */
public final class BeamResponse {
    /** A peak within a field must beat one at a load or support by more than rounding. */
    private static final double BY_MORE_THAN_ROUNDING = 1 + 1e-12;

    private final Beam beam;
    private final BeamLoad load;
    private final Supports.Start start;

    BeamResponse(Beam beam, BeamLoad load) {
        this.beam = beam;
        this.load = load;
        start = beam.supports().start(beam.section(), beam.span(), load);
    }

    /**
     * The beam.
     *
     * @return the beam
     */
    public Beam beam() {
        return beam;
    }

    /**
     * The load.
     *
     * @return the load
     */
    public BeamLoad load() {
        return load;
    }

    /**
     * Moment M.
     *
     * @param x distance from the start (m)
     * @return M over the whole width, positive with tension towards +z (N·m)
     * @throws IllegalArgumentException if x lies beyond the beam
     */
    public double momentAt(double x) {
        return Require.finite("moment", moment(checked(x)));
    }

    /**
     * Shear force V = M'; at a point load the value just after it, at the end of the beam the value just before.
     *
     * @param x distance from the start (m)
     * @return V over the whole width (N)
     * @throws IllegalArgumentException if x lies beyond the beam
     */
    public double shearForceAt(double x) {
        return Require.finite("shear force", checked(x) == beam.span() ? shearBefore(x) : shearAfter(x));
    }

    /**
     * Deflection w with its parts.
     *
     * @param x distance from the start (m)
     * @return the deflection, positive towards +z
     * @throws IllegalArgumentException if x lies beyond the beam
     */
    public Deflection deflectionAt(double x) {
        return deflection(checked(x));
    }

    /**
     * Where the deflection is largest by magnitude, to rounding.
     *
     * @return the deflection there with its parts
     */
    public Deflection largestDeflection() {
        return deflection(
                peak(x -> deflection(x).total(), this::placesOfNoSlope).x());
    }

    /**
     * The largest moment by magnitude.
     *
     * @return place and moment (N·m)
     */
    public Peak largestMoment() {
        return peak(this::moment, this::placeOfNoShear);
    }

    /**
     * The largest shear force by magnitude; where it jumps, the larger side counts.
     *
     * @return place and shear force (N)
     */
    public Peak largestShearForce() {
        double[] fields = fields();
        Peak peak = new Peak(0, 0);
        for (int i = 0; i + 1 < fields.length; i++) {
            peak = larger(peak, new Peak(fields[i], shearAfter(fields[i])));
            peak = larger(peak, new Peak(fields[i + 1], shearBefore(fields[i + 1])));
        }
        return peak;
    }

    /**
     * The force with which the support at the start holds against the load.
     *
     * @return the reaction, positive towards −z (N)
     */
    public double startReaction() {
        return start.shearForce();
    }

    /**
     * The force with which the support at the end holds against the load; 0 at a free end.
     *
     * @return the reaction, positive towards −z (N)
     */
    public double endReaction() {
        return beam.supports() == Supports.CANTILEVER
                ? 0
                : Require.finite("reaction", load.integral(0, beam.span()) - start.shearForce());
    }

    private double checked(double x) {
        if (!(x >= 0 && x <= beam.span())) {
            throw new IllegalArgumentException("x must lie from 0 to the span " + beam.span() + " m, was " + x);
        }
        return x;
    }

    private double moment(double x) {
        return start.moment() + start.shearForce() * x - load.integral(1, x);
    }

    private double shearAfter(double x) {
        return start.shearForce() - load.integral(0, x);
    }

    private double shearBefore(double x) {
        double here = load.points().stream()
                .filter(p -> p.position() == x)
                .mapToDouble(PointLoad::force)
                .sum();
        return shearAfter(x) + here;
    }

    private Deflection deflection(double x) {
        double bent = start.moment() * x * x / 2 + start.shearForce() * x * x * x / 6 - load.integral(3, x);
        return new Deflection(
                x,
                start.slope() * x - bent / beam.section().bendingStiffness(),
                (moment(x) - start.moment()) * beam.section().shearCompliance());
    }

    /** w' after any point load at x. */
    private double slope(double x) {
        double turned = start.moment() * x + start.shearForce() * x * x / 2 - load.integral(2, x);
        return start.slope()
                - turned / beam.section().bendingStiffness()
                + shearAfter(x) * beam.section().shearCompliance();
    }

    /** Starts of the fields between point loads, and the end of the beam. */
    private double[] fields() {
        DoubleStream loads = load.points().stream().mapToDouble(PointLoad::position);
        return DoubleStream.concat(DoubleStream.of(0, beam.span()), loads)
                .sorted()
                .distinct()
                .toArray();
    }

    private interface Inside {
        /** Candidates between two ends of a field. */
        List<Double> of(double from, double to);
    }

    private Peak peak(DoubleUnaryOperator value, Inside inside) {
        double[] fields = fields();
        Peak peak = new Peak(0, value.applyAsDouble(0));
        for (double x : fields) {
            peak = larger(peak, new Peak(x, value.applyAsDouble(x)));
        }
        for (int i = 0; i + 1 < fields.length; i++) {
            for (double x : inside.of(fields[i], fields[i + 1])) {
                peak = larger(peak, new Peak(x, value.applyAsDouble(x)));
            }
        }
        return peak;
    }

    private static Peak larger(Peak one, Peak other) {
        return Math.abs(other.value()) > BY_MORE_THAN_ROUNDING * Math.abs(one.value()) ? other : one;
    }

    private List<Double> placeOfNoShear(double from, double to) {
        double s = shearAfter(from) / load.uniform();
        return s > 0 && s < to - from ? List.of(from + s) : List.of();
    }

    /** w' is monotone between the roots of w'' = −M/EI − q/S, a quadratic in each field. */
    private List<Double> placesOfNoSlope(double from, double to) {
        double f = beam.section().bendingStiffness() * beam.section().shearCompliance();
        List<Double> ends = new ArrayList<>(List.of(from));
        for (double s : roots(moment(from) + load.uniform() * f, shearAfter(from), -load.uniform() / 2)) {
            if (s > 0 && s < to - from) {
                ends.add(from + s);
            }
        }
        ends.add(Math.nextDown(to));
        List<Double> places = new ArrayList<>();
        for (int i = 0; i + 1 < ends.size(); i++) {
            if (slope(ends.get(i)) * slope(ends.get(i + 1)) < 0) {
                places.add(bisect(ends.get(i), ends.get(i + 1)));
            }
        }
        return places;
    }

    /** Real roots of c + b s + a s² in rising order, without cancellation. */
    private static double[] roots(double c, double b, double a) {
        double discriminant = b * b - 4 * a * c;
        if (discriminant < 0) {
            return new double[0];
        }
        double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
        return DoubleStream.of(q / a, c / q).filter(Double::isFinite).sorted().toArray();
    }

    private double bisect(double from, double to) {
        double sign = Math.signum(slope(from));
        double low = from;
        double high = to;
        for (double mid = (low + high) / 2; mid > low && mid < high; mid = (low + high) / 2) {
            if (Math.signum(slope(mid)) == sign) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return low;
    }
}
