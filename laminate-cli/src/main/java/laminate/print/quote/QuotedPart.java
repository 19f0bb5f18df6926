package laminate.print.quote;

import java.util.Objects;
import laminate.quote.QuotationText;
import laminate.quote.Quote;

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

    /** The currency of all its offers. */
    String currency() {
        return quote.offers().get(0).price().net().currency();
    }
}
