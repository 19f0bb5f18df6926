package laminate.quote;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.quote.price.BuildUp;
import laminate.quote.price.DirectCost;
import laminate.quote.price.Mould;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/**
 * What it costs a yard to make parts, in paid time and money, before anything that it is made on.
 *
 * @param estimator estimates parts in the workshop, at a price list
 * @param workshop the workshop, for the price of an hour, the crew and the working day
 * @param terms what the yard quotes by
 */
record Making(Estimator estimator, Workshop workshop, Terms terms) {

    PartEstimate estimate(Part part) {
        return estimator.estimate(part);
    }

    /** The direct cost of a batch whose materials are reckoned elsewhere. */
    DirectCost direct(PartEstimate batch, Money materials) {
        Cost cost = cost(batch);
        int count = batch.part().count();
        double time = paidTime(batch, count);
        return new DirectCost(
                count,
                materials,
                cost.of(Category.CONSUMABLES),
                cost.of(Category.ITEMS),
                time,
                rate(batch.part(), time, cost.currency()));
    }

    /** Paid time for any number of what was estimated (s). */
    double paidTime(PartEstimate batch, int count) {
        return terms.paidTime(setUp(batch.part()), each(batch), count);
    }

    /** A mould by itself at works cost: what a second one would save is not counted on. */
    Money worksCost(Part mould) {
        PartEstimate estimate = estimate(mould.withCount(1));
        DirectCost direct = direct(estimate, cost(estimate).of(Category.MATERIALS));
        return new BuildUp(direct, List.of(), terms.pricing().atWorks()).price().cost();
    }

    /** How long a batch holds one mould; what else is made on the mould comes before or after. */
    MouldTime mouldTime(PartEstimate batch) {
        Part part = batch.part();
        double byClock = terms.paid() / workshop.shopFloor().crew();
        int pulls = Mould.number(terms.pricing().pulls(part.count()), OptionalInt.of(1));
        return new MouldTime(
                setUp(part) * byClock,
                each(batch) * terms.learning().averageOf(part.count()) * byClock,
                terms.cure(),
                pulls,
                workshop.shopFloor().day());
    }

    /** The cost of everything; a price that is missing is complained of. */
    static Cost cost(PartEstimate estimate) {
        Cost cost = priced(estimate);
        if (!cost.missing().isEmpty()) {
            throw new IllegalArgumentException(estimate.part().name()
                    + ": a quote needs a price for everything; there is none for " + String.join(", ", cost.missing()));
        }
        return cost;
    }

    /** The cost, though prices may be missing. */
    static Cost priced(PartEstimate estimate) {
        return estimate.cost()
                .orElseThrow(() -> new IllegalArgumentException(estimate.part().name()
                        + " has no price list; a quote needs a price for everything: add prices:"
                        + " with the name of a price file"));
    }

    private UnitPrice rate(Part part, double time, String currency) {
        Optional<UnitPrice> rate = workshop.labour().rate();
        if (rate.isEmpty() && time > 0) {
            throw new IllegalArgumentException(part.name() + ": a quote needs the rate of labour; there is none; add"
                    + " labour: {rate: 28 " + currency + "/h} to the workshop file");
        }
        return rate.orElseGet(() -> new UnitPrice(Money.zero(currency).amount(), currency, PriceBasis.HOUR));
    }

    private static double setUp(Part part) {
        return part.toolingInUse().setUpTime();
    }

    private static double each(PartEstimate estimate) {
        return estimate.time() / estimate.part().count();
    }
}
