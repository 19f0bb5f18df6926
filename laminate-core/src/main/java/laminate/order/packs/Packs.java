package laminate.order.packs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import laminate.theory.Require;
import laminate.unit.Money;

/**
 * The packs in which a material is sold.
 *
 * @param packs the packs, all priced in one currency
 * @param minimum the least amount that is sold at all, in the unit of the packs; 0 if there is none
 */
public record Packs(List<Pack> packs, BigDecimal minimum) {
    /** A need that was summed up in doubles is wrong beyond these digits: no drum is bought for the rest. */
    private static final MathContext DIGITS_OF_SUM = new MathContext(12);

    /**
     * Checks the packs.
     *
     * @param packs the packs
     * @param minimum the least amount that is sold at all
     * @throws IllegalArgumentException if there are none, in several currencies, or the minimum is negative
     */
    public Packs {
        packs = List.copyOf(packs);
        if (packs.isEmpty()) {
            throw new IllegalArgumentException("a material is sold in at least one pack; none was given");
        }
        if (packs.stream().map(pack -> pack.price().currency()).distinct().count() > 1) {
            throw new IllegalArgumentException("packs of a material are priced in one currency, not " + packs);
        }
        if (minimum.signum() < 0) {
            throw new IllegalArgumentException("a minimum order is 0 or more, was " + minimum.toPlainString());
        }
    }

    /**
     * Packs without a minimum order.
     *
     * @param packs the packs
     * @return the packs
     * @throws IllegalArgumentException if there are none or in several currencies
     */
    public static Packs of(List<Pack> packs) {
        return new Packs(packs, BigDecimal.ZERO);
    }

    /**
     * The packs that cover a need at the least cost there is. Of choices that cost the same, the one that holds more, and
     * then the one of fewer packs, is taken. Nothing is bought for a need of 0, minimum order or not.
     *
     * @param need what is needed, in the unit of the packs
     * @return the choice, never short of the need
     * @throws IllegalArgumentException if the need is negative, or more than all packs that there are
     */
    public PackChoice cheapest(BigDecimal need) {
        if (need.signum() < 0) {
            throw new IllegalArgumentException("a need is 0 or more, was " + need.toPlainString());
        }
        if (need.signum() == 0) {
            return new PackChoice(
                    need, List.of(), Money.zero(packs.get(0).price().currency()));
        }
        return choice(need, new PackSearch(packs, need.max(minimum)).cheapest());
    }

    private PackChoice choice(BigDecimal need, List<PackCount> chosen) {
        Money nothing = Money.zero(packs.get(0).price().currency());
        return new PackChoice(
                need,
                chosen,
                chosen.stream().map(PackCount::cost).reduce(Money::plus).orElse(nothing));
    }

    /**
     * Packs that have been chosen, for a need that was computed and that they may miss by its rounding.
     *
     * @param need what is needed, in the unit of the packs, taken to 12 significant digits; no more than the packs hold
     * @param chosen the packs
     * @return the choice
     * @throws IllegalArgumentException if the need is negative or not finite
     */
    public PackChoice choice(double need, List<PackCount> chosen) {
        Require.notNegative("need", need);
        BigDecimal held = chosen.stream().map(PackCount::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
        return choice(new BigDecimal(need).round(DIGITS_OF_SUM).min(held), chosen);
    }

    /**
     * The packs that cover a need and serve besides, as rolls that are long enough do, at the least cost there is; only
     * where that takes very many packs, of one kind and maybe not the cheapest.
     *
     * @param need what is needed, in the unit of the packs, taken to 12 significant digits
     * @param serves whether packs serve; if they do, so do more of them
     * @return the choice, never short of the need
     * @throws IllegalArgumentException if the need is negative or not finite, or no packs serve
     */
    public PackChoice cheapest(double need, Predicate<List<PackCount>> serves) {
        PackChoice covering = cheapest(need);
        if (serves.test(covering.packs())) {
            return covering;
        }
        return new PackEnumeration(packs, covering.need().max(minimum), serves)
                .cheapest()
                .map(chosen -> choice(covering.need(), chosen))
                .orElseThrow(() -> new IllegalArgumentException("no number of these packs serves: "
                        + packs.stream().map(Pack::name).collect(Collectors.joining(", "))));
    }

    /**
     * The same for a need that was computed, taken to 12 significant digits.
     *
     * @param need what is needed, in the unit of the packs
     * @return the choice
     * @throws IllegalArgumentException if the need is negative or not finite, or more than all packs that there are
     */
    public PackChoice cheapest(double need) {
        if (!Double.isFinite(need)) {
            throw new IllegalArgumentException("a need is a finite number, was " + need);
        }
        return cheapest(new BigDecimal(need).round(DIGITS_OF_SUM));
    }
}
