package laminate.quote.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import laminate.unit.Money;

/**
 * A mould, or a plug, and how its cost is shared among what is pulled off it.
 *
 * <p>For N pulls k = ⌈N/life⌉ moulds are made, each at works cost, without profit; a pull bears the N-th part of them. N is
 * the pulls T of all that is made on the mould, or those that are planned, if these are more: past the plan, and where no
 * number is planned, the batch that is priced bears all the moulds it needs. Rejects are pulls too. The k moulds are
 * themselves the pulls of what they are made on, the plug, and bear its cost in the same manner: one plug serves all moulds
 * that it lasts for, whatever is made on them.
 *
 * <p>Those that share a mould stand in an order. With b pulls before it and n of its own, and C the cost of all moulds, one
 * bears round(C·(b + n)/N) − round(C·b/N), so that together they bear round(C·T/N), to the coin.
 *
 * <p>Worked by hand: a set of one lid and two hatches off one mould that costs 200 and lasts 6 pulls, off a plug at 120 that
 * lasts 2 moulds; no rejects. Five sets are N = 15 pulls, k = 3 moulds off 2 plugs: C = 3·200 + 2·120 = 840. The 5 lids bear
 * round(840·5/15) = 280, the 10 hatches 840 − 280 = 560. With 20 pulls planned 4 moulds and 2 plugs are made, C = 1040; the
 * lids bear round(1040·5/20) = 260, the hatches round(1040·15/20) − 260 = 520, and 260 is left for pulls to come.
 *
 * @param name what it is
 * @param worksCost what making one costs the yard, or its price, without its share of what it is made on
 * @param life pulls that one lasts, empty where not stated: then one is enough
 * @param plannedPulls pulls over which the moulds are to be paid off, empty for those of the batch
 * @param madeOn what it is made on: the plug
 * @param others pulls of others off it, which stay the same when the pulls of what is priced are other than thought
 */
public record Mould(
        String name,
        Money worksCost,
        OptionalInt life,
        OptionalInt plannedPulls,
        List<Mould> madeOn,
        OtherPulls others) {

    /** What sums leave over a whole number of moulds or pulls does not ask for one more. */
    private static final double SLACK = 1e-9;

    /**
     * Checks life and pulls.
     *
     * @throws IllegalArgumentException if life or pulls are below one
     */
    public Mould {
        Objects.requireNonNull(worksCost, "worksCost");
        Objects.requireNonNull(others, "others");
        madeOn = List.copyOf(madeOn);
        if (life.orElse(1) < 1 || plannedPulls.orElse(1) < 1) {
            throw new IllegalArgumentException(name + ": life and planned pulls must be one or more, not "
                    + life.orElse(1) + ", " + plannedPulls.orElse(1));
        }
    }

    /**
     * A mould that is made on nothing of the yard's, or bought, and not shared.
     *
     * @param name what it is
     * @param worksCost what one costs
     * @param life pulls that one lasts, empty where not stated
     * @param plannedPulls pulls over which the moulds are to be paid off, empty for those of the batch
     * @throws IllegalArgumentException if life or pulls are below one
     */
    public Mould(String name, Money worksCost, OptionalInt life, OptionalInt plannedPulls) {
        this(name, worksCost, life, plannedPulls, List.of(), OtherPulls.NONE);
    }

    /**
     * This mould, and what it is made on, at a multiple of the cost.
     *
     * @param factor any number from 0 up
     * @return the mould
     */
    public Mould times(double factor) {
        List<Mould> below = madeOn.stream().map(plug -> plug.times(factor)).toList();
        return new Mould(name, worksCost.times(factor), life, plannedPulls, below, others);
    }

    /**
     * This mould, and what it is made on, paid off by this batch with its other pulls.
     *
     * @return the mould without planned pulls
     */
    public Mould unplanned() {
        List<Mould> below = madeOn.stream().map(Mould::unplanned).toList();
        return new Mould(name, worksCost, life, OptionalInt.empty(), below, others);
    }

    /**
     * This mould as it is shared with others.
     *
     * @param sharing pulls of others off it
     * @return the mould
     */
    public Mould among(OtherPulls sharing) {
        return new Mould(name, worksCost, life, plannedPulls, madeOn, sharing);
    }

    /**
     * The number of moulds for a number of pulls.
     *
     * @param pulls pulls N
     * @return ⌈N/life⌉, at least one
     */
    public int number(double pulls) {
        return number(pulls, life);
    }

    /**
     * The number of moulds of a life for a number of pulls.
     *
     * @param pulls pulls N
     * @param life pulls that one lasts, empty where not stated: then one is enough
     * @return ⌈N/life⌉, at least one
     */
    public static int number(double pulls, OptionalInt life) {
        return life.isEmpty() ? 1 : (int) Math.max(1, Math.ceil(pulls / life.getAsInt() - SLACK));
    }

    /**
     * What a number of moulds costs the yard, with their share of what they are made on.
     *
     * @param moulds how many are made
     * @return works cost times the number, and the share of the plug
     */
    public Money cost(int moulds) {
        Money sum = worksCost.times(moulds);
        for (Mould plug : madeOn) {
            sum = sum.plus(plug.share(moulds));
        }
        return sum;
    }

    /**
     * What a number of pulls bears of the moulds, beside those of others.
     *
     * @param pulls pulls of the batch, above 0
     * @return the share of the cost of all moulds
     * @throws IllegalArgumentException if the pulls are not above 0
     */
    public Money share(double pulls) {
        if (!(pulls > 0) || !Double.isFinite(pulls)) {
            throw new IllegalArgumentException(name + ": pulls must be above 0, not " + pulls);
        }
        BigDecimal upTo = others.before().add(new BigDecimal(pulls));
        double whole = Math.max(upTo.add(others.after()).doubleValue(), plannedPulls.orElse(0));
        Money all = cost(number(whole));
        Money before = all.times(others.before().doubleValue() / whole);
        return all.times(upTo.doubleValue() / whole).plus(before.times(-1));
    }
}
