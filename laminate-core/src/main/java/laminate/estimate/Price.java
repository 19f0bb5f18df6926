package laminate.estimate;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.unit.Dimension;
import laminate.unit.PriceBasis;
import laminate.unit.Unit;
import laminate.unit.UnitPrice;

/**
 * The price of a material.
 *
 * @param material the id
 * @param price the price by its measure
 * @param roll the roll as sold, empty where not stated
 * @param supply how it is sold: packs, minimum, lead time, shelf life
 */
public record Price(String material, UnitPrice price, Optional<Roll> roll, Supply supply) {

    /**
     * A roll as sold.
     *
     * @param width width (m)
     * @param length length (m), empty where not stated
     * @param mass net mass (kg), empty where not stated
     */
    public record Roll(double width, OptionalDouble length, OptionalDouble mass) {
        /**
         * Checks the roll.
         *
         * @throws IllegalArgumentException if a figure is not above zero
         */
        public Roll {
            if (!(isPositive(width) && isPositive(length.orElse(1)) && isPositive(mass.orElse(1)))) {
                throw new IllegalArgumentException("a roll's width, length and mass must be above zero, not " + width
                        + ", " + length.orElse(1) + ", " + mass.orElse(1));
            }
        }

        private static boolean isPositive(double figure) {
            return figure > 0 && Double.isFinite(figure);
        }
    }

    /**
     * Checks the price.
     *
     * @throws IllegalArgumentException if it is by the hour, by the roll without saying how much a roll is, or a pack is
     *     priced in another currency
     */
    public Price {
        Objects.requireNonNull(supply, "supply");
        for (PackPrice pack : supply.packs()) {
            if (!pack.price().currency().equals(price.currency())) {
                throw new IllegalArgumentException("pack " + pack.name() + " of " + material + " is priced in "
                        + pack.price().currency() + ", the material in " + price.currency());
            }
        }
        if (price.basis() == PriceBasis.HOUR) {
            throw new IllegalArgumentException(material + " cannot be priced by the hour");
        }
        if (price.basis() == PriceBasis.ROLL
                && roll.filter(sold -> sold.length().isPresent() || sold.mass().isPresent())
                        .isEmpty()) {
            throw new IllegalArgumentException(
                    material + " is priced by the roll; give the roll's width and its length or mass");
        }
    }

    /**
     * A price of what is weighed or measured out, or sold in the roll alone.
     *
     * @param material the id
     * @param price the price by its measure
     * @param roll the roll as sold, empty where not stated
     * @throws IllegalArgumentException if it is by the hour, or by the roll without saying how much a roll is
     */
    public Price(String material, UnitPrice price, Optional<Roll> roll) {
        this(material, price, roll, Supply.LOOSE);
    }

    /**
     * How much of a material there is to pay for, in the measure of the price. A roll is paid by the share of it used;
     * metres and yards are counted off the roll that is priced, where one is stated, and else off the material's own.
     *
     * @param quantity the material to buy
     * @return the amount; empty if the material is not known by that measure
     */
    public OptionalDouble amountOf(MaterialQuantity quantity) {
        if (price.basis() == PriceBasis.ROLL) {
            return rolls(roll.orElseThrow(), quantity);
        }
        Optional<Unit> unit = price.basis().unit();
        boolean isByLength = unit.isPresent() && unit.get().dimension() == Dimension.LENGTH;
        if (isByLength && roll.isPresent() && quantity.area().isPresent()) {
            return OptionalDouble.of(
                    unit.get().fromSi(quantity.area().getAsDouble() / roll.get().width()));
        }
        return quantity.amount(price.basis());
    }

    private static OptionalDouble rolls(Roll sold, MaterialQuantity quantity) {
        if (sold.mass().isPresent() && quantity.mass().isPresent()) {
            return OptionalDouble.of(quantity.mass().getAsDouble() / sold.mass().getAsDouble());
        }
        if (sold.length().isPresent() && quantity.area().isPresent()) {
            return OptionalDouble.of(quantity.area().getAsDouble()
                    / (sold.width() * sold.length().getAsDouble()));
        }
        return OptionalDouble.empty();
    }
}
