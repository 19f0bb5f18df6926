package laminate.order.pieces;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.PackPrice;
import laminate.estimate.Price;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Property;
import laminate.unit.PriceBasis;

/**
 * The roll or sheet that a material is cut from.
 *
 * @param width its width (m)
 * @param length its length (m), empty for a roll whose length is not known
 */
record StockSize(double width, OptionalDouble length) {

    /** The largest pack that states its width, else the roll beside the price, else the material's own roll. */
    static Optional<StockSize> of(
            Material material, OptionalDouble thickness, double massPerArea, Optional<Price> price) {
        Optional<StockSize> pack = price.stream()
                .flatMap(sold -> sold.supply().packs().stream())
                .filter(sold -> sold.isOf(thickness) && sold.width().isPresent())
                .max(Comparator.comparing(sold -> sold.amount().value()))
                .map(sold -> ofPack(sold, massPerArea));
        if (pack.isPresent()) {
            return pack;
        }
        return price.flatMap(Price::roll).map(roll -> ofRoll(roll, massPerArea)).or(() -> own(material));
    }

    private static StockSize ofPack(PackPrice pack, double massPerArea) {
        double width = pack.width().getAsDouble();
        if (pack.length().isPresent()) {
            return new StockSize(width, pack.length());
        }
        double amount = pack.amount().value().doubleValue();
        PriceBasis measure = pack.amount().measure();
        return switch (measure) {
            case KG -> new StockSize(width, OptionalDouble.of(amount / massPerArea / width));
            case M2 -> new StockSize(width, OptionalDouble.of(amount / width));
            case M -> new StockSize(width, OptionalDouble.of(amount));
            default -> new StockSize(width, OptionalDouble.empty());
        };
    }

    private static StockSize ofRoll(Price.Roll roll, double massPerArea) {
        OptionalDouble length = roll.length().isPresent() || roll.mass().isEmpty()
                ? roll.length()
                : OptionalDouble.of(roll.mass().getAsDouble() / massPerArea / roll.width());
        return new StockSize(roll.width(), length);
    }

    private static Optional<StockSize> own(Material material) {
        if (!List.of(MaterialKind.REINFORCEMENT, MaterialKind.BULKER).contains(material.kind())) {
            return Optional.empty();
        }
        OptionalDouble width = material.figures().valueOf(Property.ROLL_WIDTH);
        return width.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new StockSize(width.getAsDouble(), material.figures().valueOf(Property.ROLL_LENGTH)));
    }
}
