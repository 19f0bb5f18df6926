package laminate.unit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * So much of a material, by the measure in which it is kept and sold: 25 kg, 10 m², 50 m, 5 l or 100 pieces.
 *
 * @param value how much, in the measure; a decimal, so that whole packs are counted without rounding
 * @param measure kg, m², m, l or piece
 */
public record Amount(BigDecimal value, PriceBasis measure) {
    private static final String EXAMPLES = "25 kg, 10 m², 50 m, 5 l or 100 pieces";

    /**
     * Checks the amount.
     *
     * @param value how much, in the measure
     * @param measure kg, m², m, l or piece
     * @throws IllegalArgumentException if the value is negative, or materials are not kept by the measure
     */
    public Amount {
        if (!measure.isMeasure()) {
            throw new IllegalArgumentException("an amount is in kg, m², m, l or pieces, not in " + measure);
        }
        if (value.signum() < 0) {
            throw new IllegalArgumentException("an amount is not negative; " + value.toPlainString() + " is");
        }
        value = value.signum() == 0 ? BigDecimal.ZERO : value;
    }

    /**
     * An amount as a computed number.
     *
     * @param value how much, in the measure
     * @param measure kg, m², m, l or piece
     * @return the amount
     * @throws IllegalArgumentException if the value is negative or not finite, or materials are not kept by the measure
     */
    public static Amount of(double value, PriceBasis measure) {
        return new Amount(Decimals.of(Decimals.requireFinite(value)), measure);
    }

    /**
     * Reads an amount such as "25 kg" or "100 pieces". Other units of the same kind are converted, as 55 US gal to litres.
     *
     * @param text the text
     * @return the amount
     * @throws QuantityException if the text is not a number with a unit of mass, area, length or volume, or with pieces
     */
    public static Amount parse(String text) {
        NumberText split = NumberText.split(text, EXAMPLES);
        if (split.rest().equals("piece") || split.rest().equals("pieces")) {
            return of(requireNotNegative(split.value(), text), PriceBasis.PIECE);
        }
        if (split.rest().isEmpty()) {
            throw new QuantityException(
                    NumberText.quoted(text) + " has no unit; write it like " + EXAMPLES, split.restStart());
        }
        if (Unit.find(split.rest()).isEmpty()) {
            throw new QuantityException(
                    "unknown unit " + NumberText.quoted(split.rest()) + "; write it like " + EXAMPLES,
                    split.restStart());
        }
        Quantity quantity = Quantity.parse(text);
        Optional<PriceBasis> measure = PriceBasis.measureOf(quantity.unit().dimension());
        if (measure.isEmpty()) {
            throw new QuantityException(NumberText.quoted(text) + " is no amount; write it like " + EXAMPLES, 0);
        }
        Unit kept = measure.get().unit().orElseThrow();
        double value = quantity.unit() == kept ? quantity.value() : kept.fromSi(quantity.si());
        return of(requireNotNegative(value, text), measure.get());
    }

    private static double requireNotNegative(double value, String text) {
        if (value < 0) {
            throw new QuantityException(NumberText.quoted(text) + " is below zero; write it like " + EXAMPLES, 0);
        }
        return value;
    }

    /**
     * The amount as text that reads back.
     *
     * @return for example "25 kg" or "100 pieces"
     */
    @Override
    public String toString() {
        boolean many = measure == PriceBasis.PIECE && value.compareTo(BigDecimal.ONE) != 0;
        return value.stripTrailingZeros().toPlainString() + " " + measure + (many ? "s" : "");
    }
}
