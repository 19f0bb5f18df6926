package laminate.part;

import java.util.Objects;
import java.util.Optional;
import laminate.unit.Money;

/**
 * A bought-in item that becomes part of the moulding.
 *
 * @param name what it is
 * @param count how many to a moulding
 * @param mass mass of one (kg)
 * @param price price of one, empty where not stated
 */
public record Item(String name, int count, double mass, Optional<Money> price) {

    /**
     * Checks the item.
     *
     * @throws IllegalArgumentException if the name is blank, the count below one or the mass below zero
     */
    public Item {
        Objects.requireNonNull(price, "price");
        if (name.isBlank()) {
            throw new IllegalArgumentException("an item needs a name");
        }
        if (count < 1) {
            throw new IllegalArgumentException(name + ": count must be one or more, not " + count);
        }
        if (!(mass >= 0) || !Double.isFinite(mass)) {
            throw new IllegalArgumentException(name + ": mass must not be below zero, not " + mass);
        }
    }
}
