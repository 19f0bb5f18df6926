package laminate.order.cut;

/**
 * Lengths as whole steps, so that sizes that fill the width on paper fill it here.
 *
 * <p>A step is a power of ten, at most a thousand-millionth of the stock's width (a nanometre on a roll of 1.27 m),
 * so that decimals are exact. A size between two steps counts as the lower one: three thirds of a width fit side by
 * side, and a piece is placed at most one step too close to its neighbour.
 */
final class Grid {
    /** A size that a double holds a hair below a step counts as that step. */
    private static final double HAIR = 1e-3;

    private static final int DIGITS = 9;
    private static final double MOST_STEPS = 1e14;

    private final double stepsPerMetre;

    private Grid(double stepsPerMetre) {
        this.stepsPerMetre = stepsPerMetre;
    }

    /** The grid for a stock of that width (m). */
    static Grid of(double width) {
        return new Grid(StrictMath.pow(10, DIGITS - Math.floor(StrictMath.log10(width))));
    }

    /**
     * A length (m) in steps.
     *
     * @throws IllegalArgumentException if it is less than a step or beyond counting
     */
    long steps(String name, double length) {
        double steps = length * stepsPerMetre;
        if (!(steps >= 1 && steps < MOST_STEPS)) {
            throw new IllegalArgumentException(
                    name + " is " + length + " m, out of all proportion to the width it is cut from; check its unit");
        }
        return (long) Math.floor(steps + HAIR);
    }

    /** The least whole number of steps, from 1, that reaches a length (m). */
    long stepsAtLeast(double length) {
        return (long) Math.max(1, Math.ceil(length * stepsPerMetre - HAIR));
    }

    /** Steps as a length (m). */
    double metres(long steps) {
        return steps / stepsPerMetre;
    }
}
