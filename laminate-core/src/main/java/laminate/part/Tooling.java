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
 * @param price what one mould costs that is bought, empty where not known
 * @param life how many parts one mould lasts, empty for as many as are made
 * @param setUpTime time to set up once, whatever the number of parts (s)
 * @param setUpPrice what is bought to set up once, empty for nothing
 * @param plannedPulls how many parts are to pay off the moulds, rejects among them; empty for those of each batch
 * @param mould the mould as a part of its own, where it is made in the same workshop; it may have tooling itself, the plug
 * @param name what the mould is called; a bought one that several parts state under one name is one mould, shared; empty
 *     for the name of the part that it is, or for a bought one that nothing else is made on
 * @param inHand how many of the mould there are already
 */
public record Tooling(
        Optional<Process> process,
        Optional<Money> price,
        OptionalInt life,
        double setUpTime,
        Optional<Money> setUpPrice,
        OptionalInt plannedPulls,
        Optional<Part> mould,
        Optional<String> name,
        int inHand) {

    /** Nothing stated. */
    public static final Tooling NONE =
            new Tooling(Optional.empty(), Optional.empty(), OptionalInt.empty(), 0, Optional.empty());

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if life or planned pulls are below one part or stated without a mould that costs
     *     something, the time is below zero, or a price is, or moulds are in hand that are not there
     */
    public Tooling {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(price, "price");
        Objects.requireNonNull(setUpPrice, "setUpPrice");
        Objects.requireNonNull(mould, "mould");
        Objects.requireNonNull(name, "name");
        checkParts("a life", life, price.isPresent() || mould.isPresent());
        checkParts("a plan", plannedPulls, price.isPresent() || mould.isPresent());
        if (!(setUpTime >= 0) || !Double.isFinite(setUpTime)) {
            throw new IllegalArgumentException("set-up must be zero or more, not " + setUpTime + " s");
        }
        checkNotNegative("the price of a mould", price);
        checkNotNegative("the price of a set-up", setUpPrice);
        if (name.isPresent() && name.get().isBlank()) {
            throw new IllegalArgumentException("the name of a mould must not be blank");
        }
        if (inHand < 0) {
            throw new IllegalArgumentException("there cannot be " + inHand + " moulds in hand");
        }
    }

    /**
     * A mould without a name of its own, none in hand.
     *
     * @param process the process that it is for, empty for any
     * @param price what one mould costs, empty where not known
     * @param life how many parts one mould lasts, empty for as many as are made
     * @param setUpTime time to set up once, whatever the number of parts (s)
     * @param setUpPrice what is bought to set up once, empty for nothing
     * @param plannedPulls how many parts are to pay off the moulds, empty for those of each batch
     * @param mould the mould as a part of its own, empty where it is bought
     * @throws IllegalArgumentException if a value is out of its range
     */
    public Tooling(
            Optional<Process> process,
            Optional<Money> price,
            OptionalInt life,
            double setUpTime,
            Optional<Money> setUpPrice,
            OptionalInt plannedPulls,
            Optional<Part> mould) {
        this(process, price, life, setUpTime, setUpPrice, plannedPulls, mould, Optional.empty(), 0);
    }

    /**
     * A mould that is bought.
     *
     * @param process the process that it is for, empty for any
     * @param price the price of one mould, empty where not stated
     * @param life how many parts one mould lasts, empty for as many as are made
     * @param setUpTime time to set up once, whatever the number of parts (s)
     * @param setUpPrice what is bought to set up once, empty for nothing
     * @throws IllegalArgumentException if a value is out of its range
     */
    public Tooling(
            Optional<Process> process,
            Optional<Money> price,
            OptionalInt life,
            double setUpTime,
            Optional<Money> setUpPrice) {
        this(process, price, life, setUpTime, setUpPrice, OptionalInt.empty(), Optional.empty());
    }

    /**
     * This tooling with a name for its mould.
     *
     * @param called what the mould is called
     * @return the tooling
     * @throws IllegalArgumentException if the name is blank
     */
    public Tooling named(String called) {
        return new Tooling(
                process, price, life, setUpTime, setUpPrice, plannedPulls, mould, Optional.of(called), inHand);
    }

    /**
     * This tooling with moulds that are there already.
     *
     * @param moulds how many
     * @return the tooling
     * @throws IllegalArgumentException if the number is below zero
     */
    public Tooling withInHand(int moulds) {
        return new Tooling(process, price, life, setUpTime, setUpPrice, plannedPulls, mould, name, moulds);
    }

    /**
     * Whether there is a mould that costs something, made or bought.
     *
     * @return true for a mould with a part or a price
     */
    public boolean hasMould() {
        return mould.isPresent() || price.isPresent();
    }

    /**
     * What its mould is called.
     *
     * @return the name, else that of the part that it is, else "mould"
     */
    public String mouldName() {
        return name.or(() -> mould.map(Part::name)).orElse("mould");
    }

    private static void checkParts(String what, OptionalInt parts, boolean ofMould) {
        if (parts.isPresent() && parts.getAsInt() < 1) {
            throw new IllegalArgumentException(what + " is of one part or more, not " + parts.getAsInt());
        }
        if (parts.isPresent() && !ofMould) {
            throw new IllegalArgumentException(
                    what + " of " + parts.getAsInt() + " parts says nothing without the price of the mould");
        }
    }

    private static void checkNotNegative(String what, Optional<Money> price) {
        if (price.isPresent() && price.get().amount().signum() < 0) {
            throw new IllegalArgumentException(what + " must be zero or more, not " + price.get());
        }
    }
}
