package laminate.theory;

/**
 * Three in-plane components of a stress, strain, curvature, resultant or expansion, in the order x, y, xy (or 1, 2,
 * 12 in the axes of a ply).
 *
 * <p>The third component of a strain, a curvature or an expansion is the engineering one: γxy = 2 εxy.
 *
 * @param x component along x (or 1)
 * @param y component along y (or 2)
 * @param xy shear component
 */
public record Vector3(double x, double y, double xy) {
    /** All components zero. */
    public static final Vector3 ZERO = new Vector3(0, 0, 0);

    /**
     * Checks the components.
     *
     * @param x component along x (or 1)
     * @param y component along y (or 2)
     * @param xy shear component
     * @throws IllegalArgumentException if one is not finite
     */
    public Vector3 {
        Require.finite("x component", x);
        Require.finite("y component", y);
        Require.finite("xy component", xy);
    }

    /**
     * The sum with another vector.
     *
     * @param other the vector to add
     * @return the sum, component by component
     */
    public Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, xy + other.xy);
    }

    /**
     * The difference to another vector.
     *
     * @param other the vector to subtract
     * @return the difference, component by component
     */
    public Vector3 minus(Vector3 other) {
        return new Vector3(x - other.x, y - other.y, xy - other.xy);
    }

    /**
     * A multiple of this vector.
     *
     * @param factor the factor
     * @return every component times the factor
     */
    public Vector3 times(double factor) {
        return new Vector3(x * factor, y * factor, xy * factor);
    }
}
