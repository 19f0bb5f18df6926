package laminate.order;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.estimate.Supply;

/**
 * When what is bought has to be ordered, and how long it keeps. Part of a day counts as a whole one until delivery, and as
 * none of the shelf life.
 *
 * @param leadDays days from order to delivery, empty where not stated
 * @param shelfDays days that it keeps from delivery, empty where not stated
 * @param orderBy the last day to order, for a day of use; empty without that day or the lead time
 * @param deliveredFrom the first day of delivery after which it is still good on the day of use; empty without that day
 *     or the shelf life
 */
public record Delivery(
        OptionalInt leadDays, OptionalInt shelfDays, Optional<LocalDate> orderBy, Optional<LocalDate> deliveredFrom) {
    private static final double DAY = 86_400;

    /** Nothing is known of it. */
    public static final Delivery UNKNOWN =
            new Delivery(OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());

    /**
     * The delivery of a supply.
     *
     * @param supply how the material is sold
     * @param wanted the day of use, empty if it is not known
     * @return the days
     */
    static Delivery of(Supply supply, Optional<LocalDate> wanted) {
        OptionalInt lead = days(supply.leadTime(), true);
        OptionalInt shelf = days(supply.shelfLife(), false);
        return new Delivery(lead, shelf, before(wanted, lead), before(wanted, shelf));
    }

    private static OptionalInt days(OptionalDouble seconds, boolean up) {
        if (seconds.isEmpty()) {
            return OptionalInt.empty();
        }
        double days = seconds.getAsDouble() / DAY;
        return OptionalInt.of((int) (up ? Math.ceil(days) : Math.floor(days)));
    }

    private static Optional<LocalDate> before(Optional<LocalDate> wanted, OptionalInt days) {
        return days.isEmpty() ? Optional.empty() : wanted.map(day -> day.minusDays(days.getAsInt()));
    }

    /**
     * How long what is left over keeps if it is delivered on the day of use, the longest that it can.
     *
     * @param wanted the day of use
     * @return the last day to use it, empty where the shelf life is not stated
     */
    public Optional<LocalDate> keepsUntil(LocalDate wanted) {
        return shelfDays.isEmpty() ? Optional.empty() : Optional.of(wanted.plusDays(shelfDays.getAsInt()));
    }
}
