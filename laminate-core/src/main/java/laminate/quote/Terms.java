package laminate.quote;

import java.util.Objects;

/**
 * What a yard quotes by.
 *
 * @param pricing rates from cost to price
 * @param learning how the time falls as the same moulding is made again
 * @param paid paid hours for an hour of work: breaks, cleaning up and waiting are paid too
 */
public record Terms(Pricing pricing, LearningCurve learning, double paid) {

    /** Nothing on top of the cost, no learning, every paid hour worked. */
    public static final Terms AT_COST = new Terms(Pricing.AT_COST, LearningCurve.NONE, 1);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if less is paid than worked
     */
    public Terms {
        Objects.requireNonNull(pricing, "pricing");
        Objects.requireNonNull(learning, "learning");
        if (!(paid >= 1) || !Double.isFinite(paid)) {
            throw new IllegalArgumentException("an hour of work is paid once or more, not " + paid + " times");
        }
    }
}
