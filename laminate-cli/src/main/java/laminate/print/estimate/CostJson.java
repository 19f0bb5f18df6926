package laminate.print.estimate;

import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.PartEstimate;
import laminate.print.JsonWriter;

/** The cost of all mouldings in JSON; money is text, so that no reader rounds it. */
final class CostJson {
    private CostJson() {}

    static void print(PartEstimate estimate, Cost cost, JsonWriter json) {
        json.key("cost").object().field("currency", cost.currency());
        cost.date().ifPresent(date -> json.field("date", date.toString()));
        for (Category category : Category.values()) {
            if (isKnown(category, estimate, cost)) {
                json.field(CostWords.word(category), cost.of(category).amount().toPlainString());
            }
        }
        String key = cost.total().isPresent() ? "total" : "known_total";
        json.field(key, cost.knownTotal().amount().toPlainString());
        if (!cost.missing().isEmpty()) {
            json.key("missing_prices").array();
            cost.missing().forEach(json::text);
            json.end();
        }
        json.key("lines").array();
        cost.lines().forEach(line -> print(line, json));
        json.end().end();
    }

    /** A head without lines is nothing to pay if there is nothing under it, and unknown otherwise. */
    private static boolean isKnown(Category category, PartEstimate estimate, Cost cost) {
        boolean isEmpty = switch (category) {
            case MATERIALS -> estimate.quantities().materials().isEmpty();
            case CONSUMABLES -> estimate.consumables().isEmpty();
            case ITEMS -> estimate.part().items().isEmpty();
            case LABOUR -> estimate.operations().isEmpty();
        };
        return isEmpty || cost.lines().stream().anyMatch(line -> line.category() == category);
    }

    private static void print(Cost.Line line, JsonWriter json) {
        json.object()
                .field("head", CostWords.word(line.category()))
                .field("name", line.name())
                .field("amount", CostWords.amount(line));
        line.price()
                .ifPresent(price -> json.field("quantity", line.quantity())
                        .field("unit", price.basis().symbol())
                        .field("unit_price", price.amount().toPlainString()));
        json.field("cost", line.cost().amount().toPlainString()).end();
    }
}
