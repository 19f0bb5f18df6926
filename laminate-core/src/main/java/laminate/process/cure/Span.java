package laminate.process.cure;

/**
 * From a least to a greatest value, both included.
 *
 * @param least the least value
 * @param most the greatest value
 */
public record Span(double least, double most) {
    /** Conversions between units lose the last digits of an edge; the edge must still be reached. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the values are not finite and in order
     */
    public Span {
        if (!(least <= most) || Double.isInfinite(least) || Double.isInfinite(most)) {
            throw new IllegalArgumentException("a span must be in order, not " + least + " to " + most);
        }
    }

    /**
     * Whether a value lies inside.
     *
     * @param value a value
     * @return true if it is neither below the least nor above the greatest, but for a rounding of 1e-9 of it
     */
    public boolean contains(double value) {
        double slack = ROUNDING * Math.abs(value);
        return value >= least - slack && value <= most + slack;
    }
}
