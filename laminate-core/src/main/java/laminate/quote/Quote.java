package laminate.quote;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import laminate.part.Part;
import laminate.quote.price.BatchPrice;
import laminate.quote.price.BuildUp;
import laminate.quote.price.Returns;
import laminate.quote.price.Sensitivity;
import laminate.unit.Money;

/**
 * What a part is offered at.
 *
 * @param part the part
 * @param terms what it is quoted by
 * @param offers one for each number asked for, in the order asked
 */
public record Quote(Part part, Terms terms, List<Offer> offers) {

    /** Copies the list. */
    public Quote {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(terms, "terms");
        offers = List.copyOf(offers);
    }

    /**
     * The offer for one number of good mouldings.
     *
     * @param build what makes the price, the moulds and plugs it bears a share of among it
     * @param price the price
     * @param hourly what an hour of work earns, see {@link Returns#byHour}; no money where there is no work
     * @param breakEven the first number sold at this unit price that pays for itself with all moulds it needs, empty if
     *     none does within the offer and what the moulds are planned for; others' pulls off a shared mould stay as offered
     * @param swings which inputs move the unit price most when each is moved by 10 %, the largest first
     * @param materials the unit price with materials at −10 % and +10 %
     * @param hours the unit price with hours at −20 % and +20 %
     * @param mouldTime how long the batch takes by the clock
     */
    public record Offer(
            BuildUp build,
            BatchPrice price,
            Money hourly,
            OptionalInt breakEven,
            List<Sensitivity.Swing> swings,
            Sensitivity.Swing materials,
            Sensitivity.Swing hours,
            MouldTime mouldTime) {
        /** Copies the list. */
        public Offer {
            swings = List.copyOf(swings);
        }
    }
}
