package laminate.print.quote;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import laminate.quote.Quote;
import laminate.quote.price.Pricing;
import laminate.quote.price.Tax;
import laminate.unit.Money;

/**
 * The price of so many sets of several parts.
 *
 * @param count how many sets
 * @param lines the sum of each line; of {@link PriceLine#UNIT_NET} the net of all by the number of sets, rounded once; of a
 *     project the tax of that net
 * @param hours paid hours for all
 */
record BatchTotal(int count, Map<PriceLine, Money> lines, double hours) {

    BatchTotal {
        lines = Map.copyOf(lines);
    }

    Money of(PriceLine line) {
        return lines.get(line);
    }

    /** All that is a cost to the yard. */
    Money cost() {
        return sum(PriceLine.MATERIALS, PriceLine.CONTINGENCY);
    }

    /** What the good mouldings cost directly. */
    Money direct() {
        return sum(PriceLine.MATERIALS, PriceLine.LABOUR);
    }

    private Money sum(PriceLine first, PriceLine last) {
        Money sum = Money.zero(of(first).currency());
        for (PriceLine line : EnumSet.range(first, last)) {
            sum = sum.plus(of(line));
        }
        return sum;
    }

    /**
     * The total of each number of sets of a project; of parts by themselves that of one of each, if all are offered in the
     * same numbers and in one currency, and none otherwise.
     */
    static List<BatchTotal> of(QuotedSet quoted) {
        List<BatchTotal> totals = new ArrayList<>();
        if (quoted.project().isEmpty()
                && quoted.parts().stream().map(BatchTotal::kind).distinct().count() != 1) {
            return totals;
        }
        for (int i = 0; i < quoted.parts().get(0).quote().offers().size(); i++) {
            List<Quote.Offer> offers = new ArrayList<>();
            for (QuotedPart part : quoted.parts()) {
                offers.add(part.quote().offers().get(i));
            }
            totals.add(
                    quoted.project().isPresent()
                            ? of(quoted.batches().get(i).sets(), offers)
                                    .taxedBy(quoted.parts()
                                            .get(0)
                                            .quote()
                                            .terms()
                                            .pricing())
                            : of(offers.get(0).price().direct().count(), offers));
        }
        return totals;
    }

    /** A set is sold as one: its tax is that of its net, rounded once, and no sum of what is rounded part by part. */
    private BatchTotal taxedBy(Pricing pricing) {
        Money net = of(PriceLine.NET);
        Money tax = net.times(pricing.tax().map(Tax::rate).orElse(0.0));
        Map<PriceLine, Money> taxed = new EnumMap<>(lines);
        taxed.put(PriceLine.TAX, tax);
        taxed.put(PriceLine.GROSS, net.plus(tax));
        return new BatchTotal(count, taxed, hours);
    }

    /** What has to be alike for sums to say anything. */
    private static List<Object> kind(QuotedPart part) {
        List<Object> kind = new ArrayList<>(List.of(part.currency()));
        part.quote().offers().forEach(offer -> kind.add(offer.price().direct().count()));
        return kind;
    }

    private static BatchTotal of(int count, List<Quote.Offer> offers) {
        Map<PriceLine, Money> lines = new EnumMap<>(PriceLine.class);
        double hours = 0;
        for (Quote.Offer offer : offers) {
            for (PriceLine line : PriceLine.values()) {
                lines.merge(line, line.of(offer.price()), Money::plus);
            }
            hours += offer.price().direct().hours();
        }
        lines.put(PriceLine.UNIT_NET, lines.get(PriceLine.NET).dividedBy(count));
        return new BatchTotal(count, lines, hours);
    }
}
