package laminate.quote.price;

import java.math.BigDecimal;

/**
 * Pulls of others off a mould that is shared, in the order in which all take their turn. Sums are exact, so that they do not
 * depend on where one stands in the order.
 *
 * @param before pulls of those that come before, 0 or more
 * @param after pulls of those that come after, 0 or more
 */
public record OtherPulls(BigDecimal before, BigDecimal after) {

    /** A mould that is not shared. */
    public static final OtherPulls NONE = new OtherPulls(BigDecimal.ZERO, BigDecimal.ZERO);

    /**
     * Checks the pulls.
     *
     * @throws IllegalArgumentException if they are below zero
     */
    public OtherPulls {
        if (before.signum() < 0 || after.signum() < 0) {
            throw new IllegalArgumentException(
                    "pulls of others are zero or more, not " + before + " before and " + after + " after");
        }
    }
}
