package laminate.part;

/**
 * A margin that is moulded and trimmed off: it adds material and time, not finished weight.
 *
 * @param edge length of the trimmed edge (m)
 * @param width width of the margin (m)
 */
public record Trim(double edge, double width) {

    /**
     * Checks the margin.
     *
     * @throws IllegalArgumentException if a length is not above zero and finite
     */
    public Trim {
        if (!(edge > 0 && width > 0) || !Double.isFinite(edge) || !Double.isFinite(width)) {
            throw new IllegalArgumentException(
                    "a trimmed edge needs a length and a width above zero, not " + edge + " m and " + width + " m");
        }
    }

    /**
     * Area of the margin.
     *
     * @return edge times width (m²)
     */
    public double area() {
        return edge * width;
    }
}
