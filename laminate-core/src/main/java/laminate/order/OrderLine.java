package laminate.order;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.order.packs.PackCount;
import laminate.theory.Require;
import laminate.unit.Money;
import laminate.unit.PriceBasis;

/**
 * One line of an order.
 *
 * @param need what is needed, and where it goes
 * @param measure the measure in which it is bought: kg, m², m, l or piece
 * @param amount what is needed in all (in the measure)
 * @param inStock what lies in the store and may be used for it (in the measure)
 * @param packs the packs to buy, the largest first; empty if nothing is bought or it is weighed or measured out
 * @param bought what is bought in all (in the measure)
 * @param cost what that costs, zero if nothing is bought; empty if there is no price
 * @param surplusValue what the surplus of the packs has cost, at the mean price of all that is bought
 * @param rolls the rolls or sheets, in stock and bought, that a plan of cutting takes from; empty without one
 * @param delivery when to order it, and how long it keeps
 */
public record OrderLine(
        Need need,
        PriceBasis measure,
        double amount,
        double inStock,
        List<PackCount> packs,
        double bought,
        Optional<Money> cost,
        Optional<Money> surplusValue,
        List<TakenRoll> rolls,
        Delivery delivery) {
    /** Needs are summed up in doubles, and packs are chosen for twelve digits of the sum. */
    private static final double ROUNDING = 1e-10;

    /**
     * Checks that the order does not fall short.
     *
     * @throws IllegalArgumentException if an amount is negative or not finite, or stock and packs are less than the need
     */
    public OrderLine {
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(surplusValue, "surplusValue");
        Objects.requireNonNull(delivery, "delivery");
        packs = List.copyOf(packs);
        rolls = List.copyOf(rolls);
        Require.notNegative("need of " + need.material(), amount);
        Require.notNegative("stock of " + need.material(), inStock);
        Require.notNegative("purchase of " + need.material(), bought);
        if (inStock + bought < amount * (1 - ROUNDING)) {
            throw new IllegalArgumentException("an order of " + bought + " " + measure + " of " + need.material()
                    + " beside " + inStock + " in stock falls short of a need of " + amount);
        }
    }

    /**
     * The name of what is ordered.
     *
     * @return the id of a material, or the name of an item
     */
    public String material() {
        return need.material();
    }

    /**
     * What the stock does not cover.
     *
     * @return need less stock (in the measure), from 0
     */
    public double shortfall() {
        return Math.max(0, amount - inStock);
    }

    /**
     * What is bought above the shortfall.
     *
     * @return the surplus (in the measure), from 0
     */
    public double surplus() {
        double surplus = bought - shortfall();
        return surplus > amount * ROUNDING ? surplus : 0;
    }
}
