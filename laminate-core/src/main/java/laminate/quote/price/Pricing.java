package laminate.quote.price;

import java.util.Objects;
import java.util.Optional;

/**
 * The rates by which a yard makes a price from a cost.
 *
 * @param rejects share p of all mouldings pulled that cannot be sold: n good ones ask for n/(1 − p) pulls
 * @param overhead the yard's overhead
 * @param contingency for what is not foreseen, as a share of all costs
 * @param profit margin or mark-up
 * @param discount what the customer is let off, as a share of the price with profit
 * @param tax the tax on the net price, empty where none is due
 */
public record Pricing(
        double rejects, Overhead overhead, double contingency, Profit profit, double discount, Optional<Tax> tax) {

    /** Nothing on top of the cost. */
    public static final Pricing AT_COST = new Pricing(0, Overhead.NONE, 0, Profit.NONE, 0, Optional.empty());

    /**
     * Checks the rates.
     *
     * @throws IllegalArgumentException if a share is out of its range
     */
    public Pricing {
        Objects.requireNonNull(overhead, "overhead");
        Objects.requireNonNull(profit, "profit");
        Objects.requireNonNull(tax, "tax");
        Shares.checkBelowOne("the share of rejects", rejects);
        Shares.checkNotNegative("a contingency", contingency);
        Shares.checkBelowOne("a discount", discount);
    }

    /**
     * This pricing at another share of rejects.
     *
     * @param share the share p
     * @return the pricing
     */
    public Pricing withRejects(double share) {
        return new Pricing(share, overhead, contingency, profit, discount, tax);
    }

    /**
     * This pricing with another overhead.
     *
     * @param other the overhead
     * @return the pricing
     */
    public Pricing withOverhead(Overhead other) {
        return new Pricing(rejects, other, contingency, profit, discount, tax);
    }

    /**
     * This pricing with another contingency.
     *
     * @param share the share of all costs
     * @return the pricing
     */
    public Pricing withContingency(double share) {
        return new Pricing(rejects, overhead, share, profit, discount, tax);
    }

    /**
     * This pricing with another profit.
     *
     * @param other margin or mark-up
     * @return the pricing
     */
    public Pricing withProfit(Profit other) {
        return new Pricing(rejects, overhead, contingency, other, discount, tax);
    }

    /**
     * The rates by which a yard reckons what a mould or plug of its own costs: overhead alone. One is made, and made good;
     * contingency and profit are reckoned on the moulding that bears its share, once.
     *
     * @return the pricing at works cost
     */
    public Pricing atWorks() {
        return new Pricing(0, overhead, 0, Profit.NONE, 0, Optional.empty());
    }

    /**
     * Mouldings to pull for a number of good ones, on the average: n/(1 − p).
     *
     * @param good good mouldings n
     * @return pulls, not a whole number
     */
    public double pulls(int good) {
        return good / (1 - rejects);
    }
}
