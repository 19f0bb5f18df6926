package laminate.quote.price;

/**
 * What is added to the cost to make the price, told as the yard is used to tell it.
 *
 * <p>Of a cost C: with the margin m the price is C/(1 − m), with the mark-up u it is C·(1 + u), so that u = m/(1 − m) and
 * m = u/(1 + u). A margin of 25 % is a mark-up of 33.3 %.
 */
public sealed interface Profit {

    /** No profit: the price is the cost. */
    Profit NONE = new MarkUp(0);

    /**
     * The profit as a share of the price.
     *
     * @return m
     */
    double margin();

    /**
     * The profit as a share of the cost.
     *
     * @return u
     */
    double markUp();

    /**
     * A profit told as a share of the price.
     *
     * @param margin m, from 0 to below 1
     */
    record Margin(double margin) implements Profit {
        /**
         * Checks the share.
         *
         * @throws IllegalArgumentException if it is not from 0 to below 1
         */
        public Margin {
            Shares.checkBelowOne("a margin", margin);
        }

        @Override
        public double markUp() {
            return margin / (1 - margin);
        }
    }

    /**
     * A profit told as a share of the cost.
     *
     * @param markUp u, 0 or more
     */
    record MarkUp(double markUp) implements Profit {
        /**
         * Checks the share.
         *
         * @throws IllegalArgumentException if it is below zero or not finite
         */
        public MarkUp {
            Shares.checkNotNegative("a mark-up", markUp);
        }

        @Override
        public double margin() {
            return markUp / (1 + markUp);
        }
    }
}
