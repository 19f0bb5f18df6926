package laminate.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PackPrice;
import laminate.estimate.Price;
import laminate.estimate.Supply;
import laminate.order.Laying.Roll;
import laminate.order.packs.Pack;
import laminate.order.packs.PackChoice;
import laminate.order.packs.PackCount;
import laminate.order.packs.Packs;
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
 * @param rolls the size of each pack, where a plan of cutting is to fit on them
 * @param loose what all that is needed costs if it is weighed or measured out
 * @param supply how it is sold, empty if it has no price
 */
record Offer(
        PriceBasis measure,
        double amount,
        Optional<Packs> packs,
        Map<Pack, Roll> rolls,
        Optional<LooseCost> loose,
        Optional<Supply> supply) {
    private static final List<PriceBasis> MEASURES =
            List.of(PriceBasis.PIECE, PriceBasis.KG, PriceBasis.M2, PriceBasis.M, PriceBasis.LITRE);

    private static final double ROUNDING = 1e-12;

    /** Sizes that differ by no more are the same. */
    private static final double SIZES = 1e-9;

    /** The price of what is weighed or measured out, the whole need in its basis, and the least that is sold (in the measure). */
    record LooseCost(UnitPrice price, double whole, double least) {}

    /** What is bought of it. */
    record Purchase(List<PackCount> packs, double bought, Optional<Money> cost, Optional<Money> surplusValue) {}

    /** How what is needed is sold, if it has a price: in packs that a plan of its cutting, if there is one, fits on. */
    static Offer of(Need need, Optional<Price> price, Optional<MaterialCut> cut) {
        MaterialQuantity quantity = need.quantity();
        if (need.each().isPresent()) {
            return inPacks(quantity, List.of(piece(need.each().get())), Supply.LOOSE, Optional.empty())
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
                    .filter(pack -> cut.isEmpty() || isWideEnough(pack, cut.get()))
                    .toList();
            return inPacks(quantity, fitting, supply, cut);
        }
        Optional<PackPrice> roll = RollPack.of(price, quantity);
        if (roll.isPresent()) {
            return inPacks(quantity, List.of(roll.get()), supply, cut);
        }
        if (price.price().basis() == PriceBasis.PIECE) {
            UnitPrice each = price.price();
            return inPacks(quantity, List.of(piece(new Money(each.amount(), each.currency()))), supply, cut);
        }
        return loose(quantity, price);
    }

    /** One of the packs has to be wide enough, and long enough for the longest pull. */
    private static boolean canBeCut(List<Pack> packs, Map<Pack, Roll> rolls, MaterialCut cut) {
        double longest =
                cut.lengths().stream().mapToDouble(length -> length).max().orElse(0);
        return packs.stream().anyMatch(pack -> rolls.get(pack).length() >= longest * (1 - SIZES));
    }

    /** A pack of unknown width is trusted to be as wide as was planned for, one of unknown length to be long enough. */
    private static Roll rollOf(PackPrice pack, MaterialQuantity quantity, MaterialCut cut) {
        double width = pack.width().orElse(cut.width());
        OptionalDouble area = inMeasure(pack.amount(), PriceBasis.M2, quantity);
        double byArea = area.isPresent() ? area.getAsDouble() / width : Double.POSITIVE_INFINITY;
        return new Roll(pack.name(), width, pack.length().orElse(byArea));
    }

    private static PackPrice piece(Money each) {
        return PackPrice.of("piece", new Amount(BigDecimal.ONE, PriceBasis.PIECE), each);
    }

    private static boolean isWideEnough(PackPrice pack, MaterialCut cut) {
        return pack.width().orElse(cut.width()) >= cut.width() * (1 - SIZES);
    }

    private static Optional<Offer> inPacks(
            MaterialQuantity quantity, List<PackPrice> sold, Supply supply, Optional<MaterialCut> cut) {
        if (sold.isEmpty()) {
            return Optional.empty();
        }
        PriceBasis measure = sold.get(0).amount().measure();
        OptionalDouble amount = quantity.amount(measure);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        List<Pack> packs = new ArrayList<>();
        Map<Pack, Roll> rolls = new IdentityHashMap<>();
        for (PackPrice sale : sold) {
            Pack pack =
                    Pack.of(sale.name(), sale.amount().value(), sale.price()).withMinimum(sale.minimum());
            packs.add(pack);
            cut.ifPresent(plan -> rolls.put(pack, rollOf(sale, quantity, plan)));
        }
        if (cut.isPresent() && !canBeCut(packs, rolls, cut.get())) {
            return Optional.empty();
        }
        return Optional.of(new Offer(
                measure,
                amount.getAsDouble(),
                Optional.of(new Packs(packs, minimum(supply, measure, quantity))),
                rolls,
                Optional.empty(),
                Optional.of(supply)));
    }

    /** The least amount that is sold, 0 without one or where the need is not known by its measure. */
    private static BigDecimal minimum(Supply supply, PriceBasis measure, MaterialQuantity quantity) {
        Optional<Amount> least = supply.minimum();
        if (least.isEmpty() || least.get().measure() == measure) {
            return least.map(Amount::value).orElse(BigDecimal.ZERO);
        }
        return BigDecimal.valueOf(inMeasure(least.get(), measure, quantity).orElse(0));
    }

    /** So much of a material in another measure: it is in proportion to the need, which is known by several. */
    static OptionalDouble inMeasure(Amount amount, PriceBasis measure, MaterialQuantity quantity) {
        return inMeasure(amount.value().doubleValue(), amount.measure(), measure, quantity);
    }

    static OptionalDouble inMeasure(double value, PriceBasis given, PriceBasis measure, MaterialQuantity quantity) {
        if (given == measure) {
            return OptionalDouble.of(value);
        }
        OptionalDouble inGiven = quantity.amount(given);
        OptionalDouble inMeasure = quantity.amount(measure);
        return inGiven.isPresent() && inMeasure.isPresent() && inGiven.getAsDouble() > 0
                ? OptionalDouble.of(value / inGiven.getAsDouble() * inMeasure.getAsDouble())
                : OptionalDouble.empty();
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
                Map.of(),
                Optional.of(new LooseCost(
                        price.price(),
                        whole.getAsDouble(),
                        minimum(price.supply(), measure.get(), quantity).doubleValue())),
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
        return new Offer(measure, amount, Optional.empty(), Map.of(), Optional.empty(), Optional.empty());
    }

    /** The same for so many times the need. */
    Offer times(double factor) {
        return new Offer(
                measure,
                amount * factor,
                packs,
                rolls,
                loose.map(sold -> new LooseCost(sold.price(), sold.whole() * factor, sold.least())),
                supply);
    }

    /** What covers a shortfall at the least cost; for the little that sums leave over nothing is bought. */
    Purchase buy(double shortfall) {
        double wanted = shortfall > ROUNDING * amount ? shortfall : 0;
        return packs.isPresent() ? buyPacks(packs.get().cheapest(wanted)) : buyLoose(wanted);
    }

    /** What covers a shortfall, in packs that have been chosen if there are any. */
    Purchase buy(double shortfall, List<PackCount> chosen) {
        return packs.isPresent() ? buyPacks(packs.get().choice(shortfall, chosen)) : buy(shortfall);
    }

    private static Purchase buyPacks(PackChoice choice) {
        return new Purchase(
                choice.packs(),
                choice.bought().doubleValue(),
                Optional.of(choice.cost()),
                Optional.of(choice.surplusValue()));
    }

    private Purchase buyLoose(double wanted) {
        double least = wanted > 0 ? loose.map(LooseCost::least).orElse(0.0) : 0;
        double bought = Math.max(wanted, least);
        return new Purchase(List.of(), bought, cost(bought), cost(bought - wanted));
    }

    private Optional<Money> cost(double some) {
        return loose.map(sold -> sold.price().cost(amount > 0 ? sold.whole() * (some / amount) : 0));
    }
}
