package laminate.quote;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Workshop;
import laminate.quote.Sensitivity.Input;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

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
    private static final double MOVED = 0.1;
    private static final double MOVED_HOURS = 0.2;
    private static final int MOST_SWINGS = 5;
    /** What a division leaves over a whole number of pulls does not ask for one more. */
    private static final double SLACK = 1e-9;

    private final Estimator estimator;
    private final Workshop workshop;
    private final Terms terms;
    private final Function<PartEstimate, Money> materials;

    /**
     * Quotes with materials as they are used up.
     *
     * @param estimator estimates parts in the workshop, at a price list
     * @param workshop the workshop, for the price of an hour, the crew and the working day
     * @param terms what the yard quotes by
     */
    public Quoting(Estimator estimator, Workshop workshop, Terms terms) {
        this(estimator, workshop, terms, estimate -> cost(estimate).of(Category.MATERIALS));
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
        this.estimator = Objects.requireNonNull(estimator, "estimator");
        this.workshop = Objects.requireNonNull(workshop, "workshop");
        this.terms = Objects.requireNonNull(terms, "terms");
        this.materials = Objects.requireNonNull(materials, "materials");
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
        List<Mould> moulds = moulds(part);
        List<Quote.Offer> offers = new ArrayList<>();
        for (int count : counts) {
            offers.add(offer(part.withCount(count), moulds));
        }
        return new Quote(part, terms, offers);
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
        throw new UnsupportedOperationException("not built yet");
    }

    /**
     * What one of a part costs the yard, with all that it is made on, without contingency, profit, discount and tax: what a
     * mould or plug is reckoned at.
     *
     * @param part the mould or plug
     * @return the cost of one, materials as they are used up
     * @throws IllegalArgumentException if a price is missing, saying which
     */
    public Money worksCost(Part part) {
        return made(part, OptionalInt.empty(), OptionalInt.empty()).cost(1);
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
                priced(estimator.estimate(part.withCount(1))).missing());
        part.toolingInUse().mould().ifPresent(mould -> names.addAll(missing(mould)));
        return List.copyOf(names);
    }

    /**
     * The part with every mould that is a part of its own at its works cost, for whoever asks for the price of a mould.
     *
     * @param part the part
     * @return the part; a mould for which a price is missing has none
     * @throws IllegalArgumentException if there is no price list at all
     */
    public Part withMouldsPriced(Part part) {
        List<Tooling> priced = new ArrayList<>();
        for (Tooling tooling : part.tooling()) {
            Optional<Part> known =
                    tooling.mould().filter(mould -> missing(mould).isEmpty());
            priced.add(known.map(mould -> tooling.at(worksCost(mould))).orElse(tooling));
        }
        return part.withTooling(priced);
    }

    private Quote.Offer offer(Part batch, List<Mould> moulds) {
        PartEstimate estimate = estimator.estimate(batch);
        BuildUp build = new BuildUp(direct(estimate, materials), moulds, terms.pricing());
        BatchPrice price = build.price();
        List<Sensitivity.Swing> swings = Sensitivity.of(build, MOVED);
        return new Quote.Offer(
                build,
                price,
                price.direct().time() > 0
                        ? Returns.byHour(price, terms.pricing())
                        : Money.zero(price.net().currency()),
                breakEven(estimate, build, price.unitNet()),
                swings.subList(0, Math.min(MOST_SWINGS, swings.size())),
                Sensitivity.swing(build, Input.MATERIALS, MOVED),
                Sensitivity.swing(build, Input.HOURS, MOVED_HOURS),
                mouldTime(estimate));
    }

    private DirectCost direct(PartEstimate estimate, Function<PartEstimate, Money> materialsOf) {
        Cost cost = cost(estimate);
        int count = estimate.part().count();
        double time = terms.paidTime(setUp(estimate.part()), each(estimate), count);
        return new DirectCost(
                count,
                materialsOf.apply(estimate),
                cost.of(Category.CONSUMABLES),
                cost.of(Category.ITEMS),
                time,
                rate(estimate.part(), time, cost.currency()));
    }

    private static double setUp(Part part) {
        return part.toolingInUse().setUpTime();
    }

    private static double each(PartEstimate estimate) {
        return estimate.time() / estimate.part().count();
    }

    private UnitPrice rate(Part part, double time, String currency) {
        Optional<UnitPrice> rate = workshop.labour().rate();
        if (rate.isEmpty() && time > 0) {
            throw new IllegalArgumentException(part.name() + ": a quote needs the rate of labour; there is none");
        }
        return rate.orElseGet(() -> new UnitPrice(Money.zero(currency).amount(), currency, PriceBasis.HOUR));
    }

    /** What a part is made on, and what is bought to set it up. */
    private List<Mould> moulds(Part part) {
        Tooling tooling = part.toolingInUse();
        List<Mould> moulds = new ArrayList<>();
        if (tooling.mould().isPresent()) {
            moulds.add(made(tooling.mould().get(), tooling.life(), tooling.plannedPulls()));
        } else if (tooling.price().isPresent()) {
            moulds.add(new Mould("mould", tooling.price().get(), tooling.life(), tooling.plannedPulls()));
        }
        tooling.setUpPrice()
                .ifPresent(price -> moulds.add(new Mould("set-up", price, OptionalInt.empty(), OptionalInt.empty())));
        return moulds;
    }

    /** A mould that the yard makes itself, each by itself: what a second one would save is not counted on. */
    private Mould made(Part mould, OptionalInt life, OptionalInt plannedPulls) {
        PartEstimate estimate = estimator.estimate(mould.withCount(1));
        DirectCost direct = direct(estimate, one -> cost(one).of(Category.MATERIALS));
        Money worksCost = new BuildUp(direct, List.of(), terms.pricing().atWorks())
                .price()
                .cost();
        return new Mould(mould.name(), worksCost, life, plannedPulls, moulds(mould));
    }

    /** Materials, consumables and items are taken in proportion to the offer's. */
    private OptionalInt breakEven(PartEstimate estimate, BuildUp build, Money each) {
        List<Mould> moulds = build.moulds().stream().map(Mould::unplanned).toList();
        int most = build.direct().count();
        for (Mould mould : build.moulds()) {
            most = Math.max(most, mould.plannedPulls().orElse(1));
        }
        return Returns.breakEven(each, sold -> costOf(sold, estimate, build.direct(), moulds), most);
    }

    private Money costOf(int sold, PartEstimate estimate, DirectCost offered, List<Mould> moulds) {
        double time = terms.paidTime(setUp(estimate.part()), each(estimate), sold);
        return new BuildUp(offered.scaledTo(sold, time), moulds, terms.pricing())
                .price()
                .cost();
    }

    private MouldTime mouldTime(PartEstimate estimate) {
        Part batch = estimate.part();
        double byClock = terms.paid() / workshop.shopFloor().crew();
        int pulls = (int) Math.ceil(terms.pricing().pulls(batch.count()) - SLACK);
        return new MouldTime(
                setUp(batch) * byClock,
                each(estimate) * terms.learning().averageOf(batch.count()) * byClock,
                terms.cure(),
                pulls,
                workshop.shopFloor().day());
    }

    private static Cost cost(PartEstimate estimate) {
        Cost cost = priced(estimate);
        if (!cost.missing().isEmpty()) {
            throw new IllegalArgumentException(estimate.part().name()
                    + ": a quote needs a price for everything; there is none for " + String.join(", ", cost.missing()));
        }
        return cost;
    }

    private static Cost priced(PartEstimate estimate) {
        return estimate.cost()
                .orElseThrow(() -> new IllegalArgumentException(estimate.part().name()
                        + " has no price list; a quote needs a price for everything: add prices:"
                        + " with the name of a price file"));
    }
}
