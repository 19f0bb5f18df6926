package laminate.print.quote;

import java.util.Objects;
import java.util.Optional;
import laminate.quote.QuotationText;
import laminate.quote.Quote;
import laminate.unit.Money;

/**
 * A part with what it is offered at.
 *
 * @param quote the offers
 * @param mass what one weighs, finished (kg)
 * @param asBought whether materials are paid in whole packs, or as they are used up
 * @param text what its yard writes on quotations
 */
public record QuotedPart(Quote quote, double mass, boolean asBought, QuotationText text) {

    /** Checks that nothing is missing. */
    public QuotedPart {
        Objects.requireNonNull(quote, "quote");
        Objects.requireNonNull(text, "text");
    }

    String name() {
        return quote.part().name();
    }

    /** What is bought to set up for a batch of it. */
    Optional<Money> setUpPrice() {
        return quote.part().toolingInUse().setUpPrice();
    }

    /** The currency of all its offers. */
    String currency() {
        return quote.offers().get(0).price().net().currency();
    }
}
