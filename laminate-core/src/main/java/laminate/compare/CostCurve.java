package laminate.compare;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.quote.price.Mould;
import laminate.unit.Money;

/**
 * Cost against number of parts:
 *
 * <pre>
 *   cost(n) = S + M(ceil(n/L)) + n R/m
 * </pre>
 *
 * <p>with S the set-up, once whatever the number; M(k) what k moulds cost, with the plugs that these take, and L the parts
 * that a mould lasts; R what m parts cost in material, consumables, items and labour as estimated. The one more part is taken to cost what each of the m does: no
 * discount for quantity, no learning, consumables that are bought by the piece as for m. Exact; an amount is rounded half
 * up to the smallest coin once.
 *
 * @param setUp to set up once: time at the workshop's rate, and what is bought for it
 * @param mould the mould, borne by these parts alone; empty where no price of one is stated: it is there
 * @param running what the estimated parts cost without set-up and mould
 * @param mouldings how many parts were estimated
 */
public record CostCurve(Money setUp, Optional<Mould> mould, Money running, int mouldings) {
    /** No number of parts beyond this is looked at. */
    public static final int MOST_PARTS = 100_000;

    /**
     * A point of the curve.
     *
     * @param parts number of parts
     * @param total what they cost together, with set-up and moulds
     * @param each the same by part
     */
    public record Point(int parts, Money total, Money each) {}

    /**
     * Checks the figures.
     *
     * @param setUp to set up once
     * @param mould the mould
     * @param running what the estimated parts cost without set-up and mould
     * @param mouldings how many parts were estimated
     * @throws IllegalArgumentException if an amount is below zero, the currencies differ, or the number of parts is
     *     below one
     */
    public CostCurve {
        Objects.requireNonNull(mould, "mould");
        if (mouldings < 1) {
            throw new IllegalArgumentException("parts count from one, were " + mouldings);
        }
        Money first = mould.map(made -> made.cost(1)).orElse(Money.zero(setUp.currency()));
        for (Money amount : List.of(setUp, first, running, setUp.plus(first).plus(running))) {
            if (amount.amount().signum() < 0) {
                throw new IllegalArgumentException("a cost must not be below zero, was " + amount);
            }
        }
    }

    /**
     * What a number of parts costs, with set-up and moulds.
     *
     * @param parts from 1 to {@link #MOST_PARTS}
     * @return the total and that of each part
     * @throws IllegalArgumentException if the number is out of range
     */
    public Point at(int parts) {
        if (parts < 1 || parts > MOST_PARTS) {
            throw new IllegalArgumentException("parts must be from 1 to " + MOST_PARTS + ", not " + parts);
        }
        BigInteger coins = coinsTimesMouldings(parts);
        return new Point(parts, money(coins, 1), money(coins, parts));
    }

    /**
     * What each part costs once it is set up and the moulds are there.
     *
     * @return R/m, rounded half up to the smallest coin like every amount here
     */
    public Money each() {
        return money(coins(running), 1);
    }

    /**
     * The curve as data.
     *
     * @param counts numbers of parts, in any order
     * @return a point for each, in that order
     * @throws IllegalArgumentException if a number is out of range
     */
    public List<Point> at(Collection<Integer> counts) {
        return counts.stream().map(this::at).toList();
    }

    /**
     * How many parts a mould lasts.
     *
     * @return its life, empty for as many as are made
     */
    public OptionalInt life() {
        return mould.map(Mould::life).orElse(OptionalInt.empty());
    }

    /**
     * How many moulds a number of parts wears.
     *
     * @param parts number of parts
     * @return ceil(parts/life), 1 without a life
     */
    public int moulds(int parts) {
        return mould.map(made -> made.number(parts)).orElse(1);
    }

    /** What a number of parts costs times {@link #mouldings}, in the smallest coin: whole, so exact. */
    BigInteger coinsTimesMouldings(int parts) {
        Money moulds = mould.map(made -> made.cost(made.number(parts))).orElse(Money.zero(currency()));
        BigInteger once = coins(setUp).add(coins(moulds));
        return once.multiply(whole(mouldings)).add(coins(running).multiply(whole(parts)));
    }

    String currency() {
        return running.currency();
    }

    private Money money(BigInteger coinsTimesMouldings, int parts) {
        int digits = running.amount().scale();
        BigDecimal divisor = BigDecimal.valueOf((long) mouldings * parts);
        return new Money(
                new BigDecimal(coinsTimesMouldings, digits).divide(divisor, digits, RoundingMode.HALF_UP), currency());
    }

    static BigInteger coins(Money money) {
        return money.amount().unscaledValue();
    }

    private static BigInteger whole(int number) {
        return BigInteger.valueOf(number);
    }
}
