package laminate.process;

/**
 * A planned value and how far the process may stray from it.
 *
 * @param planned the value planned with
 * @param least the least to reckon with
 * @param most the most to reckon with
 */
public record Range(double planned, double least, double most) {

    /** Nothing, exactly. */
    public static final Range ZERO = exactly(0);

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the values are not finite and in order
     */
    public Range {
        if (!(least <= planned && planned <= most) || Double.isInfinite(least) || Double.isInfinite(most)) {
            throw new IllegalArgumentException(
                    "a range must be in order, not " + least + " to " + planned + " to " + most);
        }
    }

    /**
     * A value that does not stray.
     *
     * @param value the value
     * @return the range
     */
    public static Range exactly(double value) {
        return new Range(value, value, value);
    }

    /**
     * The sum of two quantities that stray together, as those of one hand on one day do.
     *
     * @param other the other
     * @return the sum of each bound
     */
    public Range plus(Range other) {
        return new Range(planned + other.planned, least + other.least, most + other.most);
    }

    /**
     * This range multiplied.
     *
     * @param factor what to multiply by, not below zero
     * @return the range
     */
    public Range times(double factor) {
        return new Range(planned * factor, least * factor, most * factor);
    }

    /**
     * Whether a value lies inside.
     *
     * @param value a measured value
     * @return true if it is neither below the least nor above the most
     */
    public boolean contains(double value) {
        return value >= least && value <= most;
    }
}
