package laminate.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PackPrice;
import laminate.estimate.Price;
import laminate.estimate.Supply;
import laminate.order.pieces.MaterialCut;
import laminate.unit.Amount;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/**
 * How a needed material is sold: in packs, weighed or measured out, or at no known price.
 *
 * @param measure the measure in which it is bought
 * @param amount what is needed of it (in the measure)
 * @param packs the packs, empty if it is weighed or measured out or has no price
 * @param loose what all that is needed costs if it is weighed or measured out
 * @param supply how it is sold, empty if it has no price
 */
record Offer(
        PriceBasis measure, double amount, Optional<Packs> packs, Optional<LooseCost> loose, Optional<Supply> supply) {
    private static final List<PriceBasis> MEASURES =
            List.of(PriceBasis.PIECE, PriceBasis.KG, PriceBasis.M2, PriceBasis.M, PriceBasis.LITRE);

    private static final double ROUNDING = 1e-12;

    /** The price of what is weighed or measured out, and the whole need in its basis. */
    record LooseCost(UnitPrice price, double whole) {}

    /** What is bought of it. */
    record Purchase(List<PackCount> packs, double bought, Optional<Money> cost, Optional<Money> surplusValue) {}

    /** How what is needed is sold, if it has a price: in packs that a plan of its cutting, if there is one, fits on. */
    static Offer of(Need need, Optional<Price> price, Optional<MaterialCut> cut) {
        MaterialQuantity quantity = need.quantity();
        if (need.each().isPresent()) {
            return inPacks(quantity, List.of(piece(need.each().get())), Supply.LOOSE)
                    .orElseThrow();
        }
        return need.group() == Group.ITEM
                ? unpriced(need)
                : price.flatMap(sold -> priced(quantity, sold, cut)).orElseGet(() -> unpriced(need));
    }

    private static Optional<Offer> priced(MaterialQuantity quantity, Price price, Optional<MaterialCut> cut) {
        Supply supply = price.supply();
        if (!supply.packs().isEmpty()) {
            List<PackPrice> fitting = supply.packs().stream()
                    .filter(pack -> pack.isOf(quantity.thickness()))
                    .filter(pack -> cut.isEmpty() || holds(pack, quantity, cut.get()))
                    .toList();
            return inPacks(quantity, fitting, supply);
        }
        Optional<PackPrice> roll = RollPack.of(price, quantity);
        if (roll.isPresent()) {
            return inPacks(quantity, List.of(roll.get()), supply);
        }
        if (price.price().basis() == PriceBasis.PIECE) {
            UnitPrice each = price.price();
            return inPacks(quantity, List.of(piece(new Money(each.amount(), each.currency()))), supply);
        }
        return loose(quantity, price);
    }

    /** A pack of unknown width is trusted to. */
    private static boolean holds(PackPrice pack, MaterialQuantity quantity, MaterialCut cut) {
        if (pack.width().isEmpty()) {
            return true;
        }
        double width = pack.width().getAsDouble();
        return cut.canBeCutFrom(width, pack.length().isPresent() ? pack.length() : length(pack, width, quantity));
    }

    private static OptionalDouble length(PackPrice pack, double width, MaterialQuantity quantity) {
        OptionalDouble all = quantity.amount(pack.amount().measure());
        return all.isEmpty() || all.getAsDouble() == 0 || quantity.area().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(pack.amount().value().doubleValue()
                        / all.getAsDouble()
                        * quantity.area().getAsDouble()
                        / width);
    }

    private static PackPrice piece(Money each) {
        return PackPrice.of("piece", new Amount(BigDecimal.ONE, PriceBasis.PIECE), each);
    }

    private static Optional<Offer> inPacks(MaterialQuantity quantity, List<PackPrice> sold, Supply supply) {
        if (sold.isEmpty()) {
            return Optional.empty();
        }
        PriceBasis measure = sold.get(0).amount().measure();
        OptionalDouble amount = quantity.amount(measure);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        List<Pack> packs = new ArrayList<>();
        sold.forEach(pack -> packs.add(
                Pack.of(pack.name(), pack.amount().value(), pack.price()).withMinimum(pack.minimum())));
        BigDecimal minimum = supply.minimum()
                .filter(least -> least.measure() == measure)
                .map(Amount::value)
                .orElse(BigDecimal.ZERO);
        return Optional.of(new Offer(
                measure,
                amount.getAsDouble(),
                Optional.of(new Packs(packs, minimum)),
                Optional.empty(),
                Optional.of(supply)));
    }

    private static Optional<Offer> loose(MaterialQuantity quantity, Price price) {
        OptionalDouble whole = price.amountOf(quantity);
        Optional<PriceBasis> measure = price.price().basis().measure();
        if (whole.isEmpty() || measure.isEmpty()) {
            return Optional.empty();
        }
        PriceBasis basis = price.price().basis();
        double amount = basis == measure.get()
                ? whole.getAsDouble()
                : measure.get()
                        .unit()
                        .orElseThrow()
                        .fromSi(basis.unit().orElseThrow().toSi(whole.getAsDouble()));
        return Optional.of(new Offer(
                measure.get(),
                amount,
                Optional.empty(),
                Optional.of(new LooseCost(price.price(), whole.getAsDouble())),
                Optional.of(price.supply())));
    }

    /** By the measure that says most: cores by area, all else by mass if it is known. */
    private static Offer unpriced(Need need) {
        MaterialQuantity quantity = need.quantity();
        PriceBasis measure = need.group() == Group.CORE
                ? PriceBasis.M2
                : MEASURES.stream()
                        .filter(basis -> quantity.amount(basis).isPresent())
                        .findFirst()
                        .orElse(PriceBasis.KG);
        double amount = quantity.amount(measure).orElse(0);
        return new Offer(measure, amount, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What covers a shortfall at the least cost; for the little that sums leave over nothing is bought. */
    Purchase buy(double shortfall) {
        double wanted = shortfall > ROUNDING * amount ? shortfall : 0;
        return packs.isPresent() ? buyPacks(packs.get().cheapest(wanted)) : buyLoose(wanted);
    }

    private static Purchase buyPacks(PackChoice choice) {
        return new Purchase(
                choice.packs(),
                choice.bought().doubleValue(),
                Optional.of(choice.cost()),
                Optional.of(choice.surplusValue()));
    }

    private Purchase buyLoose(double wanted) {
        double least = wanted > 0
                ? supply.flatMap(Supply::minimum)
                        .filter(minimum -> minimum.measure() == measure)
                        .map(minimum -> minimum.value().doubleValue())
                        .orElse(0.0)
                : 0;
        double bought = Math.max(wanted, least);
        return new Purchase(List.of(), bought, cost(bought), cost(bought - wanted));
    }

    private Optional<Money> cost(double some) {
        return loose.map(sold -> sold.price().cost(amount > 0 ? sold.whole() * (some / amount) : 0));
    }
}
