package laminate.order.cut;

import laminate.theory.Require;

/**
 * A free rectangle, whole and apart from all others.
 *
 * @param x distance from the left edge (m)
 * @param y distance from the start of the roll or sheet (m)
 * @param width size across (m)
 * @param length size along (m)
 */
public record Offcut(double x, double y, double width, double length) {
    /**
     * Checks the sizes.
     *
     * @param x distance from the left edge (m)
     * @param y distance from the start of the roll or sheet (m)
     * @param width size across (m)
     * @param length size along (m)
     * @throws IllegalArgumentException if a distance is negative, a size not positive, or any of them not finite
     */
    public Offcut {
        Require.notNegative("x of an offcut", x);
        Require.notNegative("y of an offcut", y);
        Require.positive("width of an offcut", width);
        Require.positive("length of an offcut", length);
    }

    /**
     * Its area.
     *
     * @return width times length (m²)
     */
    public double area() {
        return width * length;
    }
}
