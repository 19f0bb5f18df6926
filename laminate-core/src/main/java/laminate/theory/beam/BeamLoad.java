package laminate.theory.beam;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.theory.Require;

/**
 * What loads a beam: any number of point loads and a uniform load over the whole span.
 *
 * @param points the point loads, sorted by position
 * @param uniform force per length of beam, over the whole width, positive towards +z (N/m)
 */
public record BeamLoad(List<PointLoad> points, double uniform) {
    /**
     * Checks the load and sorts its points.
     *
     * @param points the point loads, in any order
     * @param uniform force per length of beam, over the whole width, positive towards +z (N/m)
     * @throws IllegalArgumentException if the uniform load is not finite
     */
    public BeamLoad {
        points = points.stream()
                .sorted((one, other) -> Double.compare(one.position(), other.position()))
                .toList();
        Require.finite("uniform load", uniform);
    }

    /**
     * One force at a place.
     *
     * @param force total force, positive towards +z (N)
     * @param position distance from the start (m)
     * @return the load
     */
    public static BeamLoad at(double force, double position) {
        return new BeamLoad(List.of(new PointLoad(force, position)), 0);
    }

    /**
     * Three-point bending: one force at the middle of the span.
     *
     * @param force total force P (N)
     * @param span distance L between the supports (m)
     * @return the load
     */
    public static BeamLoad threePoint(double force, double span) {
        return at(force, Require.positive("span", span) / 2);
    }

    /**
     * Four-point bending: half the force at each of two points, symmetric about the middle.
     *
     * @param force total force P, P/2 at each point (N)
     * @param span distance L between the supports (m)
     * @param loadSpan distance between the two loads: L/2 for quarter-point, L/3 for third-point loading (m)
     * @return the load
     * @throws IllegalArgumentException if the load span is negative or longer than the span
     */
    public static BeamLoad fourPoint(double force, double span, double loadSpan) {
        Require.positive("span", span);
        if (!(loadSpan >= 0 && loadSpan <= span)) {
            throw new IllegalArgumentException("load span must lie from 0 to the span " + span + " m, was " + loadSpan);
        }
        double outer = (span - loadSpan) / 2;
        return at(force / 2, outer).plus(at(force / 2, span - outer));
    }

    /**
     * A uniform load over the whole span.
     *
     * @param perLength force per length of beam: pressure times width (N/m)
     * @return the load
     */
    public static BeamLoad uniform(double perLength) {
        return new BeamLoad(List.of(), perLength);
    }

    /**
     * Both loads together.
     *
     * @param other the other load
     * @return the sum
     */
    public BeamLoad plus(BeamLoad other) {
        return new BeamLoad(
                Stream.concat(points.stream(), other.points.stream()).toList(), uniform + other.uniform);
    }

    /**
     * A multiple of this load.
     *
     * @param factor the factor
     * @return every force times the factor
     */
    public BeamLoad times(double factor) {
        return new BeamLoad(
                points.stream()
                        .map(p -> new PointLoad(factor * p.force(), p.position()))
                        .toList(),
                factor * uniform);
    }

    /**
     * The load integrated n + 1 times from the start, Σ P ⟨x − a⟩ⁿ/n! + q xⁿ⁺¹/(n + 1)!: n = 0 is the force up to x,
     * a point load at x itself included.
     */
    double integral(int n, double x) {
        double sum = uniform * Math.pow(x, n + 1) / factorial(n + 1);
        for (PointLoad p : points) {
            if (p.position() <= x) {
                sum += p.force() * Math.pow(x - p.position(), n) / factorial(n);
            }
        }
        return sum;
    }

    private static int factorial(int n) {
        return IntStream.rangeClosed(2, n).reduce(1, (a, b) -> a * b);
    }
}
