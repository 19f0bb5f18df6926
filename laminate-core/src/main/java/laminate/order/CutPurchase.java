package laminate.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.order.Laying.Roll;
import laminate.order.Laying.Taken;
import laminate.order.packs.PackCount;
import laminate.order.pieces.MaterialCut;
import laminate.unit.PriceBasis;

/**
 * Buys what is planned to be cut: packs that all pulls fit on, none over the end of a roll, and that hold no less than the
 * pulls and the ends that are lost.
 */
final class CutPurchase {
    /** Needs are summed up in doubles. */
    private static final double ROUNDING = 1e-10;

    private final Need reckoned;
    private final MaterialCut cut;
    private final Offer offer;
    private final double inStock;
    private final Laying laying;

    /**
     * What is bought.
     *
     * @param need what is needed, with the ends that are lost
     * @param packs the packs, empty if it is weighed or measured out or has no price
     * @param rolls the rolls that are taken from
     */
    record Bought(Need need, List<PackCount> packs, List<TakenRoll> rolls) {}

    /**
     * Begins a purchase.
     *
     * @param reckoned what is needed with the usual waste
     * @param cut how it is cut
     * @param offer how it is sold
     * @param stock the items in stock, each by itself (in the measure of the offer)
     */
    CutPurchase(Need reckoned, MaterialCut cut, Offer offer, List<Double> stock) {
        this.reckoned = reckoned;
        this.cut = cut;
        this.offer = offer;
        inStock = stock.stream().mapToDouble(amount -> amount).sum();
        laying = new Laying(cut, rolls(stock), offer.rolls());
    }

    /** Each item of the stock is taken for one length as wide as was planned for. */
    private List<Roll> rolls(List<Double> stock) {
        List<Roll> rolls = new ArrayList<>();
        for (double amount : stock) {
            double area = Offer.inMeasure(amount, offer.measure(), PriceBasis.M2, reckoned.quantity())
                    .orElse(0);
            if (area > 0) {
                rolls.add(new Roll("in stock", cut.width(), area / cut.width()));
            }
        }
        return rolls;
    }

    /** What is weighed or measured out comes in lengths of the rolls that it was planned for. */
    Bought buy() {
        if (offer.packs().isEmpty()) {
            Taken taken = laying.onPlannedRolls();
            return new Bought(need(taken.area()), List.of(), taken.rolls());
        }
        double wanted = Math.max(0, amount(need(cut.area())) - inStock);
        List<PackCount> packs = offer.packs()
                .get()
                .cheapest(wanted > ROUNDING * offer.amount() ? wanted : 0, this::cover)
                .packs();
        Taken taken = laying.on(packs).orElseThrow();
        return new Bought(need(taken.area()), packs, taken.rolls());
    }

    private Need need(double area) {
        return reckoned.atLeast(area, cut.covered());
    }

    private double amount(Need need) {
        return need.quantity().amount(offer.measure()).orElse(0);
    }

    private boolean cover(List<PackCount> packs) {
        double bought = packs.stream()
                .mapToDouble(count -> count.amount().doubleValue())
                .sum();
        Optional<Taken> taken = laying.on(packs);
        return taken.isPresent() && inStock + bought >= amount(need(taken.get().area())) * (1 - ROUNDING);
    }
}
