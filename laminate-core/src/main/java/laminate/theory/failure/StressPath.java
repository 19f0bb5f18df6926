package laminate.theory.failure;

import java.util.Objects;
import laminate.theory.ShearStress;
import laminate.theory.Vector3;

/**
 * Stress at a point as the load grows: σ(R) = constant + R growing, and through the thickness with R² besides.
 *
 * @param constant what is there without mechanical load, such as residual stress
 * @param growing stress of the mechanical load
 * @param secondOrder normal stress that grows with the square of the load (Pa), see {@link CoreFailure#crushing}
 */
public record StressPath(StressState constant, StressState growing, double secondOrder) {
    /**
     * Checks the path.
     *
     * @param constant what is there without mechanical load, such as residual stress
     * @param growing stress of the mechanical load
     * @param secondOrder normal stress that grows with the square of the load (Pa)
     * @throws IllegalArgumentException if the second-order stress is not finite
     */
    public StressPath {
        Objects.requireNonNull(constant, "constant");
        Objects.requireNonNull(growing, "growing");
        if (!Double.isFinite(secondOrder)) {
            throw new IllegalArgumentException("second-order stress must be a finite number, was " + secondOrder);
        }
    }

    /**
     * A stress in the plane that grows from nothing.
     *
     * @param growing σ1, σ2, τ12 of the load (Pa)
     * @return the path
     */
    public static StressPath of(Vector3 growing) {
        return of(growing, Vector3.ZERO);
    }

    /**
     * A stress in the plane that grows from a residual one.
     *
     * @param growing σ1, σ2, τ12 of the load (Pa)
     * @param residual σ1, σ2, τ12 without load (Pa)
     * @return the path
     */
    public static StressPath of(Vector3 growing, Vector3 residual) {
        return new StressPath(StressState.of(residual), StressState.of(growing), 0);
    }

    /**
     * The stress at a load factor.
     *
     * @param factor R
     * @return σ(R)
     * @throws IllegalArgumentException if it is no longer finite
     */
    public StressState at(double factor) {
        return new StressState(
                inPlane(factor),
                constant.across().plus(growing.across().times(factor)),
                constant.normal() + factor * (growing.normal() + factor * secondOrder));
    }

    /** The largest stress of the load (Pa), 0 without any. */
    double size() {
        Vector3 s = growing.inPlane();
        double plane = Math.max(Math.max(Math.abs(s.x()), Math.abs(s.y())), Math.abs(s.xy()));
        double across = Math.max(
                Math.abs(growing.across().xz()), Math.abs(growing.across().yz()));
        double normal = Math.max(Math.abs(growing.normal()), Math.sqrt(Math.abs(secondOrder)));
        return Math.max(Math.max(plane, across), normal);
    }

    /** The path of the same direction whose load is a part of this one, so that squares neither overflow nor vanish. */
    StressPath dividedBy(double size) {
        Vector3 s = growing.inPlane();
        StressState part = new StressState(
                new Vector3(s.x() / size, s.y() / size, s.xy() / size),
                new ShearStress(growing.across().xz() / size, growing.across().yz() / size),
                growing.normal() / size);
        return new StressPath(constant, part, secondOrder / size / size);
    }

    /** The path of c times the load of this and s times that of another; {@code both} is that of the two at once. */
    StressPath combined(double c, StressPath other, double s, StressPath both) {
        StressState one = growing;
        StressState two = other.growing;
        StressState sum = new StressState(
                one.inPlane().times(c).plus(two.inPlane().times(s)),
                one.across().times(c).plus(two.across().times(s)),
                c * one.normal() + s * two.normal());
        double mixed = both.secondOrder - secondOrder - other.secondOrder;
        return new StressPath(constant, sum, c * c * secondOrder + s * s * other.secondOrder + c * s * mixed);
    }

    Vector3 inPlane(double factor) {
        return constant.inPlane().plus(growing.inPlane().times(factor));
    }
}
