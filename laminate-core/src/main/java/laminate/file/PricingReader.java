package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.mapping;
import static laminate.file.Reading.oneOrList;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;
import static laminate.file.Scalars.wholeNumber;

import java.util.List;
import laminate.quote.LearningCurve;
import laminate.quote.QuotationText;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.quote.price.Tax;
import laminate.unit.Dimension;

/** Reads the rates by which a yard makes a price from a cost, how fast its hands learn, and what it writes on quotations. */
final class PricingReader {

    private static final int MOST_COUNTED = 1000;

    private static final Reading<Double> SMALL_SHARE = share(Bounds.below(0, 0.5, "0 % to below 50 %"));
    private static final Reading<Double> SHARE = share(Bounds.between(0, 1, "0 % to 100 %"));
    private static final Reading<Double> PART_OF_PRICE = share(Bounds.below(0, 1, "0 % to below 100 %"));
    private static final Reading<Double> ON_TOP = share(Bounds.between(0, 10, "0 % to 1000 %"));

    private static final Bounds VALIDITY = Bounds.between(24 * 3600.0, 3660 * 24 * 3600.0, "1 d to 3660 d");
    private static final Reading<List<String>> LINES = oneOrList(text());

    private static final List<Reading.Choice<Profit>> PROFITS = List.of(
            choice("margin", PART_OF_PRICE.map(Profit.Margin::new)), choice("mark-up", ON_TOP.map(Profit.MarkUp::new)));

    private PricingReader() {}

    static Reading<Pricing> pricing() {
        return mapping(Keys.PRICING, PricingReader::pricing);
    }

    private static Pricing pricing(Fields in) {
        var rejects = in.orElse("rejects", SMALL_SHARE, 0.0);
        var overhead = in.orElse("overhead", mapping(Keys.OVERHEAD, PricingReader::overhead), Overhead.NONE);
        var contingency = in.orElse("contingency", SHARE, 0.0);
        var profit = in.atMostOne(PROFITS);
        var discount = in.orElse("discount", PART_OF_PRICE, 0.0);
        var tax = in.optional("tax", mapping(Keys.TAX, PricingReader::tax));
        in.requireSound();
        return new Pricing(
                rejects.get(),
                overhead.get(),
                contingency.get(),
                profit.get().orElse(Profit.NONE),
                discount.get(),
                tax.get());
    }

    private static Overhead overhead(Fields in) {
        var rate = in.required("rate", ON_TOP);
        var base = in.required("on", oneOf(Overhead.Base::word, Overhead.Base.values()));
        in.requireSound();
        return new Overhead(rate.get(), base.get());
    }

    private static Tax tax(Fields in) {
        var name = in.required("name", text());
        var rate = in.required("rate", SHARE);
        in.requireSound();
        return new Tax(name.get(), rate.get());
    }

    static Reading<LearningCurve> learning() {
        return mapping(Keys.LEARNING, PricingReader::learning);
    }

    private static LearningCurve learning(Fields in) {
        var rate = in.required("rate", share(Bounds.above(0.5, 1, "above 50 % and up to 100 %")));
        var countedOn = in.orElse("counted-on", wholeNumber(1, MOST_COUNTED), 1);
        in.requireSound();
        return new LearningCurve(rate.get(), countedOn.get());
    }

    static Reading<QuotationText> quotation() {
        return mapping(Keys.QUOTATION, PricingReader::quotation);
    }

    private static QuotationText quotation(Fields in) {
        var yard = in.orElse("yard", LINES, List.<String>of());
        var scope = in.orElse("scope", LINES, List.<String>of());
        var exclusions = in.orElse("exclusions", LINES, List.<String>of());
        var terms = in.orElse("terms", LINES, List.<String>of());
        var validFor = in.optional("valid-for", quantity(Dimension.TIME, VALIDITY));
        in.requireSound();
        return new QuotationText(yard.get(), scope.get(), exclusions.get(), terms.get(), orNone(validFor.get()));
    }

    private static Reading<Double> share(Bounds range) {
        return quantity(Dimension.FRACTION, range);
    }
}
