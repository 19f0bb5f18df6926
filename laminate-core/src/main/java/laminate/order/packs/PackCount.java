package laminate.order.packs;

import java.math.BigDecimal;
import java.util.Comparator;
import laminate.unit.Money;

/**
 * So many packs of a kind.
 *
 * @param pack the pack
 * @param count how many of it, from the least number that is sold
 */
public record PackCount(Pack pack, int count) {
    static final Comparator<PackCount> LARGEST_FIRST = Comparator.comparing(
                    (PackCount bought) -> bought.pack().amount())
            .reversed()
            .thenComparing(bought -> bought.pack().name());

    /**
     * Checks the count.
     *
     * @param pack the pack
     * @param count how many of it
     * @throws IllegalArgumentException if the count is below what is sold at least, or above what there is
     */
    public PackCount {
        if (count < pack.minimum() || count > pack.available().orElse(count)) {
            throw new IllegalArgumentException("pack " + pack.name() + " cannot be bought " + count + " times");
        }
    }

    /**
     * What is in all of them.
     *
     * @return the amount, exact
     */
    public BigDecimal amount() {
        return pack.amount().multiply(BigDecimal.valueOf(count));
    }

    /**
     * What all of them cost.
     *
     * @return the price, exact
     */
    public Money cost() {
        return pack.price().times(BigDecimal.valueOf(count));
    }
}
