package laminate.order;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.unit.Amount;

/**
 * What lies in the store of a material.
 *
 * @param material the id
 * @param amount how much
 * @param thickness thickness of a sheet of core (m); empty where it does not matter
 * @param useBy the last day on which it may be used, empty if it keeps
 */
public record StockItem(String material, Amount amount, OptionalDouble thickness, Optional<LocalDate> useBy) {
    /**
     * Checks the thickness.
     *
     * @throws IllegalArgumentException if the thickness is not above zero and finite
     */
    public StockItem {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(useBy, "useBy");
        if (!(thickness.orElse(1) > 0) || !Double.isFinite(thickness.orElse(1))) {
            throw new IllegalArgumentException("the thickness of " + material + " in stock must be above zero, not "
                    + thickness.getAsDouble() + " m");
        }
    }

    /**
     * Whether it may still be used on a day.
     *
     * @param day the day; empty if it is not known, when all may be used
     * @return false if it is past its last day
     */
    public boolean isGoodOn(Optional<LocalDate> day) {
        return useBy.isEmpty() || day.isEmpty() || !day.get().isAfter(useBy.get());
    }
}
