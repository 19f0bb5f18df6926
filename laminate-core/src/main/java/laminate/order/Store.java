package laminate.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.unit.PriceBasis;

/** What lies in the store, by material; each item is taken for one need only. */
final class Store {
    private final Map<String, List<StockItem>> items = new HashMap<>();
    private final Optional<LocalDate> wanted;
    private final List<String> remarks = new ArrayList<>();

    Store(List<StockItem> stock, Optional<LocalDate> wanted) {
        this.wanted = wanted;
        for (StockItem item : stock) {
            items.computeIfAbsent(item.material(), first -> new ArrayList<>()).add(item);
        }
    }

    /** What may be used of a material, in a measure, each item by itself. It is taken out of the store. */
    List<Double> amounts(Need need, PriceBasis measure) {
        List<Double> amounts = new ArrayList<>();
        List<StockItem> left = new ArrayList<>();
        for (StockItem item : items.getOrDefault(need.material(), List.of())) {
            OptionalDouble amount = amount(item, need, measure);
            if (amount.isPresent()) {
                amounts.add(amount.getAsDouble());
            } else {
                left.add(item);
            }
        }
        items.put(need.material(), left);
        return amounts;
    }

    /** Empty if it is for another need; nothing if it may not be used, which is remarked. */
    private OptionalDouble amount(StockItem item, Need need, PriceBasis measure) {
        if (need.group() == Group.ITEM || !isThickness(item, need)) {
            return OptionalDouble.empty();
        }
        String name = item.amount() + " of " + item.material() + " in stock";
        if (!item.isGoodOn(wanted)) {
            remarks.add(name + " is to be used by " + item.useBy().orElseThrow() + "; it is not counted");
            return OptionalDouble.of(0);
        }
        OptionalDouble converted = Offer.inMeasure(item.amount(), measure, need.quantity());
        if (converted.isEmpty()) {
            remarks.add(name + " cannot be held against a need in " + measure + "; it is not counted");
            return OptionalDouble.of(0);
        }
        if (wanted.isEmpty() && item.useBy().isPresent()) {
            remarks.add(
                    name + " is counted; it is to be used by " + item.useBy().get());
        }
        return converted;
    }

    /** Sheets of an unstated thickness serve for the first need of that core. */
    private static boolean isThickness(StockItem item, Need need) {
        OptionalDouble wanted = need.quantity().thickness();
        return item.thickness().isEmpty()
                || wanted.isPresent() && Math.abs(item.thickness().getAsDouble() - wanted.getAsDouble()) < 1e-6;
    }

    /** What to mind of the stock. */
    List<String> remarks() {
        return List.copyOf(remarks);
    }
}
