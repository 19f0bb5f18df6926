package laminate.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.quote.Sensitivity.Input;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/**
 * Quotes parts made in a workshop at a price list.
 *
 * <pre>{@code
 * Quoting quoting = new Quoting(workshop, prices, terms);
 * Mould mould = new Mould("lid mould", quoting.worksCost(lidMould), OptionalInt.of(200), OptionalInt.empty());
 * Money each = quoting.quote(lid, List.of(1, 10), List.of(mould)).offers().get(1).price().unitNet();
 * }</pre>
 */
public final class Quoting {
    private static final double MOVED = 0.1;
    private static final double MOVED_HOURS = 0.2;
    private static final int MOST_SWINGS = 5;

    private final Estimator estimator;
    private final Workshop workshop;
    private final Terms terms;
    private final Function<PartEstimate, Money> materials;

    /**
     * Quotes with materials as they are used up.
     *
     * @param estimator estimates parts in the workshop, at a price list
     * @param workshop the workshop, for the price of an hour
     * @param terms what the yard quotes by
     */
    public Quoting(Estimator estimator, Workshop workshop, Terms terms) {
        this(estimator, workshop, terms, estimate -> cost(estimate).of(Category.MATERIALS));
    }

    /**
     * Quotes with materials reckoned in a way of one's own, for example as bought in whole packs.
     *
     * @param estimator estimates parts in the workshop, at a price list
     * @param workshop the workshop, for the price of an hour
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
     * @param part the part; its own count does not matter
     * @param counts the numbers of good mouldings asked for
     * @param moulds the moulds and plugs it bears a share of, beside those of its own tooling
     * @return an offer for each number
     * @throws IllegalArgumentException if a price is missing, saying which, or a mould is planned for fewer pulls
     */
    public Quote quote(Part part, List<Integer> counts, List<Mould> moulds) {
        List<Quote.Offer> offers = new ArrayList<>();
        for (int count : counts) {
            offers.add(offer(part, count, moulds));
        }
        return new Quote(part, terms, moulds, offers);
    }

    /**
     * What one of a part costs the yard, without profit, discount and tax: a mould's share is reckoned on it.
     *
     * @param part the mould or plug
     * @param moulds what it is moulded on itself: a mould on its plug
     * @return the cost of one
     * @throws IllegalArgumentException if a price is missing, saying which
     */
    public Money worksCost(Part part, List<Mould> moulds) {
        return buildUp(part, 1, moulds).price().cost();
    }

    private Quote.Offer offer(Part part, int count, List<Mould> moulds) {
        BuildUp build = buildUp(part, count, moulds);
        BatchPrice price = build.price();
        List<Sensitivity.Swing> swings = Sensitivity.of(build, MOVED);
        return new Quote.Offer(
                build,
                price,
                price.direct().time() > 0
                        ? Returns.byHour(price, terms.pricing())
                        : Money.zero(price.net().currency()),
                breakEven(part, price.unitNet(), count, build.moulds()),
                swings.subList(0, Math.min(MOST_SWINGS, swings.size())),
                Sensitivity.swing(build, Input.MATERIALS, MOVED),
                Sensitivity.swing(build, Input.HOURS, MOVED_HOURS));
    }

    /**
     * All that makes the price of a number of good mouldings.
     *
     * @param part the part
     * @param count good mouldings
     * @param moulds the moulds and plugs it bears a share of, beside those of its own tooling
     * @return the build-up
     * @throws IllegalArgumentException if a price is missing, saying which
     */
    public BuildUp buildUp(Part part, int count, List<Mould> moulds) {
        PartEstimate estimate = estimator.estimate(part.withCount(count));
        Cost cost = cost(estimate);
        Optional<Tooling> tooling = toolingOf(part);
        double each = estimate.time() / count;
        double setUp = tooling.map(Tooling::setUpTime).orElse(0.0);
        DirectCost direct = new DirectCost(
                count,
                materials.apply(estimate),
                cost.of(Category.CONSUMABLES),
                cost.of(Category.ITEMS),
                terms.paid() * (setUp + each * terms.learning().totalOf(count)),
                rate(cost));
        List<Mould> all = new ArrayList<>(moulds);
        tooling.ifPresent(own -> addTooling(own, all));
        return new BuildUp(direct, all, terms.pricing());
    }

    private UnitPrice rate(Cost cost) {
        return workshop.labour().rate().orElse(new UnitPrice(BigDecimal.ZERO, cost.currency(), PriceBasis.HOUR));
    }

    private static void addTooling(Tooling own, List<Mould> moulds) {
        own.price().ifPresent(price -> moulds.add(new Mould("mould", price, own.life(), OptionalInt.empty())));
        own.setUpPrice()
                .ifPresent(price -> moulds.add(new Mould("set-up", price, OptionalInt.empty(), OptionalInt.empty())));
    }

    /** The tooling for the process that the part is made by, else the one that is for any. */
    private static Optional<Tooling> toolingOf(Part part) {
        Optional<Process> process = part.zones().stream()
                .flatMap(zone -> zone.layers().stream())
                .flatMap(layer -> layer.laying().stream())
                .map(laying -> laying.process())
                .findFirst();
        return part.tooling().stream()
                .filter(tooling ->
                        tooling.process().isPresent() && tooling.process().equals(process))
                .findFirst()
                .or(() -> part.tooling().stream()
                        .filter(tooling -> tooling.process().isEmpty())
                        .findFirst());
    }

    private OptionalInt breakEven(Part part, Money each, int count, List<Mould> moulds) {
        int most = count;
        List<Mould> whole = new ArrayList<>();
        for (Mould mould : moulds) {
            most = Math.max(most, mould.plannedPulls().orElse(count));
            whole.add(new Mould(mould.name(), mould.worksCost(), mould.life(), OptionalInt.empty()));
        }
        return Returns.breakEven(each, sold -> costOf(part, sold, whole), most);
    }

    private Money costOf(Part part, int count, List<Mould> moulds) {
        BuildUp build = buildUp(part.withTooling(List.of()), count, List.of());
        return new BuildUp(build.direct(), moulds, build.pricing()).price().cost();
    }

    private static Cost cost(PartEstimate estimate) {
        Cost cost = estimate.cost()
                .orElseThrow(() -> new IllegalArgumentException(
                        estimate.part().name() + " has no price list; a quote needs a price for everything"));
        if (!cost.missing().isEmpty()) {
            throw new IllegalArgumentException(
                    estimate.part().name() + ": a quote needs a price for everything; there is" + " none for "
                            + String.join(", ", cost.missing()));
        }
        return cost;
    }
}
