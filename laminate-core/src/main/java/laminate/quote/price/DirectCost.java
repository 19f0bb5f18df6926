package laminate.quote.price;

import java.util.Objects;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/**
 * What a batch of good mouldings costs directly, before rejects and overhead.
 *
 * @param count good mouldings
 * @param materials what goes into them, with what is lost of it
 * @param consumables what the process uses up
 * @param items bought-in items
 * @param time paid time of all hands (s)
 * @param rate what an hour is paid
 */
public record DirectCost(int count, Money materials, Money consumables, Money items, double time, UnitPrice rate) {

    private static final double HOUR = 3600;

    /**
     * Checks count and time.
     *
     * @throws IllegalArgumentException if the count is below one or the time below zero
     */
    public DirectCost {
        Objects.requireNonNull(materials, "materials");
        if (count < 1) {
            throw new IllegalArgumentException("a batch is of one or more, not " + count);
        }
        if (!(time >= 0) || !Double.isFinite(time)) {
            throw new IllegalArgumentException("a time must not be below zero, not " + time + " s");
        }
    }

    /**
     * The direct cost of another number of the same mouldings.
     *
     * @param number good mouldings
     * @param paidTime paid time of all hands on them (s)
     * @return materials, consumables and items in proportion, each rounded once
     */
    public DirectCost scaledTo(int number, double paidTime) {
        double share = (double) number / count;
        return new DirectCost(
                number, materials.times(share), consumables.times(share), items.times(share), paidTime, rate);
    }

    /**
     * Paid hours of all hands.
     *
     * @return time (h)
     */
    public double hours() {
        return time / HOUR;
    }

    /**
     * What the work costs.
     *
     * @return hours times rate, rounded once
     */
    public Money labour() {
        return rate.cost(hours());
    }

    /**
     * All of it.
     *
     * @return materials + consumables + items + labour
     */
    public Money total() {
        return materials.plus(consumables).plus(items).plus(labour());
    }
}
