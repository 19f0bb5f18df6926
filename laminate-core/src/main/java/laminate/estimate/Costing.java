package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Cost.Category;
import laminate.part.Item;
import laminate.part.Part;
import laminate.process.Labour;
import laminate.process.Workshop;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/** Prices quantities and hours, and names what has no price. */
final class Costing {
    private final PriceList prices;
    private final List<Cost.Line> lines = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private Costing(PriceList prices) {
        this.prices = prices;
    }

    static Cost of(
            Part part,
            Workshop workshop,
            PriceList prices,
            List<MaterialQuantity> materials,
            List<MaterialQuantity> consumables,
            double seconds) {
        Costing costing = new Costing(prices);
        for (MaterialQuantity quantity : materials) {
            costing.addMaterial(Category.MATERIALS, quantity);
        }
        for (MaterialQuantity quantity : consumables) {
            costing.addMaterial(Category.CONSUMABLES, quantity);
        }
        if (workshop.consumables().share().isPresent()) {
            costing.addShare(workshop.consumables().share().getAsDouble());
        }
        for (Item item : part.items()) {
            costing.addItem(item, part.count());
        }
        costing.addLabour(workshop.labour(), seconds);
        return new Cost(prices.currency(), prices.date(), costing.lines, costing.missing);
    }

    private void addMaterial(Category category, MaterialQuantity quantity) {
        Optional<Price> found = prices.find(quantity.material());
        if (found.isEmpty()) {
            miss(quantity.material());
            return;
        }
        Price price = found.get();
        OptionalDouble amount = price.amountOf(quantity);
        if (amount.isEmpty()) {
            miss(quantity.material() + " (its price is by "
                    + price.price().basis().symbol() + ", which it is not measured by)");
            return;
        }
        lines.add(Cost.Line.of(category, quantity.material(), amount.getAsDouble(), price.price()));
    }

    private void miss(String name) {
        if (!missing.contains(name)) {
            missing.add(name);
        }
    }

    private void addShare(double share) {
        Money materials = lines.stream()
                .filter(line -> line.category() == Category.MATERIALS)
                .map(Cost.Line::cost)
                .reduce(Money.zero(prices.currency()), Money::plus);
        lines.add(new Cost.Line(Category.CONSUMABLES, "consumables", share, Optional.empty(), materials.times(share)));
    }

    private void addItem(Item item, int mouldings) {
        long count = (long) item.count() * mouldings;
        if (item.price().isEmpty()) {
            miss(item.name());
            return;
        }
        Money each = item.price().get();
        checkCurrency(item.name(), each.currency());
        lines.add(Cost.Line.of(
                Category.ITEMS, item.name(), count, new UnitPrice(each.amount(), each.currency(), PriceBasis.PIECE)));
    }

    private void addLabour(Labour labour, double seconds) {
        if (seconds == 0) {
            return;
        }
        if (labour.rate().isEmpty()) {
            miss(Cost.LABOUR);
            return;
        }
        UnitPrice rate = labour.rate().get();
        checkCurrency(Cost.LABOUR, rate.currency());
        lines.add(Cost.Line.of(Category.LABOUR, Cost.LABOUR, seconds / 3600, rate));
    }

    private void checkCurrency(String what, String currency) {
        if (!currency.equals(prices.currency())) {
            throw new IllegalArgumentException(
                    what + " is priced in " + currency + ", the price list in " + prices.currency());
        }
    }
}
