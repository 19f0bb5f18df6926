package laminate.quote.price;

import java.util.OptionalInt;
import java.util.function.IntFunction;
import laminate.unit.Money;

/** What a price earns: by the hour, and from which number of mouldings on. */
public final class Returns {

    private Returns() {}

    /**
     * What an hour of work earns, if it were paid with all that is left when what is bought is paid:
     * (net − materials, consumables and items with those of rejects − share of moulds)/hours with those of rejects.
     * Labour, overhead, contingency and profit are in it.
     *
     * @param price the price of a batch
     * @param pricing the rates it was made by
     * @return money for an hour, below zero where materials alone cost more than the price
     * @throws IllegalArgumentException if the batch takes no time
     */
    public static Money byHour(BatchPrice price, Pricing pricing) {
        DirectCost direct = price.direct();
        if (direct.time() == 0) {
            throw new IllegalArgumentException("a batch that takes no time earns nothing by the hour");
        }
        double pulled = 1 / (1 - pricing.rejects());
        Money bought = direct.materials().plus(direct.consumables()).plus(direct.items());
        Money left =
                price.net().plus(bought.times(-pulled)).plus(price.mouldShare().times(-1));
        return left.times(1 / (direct.hours() * pulled));
    }

    /**
     * The first number of mouldings whose price covers their cost.
     *
     * @param each net price of one moulding
     * @param cost what a number of mouldings costs the yard, moulds included
     * @param most the greatest number looked at
     * @return the number, empty if none up to the greatest covers it
     */
    public static OptionalInt breakEven(Money each, IntFunction<Money> cost, int most) {
        for (int count = 1; count <= most; count++) {
            if (each.times(count).amount().compareTo(cost.apply(count).amount()) >= 0) {
                return OptionalInt.of(count);
            }
        }
        return OptionalInt.empty();
    }
}
