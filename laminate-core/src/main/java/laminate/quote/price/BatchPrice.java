package laminate.quote.price;

import laminate.unit.Money;

/**
 * The price of a batch, line by line. Every amount is for the whole batch but {@code unitNet}.
 *
 * @param direct what the good mouldings cost directly
 * @param rejects what those that cannot be sold cost: direct cost·p/(1 − p)
 * @param overhead rate times base, the base with what rejects add to it
 * @param mouldShare what the pulls bear of moulds and plugs
 * @param contingency share of all the above
 * @param margin what makes the price of the cost, told as an amount
 * @param discount what the customer is let off, taken from the price
 * @param net cost + margin − discount, the sum of the lines above
 * @param tax tax on net
 * @param gross net + tax
 * @param unitNet net for one moulding
 * @param marginAfterDiscount (net − cost)/net; below zero where the discount eats more than the margin, 0 for a price of 0
 */
public record BatchPrice(
        DirectCost direct,
        Money rejects,
        Money overhead,
        Money mouldShare,
        Money contingency,
        Money margin,
        Money discount,
        Money net,
        Money tax,
        Money gross,
        Money unitNet,
        double marginAfterDiscount) {

    /**
     * All that the batch costs the yard.
     *
     * @return direct cost + rejects + overhead + share of moulds + contingency
     */
    public Money cost() {
        return direct.total().plus(rejects).plus(overhead).plus(mouldShare).plus(contingency);
    }
}
