package laminate.quote;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import laminate.estimate.Cost.Category;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Workshop;
import laminate.quote.price.Mould;
import laminate.unit.Money;

/**
 * Quotes parts made in a workshop at a price list. Moulds that are parts of their own, and the plugs that these are made on,
 * are reckoned at works cost in the same workshop, by the same price list.
 *
 * <pre>{@code
 * Quoting quoting = new Quoting(new Estimator(workshop, prices), workshop, terms);
 * Money each = quoting.quote(lid, List.of(1, 10)).offers().get(1).price().unitNet();
 * }</pre>
 */
public final class Quoting {
    private final Making making;
    private final Offering offering;

    /**
     * Quotes with materials as they are used up.
     *
     * @param estimator estimates parts in the workshop, at a price list
     * @param workshop the workshop, for the price of an hour, the crew and the working day
     * @param terms what the yard quotes by
     */
    public Quoting(Estimator estimator, Workshop workshop, Terms terms) {
        this(estimator, workshop, terms, estimate -> Making.cost(estimate).of(Category.MATERIALS));
    }

    /**
     * Quotes with the materials of a batch reckoned in a way of one's own, for example as bought in whole packs. Moulds are
     * reckoned with materials as they are used up.
     *
     * @param estimator estimates parts in the workshop, at a price list
     * @param workshop the workshop, for the price of an hour, the crew and the working day
     * @param terms what the yard quotes by
     * @param materials what the materials of a batch cost
     */
    public Quoting(Estimator estimator, Workshop workshop, Terms terms, Function<PartEstimate, Money> materials) {
        Objects.requireNonNull(estimator, "estimator");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(terms, "terms");
        this.making = new Making(estimator, workshop, terms);
        this.offering = new Offering(making, Objects.requireNonNull(materials, "materials"));
    }

    /**
     * Quotes a part in several numbers.
     *
     * @param part the part, with its tooling; its own count does not matter
     * @param counts the numbers of good mouldings asked for
     * @return an offer for each number
     * @throws IllegalArgumentException if a price is missing, saying which, or a number is below one
     */
    public Quote quote(Part part, List<Integer> counts) {
        List<Quote> alone = quoteSet(List.of(part.withCount(1)), counts).quotes();
        return new Quote(part, making.terms(), alone.get(0).offers());
    }

    /**
     * Quotes parts that are sold as a set, in several numbers of sets. Moulds and plugs that several parts are made on are
     * shared: all pulls are counted, and the shares of the parts add up to what the batch bears, to the coin. Break-even and
     * sensitivity of a part hold the pulls of the other parts fixed.
     *
     * @param parts the parts, each with its number in a set
     * @param sets the numbers of sets asked for
     * @return an offer of each part for each number of sets, and the moulds and plugs these take
     * @throws IllegalArgumentException if a price is missing, saying which, there are no parts, a number is below one, or
     *     one mould is stated with two lives, two numbers of planned pulls or two prices
     */
    public SetQuote quoteSet(List<Part> parts, List<Integer> sets) {
        Function<Tooling, Money> each = eachReckonedOnce();
        List<ToolCosts> batches = sets.stream()
                .map(number ->
                        new ToolCosts(new Tools(parts, number, making.terms().pricing()), each))
                .toList();
        List<Quote> quotes = IntStream.range(0, parts.size())
                .mapToObj(place -> new Quote(parts.get(place), making.terms(), offers(place, batches)))
                .toList();
        return new SetQuote(quotes, batches.stream().map(ToolCosts::batch).toList());
    }

    /**
     * The mould that a part is made on, off its plug, with nothing else made on either.
     *
     * @param part the part
     * @return the mould at works cost, materials as they are used up, or at its price; empty where none is stated
     * @throws IllegalArgumentException if a price is missing, saying which
     */
    public Optional<Mould> mould(Part part) {
        Tools tools = new Tools(List.of(part.withCount(1)), 1, making.terms().pricing());
        return new ToolCosts(tools, eachReckonedOnce()).mould(tools.parts().get(0));
    }

    /**
     * What is wanted for a quote and has no price, in the part and in the moulds and plugs that are parts of their own.
     *
     * @param part the part
     * @return the names, once each
     * @throws IllegalArgumentException if there is no price list at all
     */
    public List<String> missing(Part part) {
        Set<String> names = new LinkedHashSet<>(
                Making.priced(making.estimate(part.withCount(1))).missing());
        part.toolingInUse().mould().ifPresent(mould -> names.addAll(missing(mould)));
        return List.copyOf(names);
    }

    private List<Quote.Offer> offers(int place, List<ToolCosts> batches) {
        List<Quote.Offer> offers = new ArrayList<>();
        for (ToolCosts costs : batches) {
            Tools tools = costs.tools();
            List<Mould> moulds = costs.moulds(tools.parts().get(place));
            offers.add(offering.offer(tools.batch().get(place), moulds));
        }
        return offers;
    }

    /** What one of a tool costs, its price or its works cost; the same stands in every batch and is reckoned once. */
    private Function<Tooling, Money> eachReckonedOnce() {
        Map<Part, Money> reckoned = new IdentityHashMap<>();
        return tool -> tool.mould()
                .map(mould -> reckoned.computeIfAbsent(mould, making::worksCost))
                .or(tool::price)
                .orElseThrow();
    }
}
