package laminate.quote;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.quote.price.BatchPrice;
import laminate.quote.price.BuildUp;
import laminate.quote.price.DirectCost;
import laminate.quote.price.Mould;
import laminate.quote.price.Pricing;
import laminate.quote.price.Returns;
import laminate.quote.price.Sensitivity;
import laminate.quote.price.Sensitivity.Input;
import laminate.unit.Money;

/**
 * Makes the offer for a batch of one part, with all that a yard wants to know of it.
 *
 * @param making what the yard makes it at
 * @param materials what the materials of a batch cost
 */
record Offering(Making making, Function<PartEstimate, Money> materials) {

    private static final double MOVED = 0.1;
    private static final double MOVED_HOURS = 0.2;
    private static final int MOST_SWINGS = 5;

    Quote.Offer offer(Part batch, List<Mould> moulds) {
        Pricing pricing = making.terms().pricing();
        PartEstimate estimate = making.estimate(batch);
        BuildUp build = new BuildUp(making.direct(estimate, materials.apply(estimate)), moulds, pricing);
        BatchPrice price = build.price();
        List<Sensitivity.Swing> swings = Sensitivity.of(build, MOVED);
        return new Quote.Offer(
                build,
                price,
                price.direct().time() > 0
                        ? Returns.byHour(price, pricing)
                        : Money.zero(price.net().currency()),
                breakEven(estimate, build, price.unitNet()),
                swings.subList(0, Math.min(MOST_SWINGS, swings.size())),
                Sensitivity.swing(build, Input.MATERIALS, MOVED),
                Sensitivity.swing(build, Input.HOURS, MOVED_HOURS),
                making.mouldTime(estimate));
    }

    /** Materials, consumables and items are taken in proportion to the offer's; others' pulls off its mould stay. */
    private OptionalInt breakEven(PartEstimate estimate, BuildUp build, Money each) {
        List<Mould> moulds = build.moulds().stream().map(Mould::unplanned).toList();
        int most = build.direct().count();
        for (Mould mould : build.moulds()) {
            most = Math.max(most, mould.plannedPulls().orElse(1));
        }
        return Returns.breakEven(each, sold -> costOf(sold, estimate, build.direct(), moulds), most);
    }

    private Money costOf(int sold, PartEstimate estimate, DirectCost offered, List<Mould> moulds) {
        DirectCost direct = offered.scaledTo(sold, making.paidTime(estimate, sold));
        return new BuildUp(direct, moulds, making.terms().pricing()).price().cost();
    }
}
