package laminate.quote;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import laminate.estimate.PartEstimate;
import laminate.estimate.PriceList;
import laminate.order.Group;
import laminate.order.Order;
import laminate.order.OrderLine;
import laminate.order.Ordering;
import laminate.unit.Money;

/**
 * What the materials of a batch cost where whole packs are bought for it alone, nothing lies in stock, and what is left over
 * is not used again.
 *
 * @param prices the prices with the packs that materials are sold in
 */
public record WholePacks(PriceList prices) implements Function<PartEstimate, Money> {

    /** Consumables and items are lines of their own in a price. */
    private static final Set<Group> ELSEWHERE = Set.of(Group.CONSUMABLE, Group.ITEM);

    /** Checks that there are prices. */
    public WholePacks {
        Objects.requireNonNull(prices, "prices");
    }

    /**
     * The cost of the packs.
     *
     * @param batch the batch
     * @return the cost of all packs of all materials, each line rounded once
     * @throws IllegalArgumentException if a material has no price, or its packs hold less than is needed
     */
    @Override
    public Money apply(PartEstimate batch) {
        Order order = new Ordering(Optional.of(prices), List.of(), Optional.empty()).order(List.of(batch));
        Money sum = Money.zero(prices.currency());
        for (OrderLine line : order.lines()) {
            if (!ELSEWHERE.contains(line.need().group())) {
                sum = sum.plus(line.cost()
                        .orElseThrow(() -> new IllegalArgumentException(batch.part()
                                        .name() + ": " + line.material() + " has no price that it can be bought at")));
            }
        }
        return sum;
    }
}
