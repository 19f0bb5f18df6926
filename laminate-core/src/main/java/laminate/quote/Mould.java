package laminate.quote;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import laminate.unit.Money;

/**
 * A mould, or a plug, and how its cost is shared among what is pulled off it.
 *
 * <p>For the pulls N that are planned, k = ⌈N/life⌉ moulds are made, each at works cost, without profit; a pull bears the
 * N-th part of them. The k moulds are themselves the pulls of what they are made on, the plug, and bear its cost in the same
 * manner: one plug serves all moulds that it lasts for. Where no number is planned, or more are pulled than planned, the
 * batch that is priced bears all the moulds it needs. Rejects are pulls too.
 *
 * @param name what it is
 * @param worksCost what making one costs the yard, or its price, without its share of what it is made on
 * @param life pulls that one lasts, empty where not stated: then one is enough
 * @param plannedPulls pulls over which the moulds are to be paid off, empty for those of the batch
 * @param madeOn what it is made on: the plug
 */
public record Mould(String name, Money worksCost, OptionalInt life, OptionalInt plannedPulls, List<Mould> madeOn) {

    /** What sums leave over a whole number of moulds does not ask for one more. */
    private static final double SLACK = 1e-9;

    /**
     * Checks life and pulls.
     *
     * @throws IllegalArgumentException if life or pulls are below one
     */
    public Mould {
        Objects.requireNonNull(worksCost, "worksCost");
        madeOn = List.copyOf(madeOn);
        if (life.orElse(1) < 1 || plannedPulls.orElse(1) < 1) {
            throw new IllegalArgumentException(name + ": life and planned pulls must be one or more, not "
                    + life.orElse(1) + ", " + plannedPulls.orElse(1));
        }
    }

    /**
     * A mould that is made on nothing of the yard's, or bought.
     *
     * @param name what it is
     * @param worksCost what one costs
     * @param life pulls that one lasts, empty where not stated
     * @param plannedPulls pulls over which the moulds are to be paid off, empty for those of the batch
     * @throws IllegalArgumentException if life or pulls are below one
     */
    public Mould(String name, Money worksCost, OptionalInt life, OptionalInt plannedPulls) {
        this(name, worksCost, life, plannedPulls, List.of());
    }

    /**
     * This mould, and what it is made on, at a multiple of the cost.
     *
     * @param factor any number from 0 up
     * @return the mould
     */
    public Mould times(double factor) {
        List<Mould> below = madeOn.stream().map(plug -> plug.times(factor)).toList();
        return new Mould(name, worksCost.times(factor), life, plannedPulls, below);
    }

    /**
     * This mould, and what it is made on, paid off by the batch alone.
     *
     * @return the mould without planned pulls
     */
    public Mould unplanned() {
        List<Mould> below = madeOn.stream().map(Mould::unplanned).toList();
        return new Mould(name, worksCost, life, OptionalInt.empty(), below);
    }

    /**
     * The number of moulds for a number of pulls.
     *
     * @param pulls pulls N
     * @return ⌈N/life⌉, at least one
     */
    public int number(double pulls) {
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
     * What a number of pulls bears of the moulds.
     *
     * @param pulls pulls of the batch
     * @return the share of the cost of all moulds, rounded once for each kind of mould
     */
    public Money share(double pulls) {
        double planned = Math.max(pulls, plannedPulls.orElse(0));
        Money all = cost(number(planned));
        return planned == pulls ? all : all.times(pulls / planned);
    }
}
