package laminate.estimate;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.unit.Amount;
import laminate.unit.Money;

/**
 * A pack as it is sold: a roll, drum, can, box or sheet.
 *
 * @param name what it is called on an order
 * @param amount how much is in it
 * @param price what one costs
 * @param width width of a roll or sheet (m), empty where not stated
 * @param length length of a roll or sheet (m), empty where not stated
 * @param thickness thickness of a sheet of core (m); empty where it does not matter
 * @param minimum the least number of them that is sold, from 1
 */
public record PackPrice(
        String name,
        Amount amount,
        Money price,
        OptionalDouble width,
        OptionalDouble length,
        OptionalDouble thickness,
        int minimum) {
    /**
     * Checks the pack.
     *
     * @throws IllegalArgumentException if the name is blank, the amount, the price or a size is not above zero, or the least
     *     number below 1
     */
    public PackPrice {
        Objects.requireNonNull(price, "price");
        if (name.isBlank()) {
            throw new IllegalArgumentException("a pack needs a name");
        }
        if (amount.value().signum() <= 0 || price.amount().signum() <= 0) {
            throw new IllegalArgumentException(
                    "pack " + name + " must hold and cost more than zero, not " + amount + " and " + price);
        }
        if (!(isPositive(width) && isPositive(length) && isPositive(thickness))) {
            throw new IllegalArgumentException("pack " + name + " has a size that is not above zero");
        }
        if (minimum < 1) {
            throw new IllegalArgumentException("pack " + name + " is sold from a number of 1 or more, not " + minimum);
        }
    }

    /**
     * A pack of which one is sold.
     *
     * @param name what it is called on an order
     * @param amount how much is in it
     * @param price what one costs
     * @param width width of a roll or sheet (m), empty where not stated
     * @param length length of a roll or sheet (m), empty where not stated
     * @param thickness thickness of a sheet of core (m); empty where it does not matter
     * @throws IllegalArgumentException if the name is blank, or the amount, the price or a size is not above zero
     */
    public PackPrice(
            String name,
            Amount amount,
            Money price,
            OptionalDouble width,
            OptionalDouble length,
            OptionalDouble thickness) {
        this(name, amount, price, width, length, thickness, 1);
    }

    /**
     * A pack without sizes.
     *
     * @param name what it is called on an order
     * @param amount how much is in it
     * @param price what one costs
     * @return the pack
     * @throws IllegalArgumentException if the name is blank, or the amount or the price is not above zero
     */
    public static PackPrice of(String name, Amount amount, Money price) {
        OptionalDouble unknown = OptionalDouble.empty();
        return new PackPrice(name, amount, price, unknown, unknown, unknown);
    }

    /**
     * Whether it holds a core of some thickness.
     *
     * @param wanted the thickness (m), empty for what has none
     * @return true if it does, or if it does not say
     */
    public boolean isOf(OptionalDouble wanted) {
        return thickness.isEmpty()
                || wanted.isPresent() && Math.abs(wanted.getAsDouble() - thickness.getAsDouble()) < 1e-6;
    }

    private static boolean isPositive(OptionalDouble size) {
        double value = size.orElse(1);
        return value > 0 && Double.isFinite(value);
    }
}
