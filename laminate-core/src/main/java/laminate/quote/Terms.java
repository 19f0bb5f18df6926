package laminate.quote;

import java.util.Objects;
import laminate.quote.price.Pricing;

/**
 * What a yard quotes by.
 *
 * @param pricing rates from cost to price
 * @param learning how the time falls as the same moulding is made again
 * @param paid paid hours for an hour of work: breaks, cleaning up and waiting are paid too; usually 1.15 to 1.25 (from
 *     memory)
 * @param cure how long a moulding stays in its mould with nobody at it (s): nobody is paid for it, but the mould is taken
 */
public record Terms(Pricing pricing, LearningCurve learning, double paid, double cure) {

    /** Nothing on top of the cost, no learning, every paid hour worked, and no cure waited for. */
    public static final Terms AT_COST = new Terms(Pricing.AT_COST, LearningCurve.NONE, 1, 0);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if less is paid than worked, or the cure takes less than no time
     */
    public Terms {
        Objects.requireNonNull(pricing, "pricing");
        Objects.requireNonNull(learning, "learning");
        if (!(paid >= 1) || !Double.isFinite(paid)) {
            throw new IllegalArgumentException("an hour of work is paid once or more, not " + paid + " times");
        }
        if (!(cure >= 0) || !Double.isFinite(cure)) {
            throw new IllegalArgumentException("a cure takes zero or more, not " + cure + " s");
        }
    }

    /**
     * What is paid for work.
     *
     * @param setUp time that is spent once for a batch (s)
     * @param each time for one moulding as the workshop counts it (s)
     * @param count how many are made
     * @return paid time of all hands on the batch (s)
     */
    public double paidTime(double setUp, double each, int count) {
        return paid * (setUp + each * learning.totalOf(count));
    }
}
