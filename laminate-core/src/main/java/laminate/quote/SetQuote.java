package laminate.quote;

import java.util.List;
import java.util.Objects;
import laminate.unit.Money;

/**
 * What a set of parts is offered at that share moulds and plugs.
 *
 * @param quotes one for each part, in the order given; its offers are for as many sets as the batches, in their order, each
 *     for sets times the part's number in a set
 * @param batches one for each number of sets asked for, in the order asked
 */
public record SetQuote(List<Quote> quotes, List<Batch> batches) {

    /**
     * Checks that every part is offered for every number of sets.
     *
     * @throws IllegalArgumentException if a quote has another number of offers than there are batches
     */
    public SetQuote {
        quotes = List.copyOf(quotes);
        batches = List.copyOf(batches);
        for (Quote quote : quotes) {
            if (quote.offers().size() != batches.size()) {
                throw new IllegalArgumentException(quote.part().name() + " has "
                        + quote.offers().size() + " offers for " + batches.size() + " numbers of sets");
            }
        }
    }

    /**
     * The moulds and plugs of a number of sets.
     *
     * @param sets the number of sets
     * @param tools the tools, each before what it is made on
     */
    public record Batch(int sets, List<ToolCost> tools) {
        /** Copies the list. */
        public Batch {
            tools = List.copyOf(tools);
        }
    }

    /**
     * What a mould or plug costs, and who bears it.
     *
     * @param use what is pulled off it, and how many are made
     * @param each what making one costs the yard, or its price, without its share of what it is made on
     * @param all what all that are made cost, with their share of what they are made on
     * @param shares what those that are made on it bear; together less than all where it is planned for more pulls
     */
    public record ToolCost(ToolUse use, Money each, Money all, List<Share> shares) {
        /** Copies the list. */
        public ToolCost {
            Objects.requireNonNull(use, "use");
            Objects.requireNonNull(each, "each");
            Objects.requireNonNull(all, "all");
            shares = List.copyOf(shares);
        }

        /**
         * What is borne of it: of a mould by the parts of the batch, of a plug by the moulds made on it, in whose cost it
         * is.
         *
         * @return the sum of the shares
         */
        public Money borne() {
            return shares.stream().map(Share::bears).reduce(Money.zero(all.currency()), Money::plus);
        }
    }

    /**
     * What one of those bears that are made on a mould or plug.
     *
     * @param by the part, or the mould, that is made on it
     * @param pulls what is pulled of it, rejects among them
     * @param bears its share of the cost of all
     */
    public record Share(String by, double pulls, Money bears) {
        /** Checks that there is an amount. */
        public Share {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(bears, "bears");
        }
    }
}
