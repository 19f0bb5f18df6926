package laminate.part;

/**
 * The outline of a zone, unrolled flat: its size along x and along y, and how much of that rectangle it fills.
 *
 * @param length its greatest size along x (m)
 * @param width its greatest size along y (m)
 * @param shapeFactor its area over that of the rectangle, above 0 and up to 1
 */
public record Outline(double length, double width, double shapeFactor) {
    /** By how much of itself an area that is stated may differ from that of its outline. */
    static final double TOLERANCE = 0.005;

    /**
     * Checks the outline.
     *
     * @throws IllegalArgumentException if a size is not above zero and finite, or the shape factor not from above 0 to 1
     */
    public Outline {
        if (!(length > 0 && width > 0) || !Double.isFinite(length) || !Double.isFinite(width)) {
            throw new IllegalArgumentException(
                    "an outline needs a length and a width above zero, not " + length + " m and " + width + " m");
        }
        if (!(shapeFactor > 0 && shapeFactor <= 1)) {
            throw new IllegalArgumentException("a shape factor is above 0 and up to 1, not " + shapeFactor);
        }
    }

    /**
     * Area of the outline.
     *
     * @return length times width times shape factor (m²)
     */
    public double area() {
        return length * width * shapeFactor;
    }

    /**
     * Whether an area is that of this outline.
     *
     * @param area the area (m²)
     * @return true if it is within half a per cent
     */
    public boolean isOf(double area) {
        return Math.abs(area() - area) <= TOLERANCE * area;
    }

    /**
     * The outline with a margin all round.
     *
     * @param margin width of the margin (m), from 0
     * @return the rectangle about outline and margin, as full as before
     */
    public Outline grownBy(double margin) {
        return new Outline(length + 2 * margin, width + 2 * margin, shapeFactor);
    }
}
