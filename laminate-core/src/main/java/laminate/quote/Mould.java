package laminate.quote;

import java.util.Objects;
import java.util.OptionalInt;
import laminate.unit.Money;

/**
 * A mould, or a plug, and how its cost is shared among what is pulled off it.
 *
 * <p>For the pulls N that are planned, ⌈N/life⌉ moulds are made, each at works cost, without profit; a pull bears the N-th
 * part of them. Where no number is planned, the batch that is priced bears all the moulds it needs. Rejects are pulls too.
 *
 * @param name what it is
 * @param worksCost what one costs the yard
 * @param life pulls that one lasts, empty where not stated: then one is enough
 * @param plannedPulls pulls over which the moulds are to be paid off, empty for those of the batch
 */
public record Mould(String name, Money worksCost, OptionalInt life, OptionalInt plannedPulls) {

    /** What sums leave over a whole number of moulds does not ask for one more. */
    private static final double SLACK = 1e-9;

    /**
     * Checks life and pulls.
     *
     * @throws IllegalArgumentException if life or pulls are below one
     */
    public Mould {
        Objects.requireNonNull(worksCost, "worksCost");
        if (life.orElse(1) < 1 || plannedPulls.orElse(1) < 1) {
            throw new IllegalArgumentException(name + ": life and planned pulls must be one or more, not "
                    + life.orElse(1) + ", " + plannedPulls.orElse(1));
        }
    }

    /**
     * This mould at another works cost.
     *
     * @param cost what one costs the yard
     * @return the mould
     */
    public Mould at(Money cost) {
        return new Mould(name, cost, life, plannedPulls);
    }

    /**
     * This mould with another life.
     *
     * @param pulls pulls that one lasts
     * @return the mould
     */
    public Mould lasting(int pulls) {
        return new Mould(name, worksCost, OptionalInt.of(pulls), plannedPulls);
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
     * What a number of pulls bears of the moulds.
     *
     * @param pulls pulls of the batch
     * @return the share of the works cost of all moulds, rounded once
     * @throws IllegalArgumentException if the batch has more pulls than are planned
     */
    public Money share(double pulls) {
        if (plannedPulls.isEmpty()) {
            return worksCost.times(number(pulls));
        }
        int planned = plannedPulls.getAsInt();
        if (pulls > planned * (1 + SLACK)) {
            throw new IllegalArgumentException(name + ": " + Math.ceil(pulls - SLACK) + " pulls are more than the "
                    + planned + " that its cost is shared among");
        }
        return worksCost.times(number(planned) * (pulls / planned));
    }
}
