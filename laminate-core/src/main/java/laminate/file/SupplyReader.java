package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PackPrice;
import laminate.estimate.Supply;
import laminate.unit.Amount;
import laminate.unit.Dimension;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/** Reads how a material is sold, from the fields of its price. */
final class SupplyReader {
    /** More than any store holds, in kg, m² and so on. */
    private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000);

    private static final double DAY = 24 * 3600;

    /** So much of a material, as in 25 kg or 100 pieces. */
    static final Reading<Amount> AMOUNT = new ScalarReading<>() {
        @Override
        Amount of(String text) {
            Amount amount = Amount.parse(text);
            if (amount.value().compareTo(MOST) > 0) {
                throw new IllegalArgumentException(
                        Complaints.shown(text) + " is outside; at most " + MOST.toPlainString() + " is accepted");
            }
            return amount;
        }
    };

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    /** Ten years: longer ones are slips, and would reach past the days of a calendar. */
    private static final Reading<Double> TIME =
            quantity(Dimension.TIME, Bounds.between(0, 3660 * DAY, "0 d to 3660 d"));

    private SupplyReader() {}

    /**
     * The supply that a price states; empty if it has been complained of.
     *
     * @throws Fields.Unsound if anything in the price has been complained of
     */
    static Optional<Supply> supply(Fields in, Optional<String> currency) {
        var packs = in.orElse(
                "packs", listOf(mapping(Keys.PACK, pack -> SupplyReader.pack(pack, currency))), List.<PackPrice>of());
        var minimum = in.optional("minimum", AMOUNT);
        var leadTime = in.optional("lead-time", TIME);
        var shelfLife = in.optional("shelf-life", TIME);
        in.requireSound();
        try {
            return Optional.of(new Supply(packs.get(), minimum.get(), orNone(leadTime.get()), orNone(shelfLife.get())));
        } catch (IllegalArgumentException e) {
            throw in.refusal(packs.get().isEmpty() ? "minimum" : "packs", e.getMessage());
        }
    }

    private static PackPrice pack(Fields in, Optional<String> currency) {
        var name = in.required("pack", Scalars.text());
        var amount = in.optional("amount", AMOUNT);
        var width = in.optional("width", LENGTH);
        var length = in.optional("length", LENGTH);
        var thickness = in.optional("thickness", LENGTH);
        var price = in.required("price", Scalars.money(currency));
        var minimum = in.orElse("minimum", Scalars.pieces(), 1);
        in.requireSound();
        if (amount.get().isEmpty() && (width.get().isEmpty() || length.get().isEmpty())) {
            throw new IllegalArgumentException(
                    "this pack does not say how much it holds; add amount:, or width: and length: of a roll or sheet");
        }
        return new PackPrice(
                name.get(),
                amount.get()
                        .orElseGet(() -> Amount.of(
                                width.get().orElseThrow() * length.get().orElseThrow(), PriceBasis.M2)),
                price.get(),
                orNone(width.get()),
                orNone(length.get()),
                orNone(thickness.get()),
                minimum.get());
    }

    /** The price by measure that packs stand for where none is stated. */
    static UnitPrice unitPrice(Fields in, Supply supply) {
        for (PackPrice pack : supply.packs()) {
            if (pack.thickness().isPresent()) {
                throw in.refusal(
                        "packs", "sheets of a thickness each have a price; add price: by the m² for the estimate");
            }
        }
        return supply.bestUnitPrice().orElseThrow();
    }
}
