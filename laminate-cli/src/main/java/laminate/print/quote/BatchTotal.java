package laminate.print.quote;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import laminate.quote.Quote;
import laminate.unit.Money;

/**
 * The price of so many sets of several parts.
 *
 * @param count how many sets
 * @param lines the sum of each line; of {@link PriceLine#UNIT_NET} the net of all by the number of sets, rounded once
 * @param hours paid hours for all
 */
record BatchTotal(int count, Map<PriceLine, Money> lines, double hours) {

    BatchTotal {
        lines = Map.copyOf(lines);
    }

    Money of(PriceLine line) {
        return lines.get(line);
    }

    /** The total of each number, if all parts are offered in the same numbers and in one currency; none otherwise. */
    static List<BatchTotal> of(List<QuotedPart> parts) {
        List<BatchTotal> totals = new ArrayList<>();
        if (parts.stream().map(BatchTotal::kind).distinct().count() != 1) {
            return totals;
        }
        for (int i = 0; i < parts.get(0).quote().offers().size(); i++) {
            BatchTotal total = of(parts.get(0).quote().offers().get(i));
            for (QuotedPart part : parts.subList(1, parts.size())) {
                total = total.plus(of(part.quote().offers().get(i)));
            }
            totals.add(total);
        }
        return totals;
    }

    /** What has to be alike for sums to say anything. */
    private static List<Object> kind(QuotedPart part) {
        List<Object> kind = new ArrayList<>(List.of(part.currency()));
        part.quote().offers().forEach(offer -> kind.add(offer.price().direct().count()));
        return kind;
    }

    private static BatchTotal of(Quote.Offer offer) {
        Map<PriceLine, Money> lines = new EnumMap<>(PriceLine.class);
        for (PriceLine line : PriceLine.values()) {
            lines.put(line, line.of(offer.price()));
        }
        return new BatchTotal(
                offer.price().direct().count(), lines, offer.price().direct().hours());
    }

    private BatchTotal plus(BatchTotal other) {
        Map<PriceLine, Money> sums = new EnumMap<>(PriceLine.class);
        lines.forEach((line, money) -> sums.put(line, money.plus(other.of(line))));
        sums.put(PriceLine.UNIT_NET, sums.get(PriceLine.NET).dividedBy(count));
        return new BatchTotal(count, sums, hours + other.hours);
    }
}
