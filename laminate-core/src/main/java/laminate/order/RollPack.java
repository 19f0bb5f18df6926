package laminate.order;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PackPrice;
import laminate.estimate.Price;
import laminate.unit.Amount;
import laminate.unit.Money;
import laminate.unit.PriceBasis;

/** The whole roll that a price states beside itself, as the one pack that is sold. */
final class RollPack {
    private RollPack() {}

    /** Empty if no roll is stated, not how much is on it, or the price is by what the material is not measured by. */
    static Optional<PackPrice> of(Price price, MaterialQuantity quantity) {
        return price.roll()
                .flatMap(roll -> amount(roll, quantity).flatMap(amount -> {
                    OptionalDouble cost = cost(price, quantity, amount);
                    return cost.isEmpty()
                            ? Optional.empty()
                            : Optional.of(new PackPrice(
                                    "roll",
                                    amount,
                                    price.price().basis() == PriceBasis.ROLL
                                            ? new Money(
                                                    price.price().amount(),
                                                    price.price().currency())
                                            : price.price().cost(cost.getAsDouble()),
                                    OptionalDouble.of(roll.width()),
                                    roll.length(),
                                    OptionalDouble.empty()));
                }));
    }

    private static Optional<Amount> amount(Price.Roll roll, MaterialQuantity quantity) {
        if (roll.mass().isPresent() && quantity.mass().isPresent()) {
            return Optional.of(Amount.of(roll.mass().getAsDouble(), PriceBasis.KG));
        }
        if (roll.length().isPresent() && quantity.area().isPresent()) {
            return Optional.of(Amount.of(roll.width() * roll.length().getAsDouble(), PriceBasis.M2));
        }
        return Optional.empty();
    }

    /** How much of the basis of the price is on a roll: as the whole need is to the need in the roll's measure. */
    private static OptionalDouble cost(Price price, MaterialQuantity quantity, Amount onRoll) {
        OptionalDouble whole = price.amountOf(quantity);
        OptionalDouble need = quantity.amount(onRoll.measure());
        if (whole.isEmpty() || need.isEmpty() || need.getAsDouble() == 0) {
            return OptionalDouble.empty();
        }
        double share = onRoll.value().doubleValue() / need.getAsDouble();
        return OptionalDouble.of(whole.getAsDouble() * share);
    }
}
