package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.estimate.Supply;
import laminate.unit.DateText;
import laminate.unit.Dimension;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/** Reads price lists. */
final class PriceReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    private static final Reading<Double> MASS = quantity(Dimension.MASS, Bounds.POSITIVE);

    /** A day. */
    static final Reading<LocalDate> DATE = new ScalarReading<>() {
        @Override
        LocalDate of(String text) {
            try {
                return DateText.day(text.strip());
            } catch (DateTimeException e) {
                throw new IllegalArgumentException(
                        Complaints.shown(text) + " is no date; year, month and day are accepted, as in 2026-01-15");
            }
        }
    };

    /** A currency is known if there can be nothing in it. */
    private static final Reading<String> CURRENCY = new ScalarReading<>() {
        @Override
        String of(String text) {
            return Money.zero(text.strip()).currency();
        }
    };

    private final Stock stock;

    PriceReader(Stock stock) {
        this.stock = stock;
    }

    Reading<PriceList> prices() {
        return mapping(Keys.PRICES, this::prices);
    }

    private PriceList prices(Fields in) {
        var code = in.required("currency", CURRENCY);
        Optional<String> currency = code.value();
        var date = in.optional("date", DATE);
        Set<String> priced = new HashSet<>();
        Reading<Price> price = mapping(Keys.PRICE, entry -> price(entry, currency, priced));
        var prices = in.required("prices", listOf(price));
        in.requireSound();
        return new PriceList(code.get(), date.get(), prices.get());
    }

    private Price price(Fields in, Optional<String> currency, Set<String> priced) {
        var material = in.required("material", stock.anyId());
        var price = in.optional("price", Scalars.price(currency));
        if (!in.stands("price") && !in.stands("packs")) {
            in.missing(List.of("price", "packs"), "this price has neither price nor packs; add one of them");
        }
        var roll = in.optional("roll", mapping(Keys.ROLL, PriceReader::roll));
        Optional<Supply> supply = SupplyReader.supply(in, currency);
        if (!priced.add(material.get())) {
            throw in.refusal("material", material.get() + " is priced twice; one price is accepted");
        }
        UnitPrice unit = price.get().orElseGet(() -> SupplyReader.unitPrice(in, supply.orElseThrow()));
        return priced(in, material.get(), unit, roll.get(), supply.orElseThrow());
    }

    private static Price priced(Fields in, String material, UnitPrice price, Optional<Price.Roll> roll, Supply supply) {
        try {
            return new Price(material, price, roll, supply);
        } catch (IllegalArgumentException e) {
            throw in.refusal("price", e.getMessage());
        }
    }

    private static Price.Roll roll(Fields in) {
        var width = in.required("width", LENGTH);
        var length = in.optional("length", LENGTH);
        var mass = in.optional("mass", MASS);
        in.requireSound();
        return new Price.Roll(width.get(), orNone(length.get()), orNone(mass.get()));
    }
}
