package laminate.print.order;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import laminate.estimate.PartEstimate;
import laminate.order.Delivery;
import laminate.order.Need;
import laminate.order.Order;
import laminate.order.OrderLine;
import laminate.order.packs.PackCount;
import laminate.order.pieces.Cutting;
import laminate.print.JsonWriter;
import laminate.print.Printer;
import laminate.unit.Money;
import laminate.unit.PriceBasis;

/**
 * Prints an order as one JSON object with a list of lines. Amounts have the measure in which the material is bought in the
 * key: {@code need_kg}, {@code need_m2}, {@code need_m}, {@code need_l} or {@code need_pieces}; {@code in_stock} is in the
 * same. Numbers to 15 significant digits, money as text in the currency's digits, keys in a fixed order. What is not known
 * is left out; there is never a null.
 */
public final class OrderJson implements Printer<OrderSheet> {

    /** A printer. */
    public OrderJson() {}

    @Override
    public void print(List<OrderSheet> sheets, Appendable out) throws IOException {
        JsonWriter.write(out, json -> sheets.forEach(sheet -> print(sheet, json)));
    }

    private static void print(OrderSheet sheet, JsonWriter json) {
        json.object().key("parts").array();
        for (PartEstimate part : sheet.parts()) {
            json.object()
                    .field("part", part.part().name())
                    .field("count", part.part().count())
                    .end();
        }
        json.end();
        print(sheet.order(), json);
        if (!sheet.cutting().equals(Cutting.NONE)) {
            CuttingJson.print(sheet.cutting(), sheet.order(), json);
        }
        json.end();
    }

    private static void print(Order order, JsonWriter json) {
        order.wanted().ifPresent(day -> json.field("used_on", day.toString()));
        order.knownTotal().ifPresent(total -> json.field("currency", total.currency()));
        json.key("lines").array();
        order.lines().forEach(line -> print(line, json));
        json.end();
        order.knownTotal().ifPresent(total -> money(order.total().isPresent() ? "total" : "known_total", total, json));
        if (!order.missing().isEmpty()) {
            json.key("missing_prices").array();
            order.missing().forEach(json::text);
            json.end();
        }
        order.surplusValue().ifPresent(value -> money("surplus_value", value, json));
        json.key("remarks").array();
        order.remarks().forEach(json::text);
        json.end();
    }

    private static void print(OrderLine line, JsonWriter json) {
        Need need = line.need();
        String measure = key(line.measure());
        json.object()
                .field("material", line.material())
                .field("group", need.group().name().toLowerCase(Locale.ROOT))
                .field("thickness_m", need.quantity().thickness())
                .field("need_" + measure, line.amount());
        if (line.measure() == PriceBasis.LITRE) {
            json.field("need_kg", need.quantity().mass());
        }
        json.field("in_parts_" + measure, need.inParts() * line.amount())
                .field("laps_" + measure, Math.max(0, need.laps()) * line.amount())
                .field("trimmed_" + measure, need.trimmed() * line.amount())
                .field("waste_" + measure, need.wasted() * line.amount())
                .field("in_stock", line.inStock())
                .field("shortfall_" + measure, line.shortfall())
                .field("buy_" + measure, line.bought())
                .key("packs")
                .array();
        line.packs().forEach(packs -> print(packs, measure, json));
        json.end().field("surplus_" + measure, line.surplus());
        line.surplusValue().ifPresent(value -> money("surplus_value", value, json));
        line.cost().ifPresent(cost -> money("cost", cost, json));
        print(line.delivery(), json);
        json.end();
    }

    private static void print(PackCount packs, String measure, JsonWriter json) {
        json.object()
                .field("pack", packs.pack().name())
                .field("count", packs.count())
                .field("amount_" + measure, packs.pack().amount().doubleValue());
        money("price", packs.pack().price(), json);
        json.end();
    }

    private static void print(Delivery delivery, JsonWriter json) {
        delivery.leadDays().ifPresent(days -> json.field("lead_time_days", days));
        delivery.orderBy().ifPresent(day -> json.field("order_by", day.toString()));
        delivery.shelfDays().ifPresent(days -> json.field("shelf_life_days", days));
        delivery.deliveredFrom().ifPresent(day -> json.field("delivered_from", day.toString()));
    }

    private static void money(String key, Money money, JsonWriter json) {
        json.field(key, money.amount().toPlainString());
    }

    private static String key(PriceBasis measure) {
        return switch (measure) {
            case KG -> "kg";
            case M2 -> "m2";
            case M -> "m";
            case LITRE -> "l";
            default -> "pieces";
        };
    }
}
