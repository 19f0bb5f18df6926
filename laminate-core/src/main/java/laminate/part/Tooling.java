package laminate.part;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.process.Process;
import laminate.unit.Money;

/**
 * The mould that a process takes, and what it takes to set it up for a run of parts.
 *
 * @param process the process that it is for, empty for any
 * @param price the price of one mould, empty where not stated
 * @param life how many parts one mould lasts, empty for as many as are made
 * @param setUpTime time to set up once, whatever the number of parts (s)
 * @param setUpPrice what is bought to set up once, empty for nothing
 */
public record Tooling(
        Optional<Process> process,
        Optional<Money> price,
        OptionalInt life,
        double setUpTime,
        Optional<Money> setUpPrice) {

    /** Nothing stated. */
    public static final Tooling NONE =
            new Tooling(Optional.empty(), Optional.empty(), OptionalInt.empty(), 0, Optional.empty());

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the life is below one part or stated without a price, the time is below zero, or
     *     a price is
     */
    public Tooling {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(setUpPrice, "setUpPrice");
        if (life.isPresent() && life.getAsInt() < 1) {
            throw new IllegalArgumentException("a mould lasts one part or more, not " + life.getAsInt());
        }
        if (life.isPresent() && price.isEmpty()) {
            throw new IllegalArgumentException(
                    "a life of " + life.getAsInt() + " parts says nothing without the price of the mould");
        }
        if (!(setUpTime >= 0) || !Double.isFinite(setUpTime)) {
            throw new IllegalArgumentException("set-up must be zero or more, not " + setUpTime + " s");
        }
        checkNotNegative("the price of a mould", price);
        checkNotNegative("the price of a set-up", setUpPrice);
    }

    private static void checkNotNegative(String what, Optional<Money> price) {
        if (price.isPresent() && price.get().amount().signum() < 0) {
            throw new IllegalArgumentException(what + " must be zero or more, not " + price.get());
        }
    }
}
