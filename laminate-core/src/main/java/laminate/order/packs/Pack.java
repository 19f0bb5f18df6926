package laminate.order.packs;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.OptionalInt;
import laminate.unit.Money;

/**
 * A pack as it is sold: a roll, drum, can, box or sheet.
 *
 * @param name what it is called on an order
 * @param amount how much is in it, in the unit in which the material is sold
 * @param price what one costs
 * @param available how many there are at most; empty if as many as are wanted
 * @param minimum the least number of them that is sold, from 1: none or so many are bought
 */
public record Pack(String name, BigDecimal amount, Money price, OptionalInt available, int minimum) {
    /**
     * Checks amount, price and numbers.
     *
     * @param name what it is called on an order
     * @param amount how much is in it
     * @param price what one costs
     * @param available how many there are at most
     * @param minimum the least number of them that is sold
     * @throws IllegalArgumentException if amount or price is not positive, the number available negative, or the least
     *     number below 1
     */
    public Pack {
        Objects.requireNonNull(name, "name");
        requirePositive(name, "holds", amount);
        requirePositive(name, "costs", price.amount());
        if (available.orElse(0) < 0) {
            throw new IllegalArgumentException(
                    "pack " + name + " cannot be had " + available.getAsInt() + " times; say 0 or more");
        }
        if (minimum < 1) {
            throw new IllegalArgumentException("pack " + name + " is sold from a number of 1 or more, not " + minimum);
        }
    }

    /**
     * A pack of which there are as many as are wanted.
     *
     * @param name what it is called on an order
     * @param amount how much is in it, in the unit in which the material is sold
     * @param price what one costs
     * @return the pack
     * @throws IllegalArgumentException if amount or price is not positive
     */
    public static Pack of(String name, BigDecimal amount, Money price) {
        return new Pack(name, amount, price, OptionalInt.empty(), 1);
    }

    /**
     * The same, sold in no lesser number.
     *
     * @param number the least number of them that is sold
     * @return the pack
     * @throws IllegalArgumentException if the number is below 1
     */
    public Pack withMinimum(int number) {
        return new Pack(name, amount, price, available, number);
    }

    /** Whether there are as many as are sold at least. */
    boolean isToBeHad() {
        return available.orElse(minimum) >= minimum;
    }

    private static void requirePositive(String name, String does, BigDecimal value) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(
                    "pack " + name + " " + does + " " + value.toPlainString() + "; more than 0 is wanted");
        }
    }
}
