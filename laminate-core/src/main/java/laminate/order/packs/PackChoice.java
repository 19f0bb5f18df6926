package laminate.order.packs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import laminate.unit.Money;

/**
 * The packs that are bought for a need.
 *
 * @param need what is needed, in the unit in which the material is sold
 * @param packs what is bought, the largest pack first; empty if nothing is needed
 * @param cost what all of it costs
 */
public record PackChoice(BigDecimal need, List<PackCount> packs, Money cost) {
    /**
     * Checks that the order does not fall short and that its sum is right.
     *
     * @param need what is needed
     * @param packs what is bought
     * @param cost what all of it costs
     * @throws IllegalArgumentException if the packs hold less than the need, or do not cost that
     */
    public PackChoice {
        packs = List.copyOf(packs);
        if (amount(packs).compareTo(need) < 0) {
            throw new IllegalArgumentException("packs of " + amount(packs).toPlainString()
                    + " in all fall short of a need of " + need.toPlainString());
        }
        Money sum = packs.stream().map(PackCount::cost).reduce(Money.zero(cost.currency()), Money::plus);
        if (sum.amount().compareTo(cost.amount()) != 0) {
            throw new IllegalArgumentException("packs that cost " + sum + " in all are said to cost " + cost);
        }
    }

    /**
     * What is bought in all.
     *
     * @return the amount, exact
     */
    public BigDecimal bought() {
        return amount(packs);
    }

    /**
     * What is bought above the need.
     *
     * @return the amount, from 0, exact
     */
    public BigDecimal surplus() {
        return bought().subtract(need);
    }

    /**
     * What the surplus has cost, at the mean price of all that is bought.
     *
     * @return cost times surplus over bought, rounded half-up to the currency's coins; zero if nothing is bought
     */
    public Money surplusValue() {
        return packs.isEmpty()
                ? Money.zero(cost.currency())
                : cost.times(surplus().divide(bought(), MathContext.DECIMAL64));
    }

    private static BigDecimal amount(List<PackCount> packs) {
        return packs.stream().map(PackCount::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
