package laminate.print.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.order.Delivery;
import laminate.order.Group;
import laminate.order.Need;
import laminate.order.Order;
import laminate.order.OrderLine;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Money;
import laminate.unit.UnitSystem;

/** Tells an order as a document, free of any format: what to buy stands first, group by group. */
public final class OrderReport {
    private final OrderWords words;
    private final CuttingSection cutting;

    /**
     * How orders are told.
     *
     * @param system the reader's units
     */
    public OrderReport(UnitSystem system) {
        this.words = new OrderWords(new Measures(system));
        this.cutting = new CuttingSection(new Measures(system));
    }

    /**
     * Tells an order.
     *
     * @param sheet the order with what it is for
     * @return the document
     */
    public Report of(OrderSheet sheet) {
        Order order = sheet.order();
        Report.Builder report = new Report.Builder().heading(1, "Order");
        addFacts(report, sheet);
        for (Group group : Group.values()) {
            List<OrderLine> lines = order.lines(group);
            if (!lines.isEmpty()) {
                report.heading(2, heading(group)).grid(purchases(lines));
            }
        }
        report.heading(2, "Where the need goes").grid(needs(order));
        addDelivery(report, order);
        if (!order.missing().isEmpty()) {
            report.paragraph("No price is known for: " + String.join(", ", order.missing())
                    + ". There is no total until there is.");
        }
        cutting.addTo(report, sheet.cutting(), sheet.order());
        List<String> remarks = new ArrayList<>(order.remarks());
        remarks.addAll(sheet.cutting().remarks());
        if (!remarks.isEmpty()) {
            report.heading(2, "To mind").bullets(remarks);
        }
        return report.build();
    }

    private static String heading(Group group) {
        String word = group.word();
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static void addFacts(Report.Builder report, OrderSheet sheet) {
        List<String> parts = new ArrayList<>();
        for (PartEstimate part : sheet.parts()) {
            parts.add(part.part().count() + " × " + part.part().name());
        }
        Order order = sheet.order();
        report.fact("parts", String.join(", ", parts));
        order.wanted().ifPresent(day -> report.fact("used on", day.toString()));
        order.knownTotal()
                .ifPresent(total -> report.fact(order.total().isPresent() ? "total" : "known total", total.toString()));
        order.surplusValue()
                .filter(value -> value.amount().signum() > 0)
                .ifPresent(value -> report.fact("of it left over", value.toString()));
    }

    private Table purchases(List<OrderLine> lines) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.numbers("need", ""),
                Column.numbers("in stock", ""),
                Column.numbers("buy", ""),
                Column.words(""),
                Column.words("packs"),
                Column.numbers("surplus", ""),
                Column.numbers("cost", currency(lines)));
        for (OrderLine line : lines) {
            table.row(
                    words.name(line),
                    words.amount(line.amount(), line.measure()),
                    words.unlessZero(line.inStock(), line.measure()),
                    words.unlessZero(line.bought(), line.measure()),
                    words.symbol(line.measure()),
                    words.packs(line),
                    words.unlessZero(line.surplus(), line.measure()),
                    OrderWords.money(line.cost()));
        }
        return lines.size() > 1 && sum(lines).isPresent()
                ? table.total("together", "", "", "", "", "", "", OrderWords.money(sum(lines)))
                        .build()
                : table.build();
    }

    private static Optional<Money> sum(List<OrderLine> lines) {
        return lines.stream().flatMap(line -> line.cost().stream()).reduce(Money::plus);
    }

    private static String currency(List<OrderLine> lines) {
        return sum(lines).map(Money::currency).orElse("");
    }

    private Table needs(Order order) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.numbers("need", ""),
                Column.words(""),
                Column.numbers("in the parts", ""),
                Column.numbers("laps", ""),
                Column.numbers("trimmed", ""),
                Column.numbers("waste", ""));
        for (OrderLine line : order.lines()) {
            Need need = line.need();
            if (need.inParts() > 0 && need.group() != Group.ITEM) {
                table.row(
                        words.name(line),
                        words.amount(line.amount(), line.measure()),
                        words.symbol(line.measure()),
                        share(need.inParts(), line),
                        share(need.laps(), line),
                        share(need.trimmed(), line),
                        share(need.wasted(), line));
            }
        }
        return table.build();
    }

    private String share(double share, OrderLine line) {
        return share < 1e-9 ? "" : words.amount(share * line.amount(), line.measure());
    }

    private static void addDelivery(Report.Builder report, Order order) {
        List<OrderLine> timed = order.lines().stream()
                .filter(line -> line.bought() > 0)
                .filter(line -> line.delivery().leadDays().isPresent()
                        || line.delivery().shelfDays().isPresent())
                .toList();
        if (!timed.isEmpty()) {
            report.heading(2, "Delivery and keeping").grid(deliveries(order, timed));
        }
    }

    private static Table deliveries(Order order, List<OrderLine> lines) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.numbers("lead time", "days"),
                Column.words("order by"),
                Column.numbers("keeps", "days"),
                Column.words("delivered from"),
                Column.words("surplus to"),
                Column.numbers("worth", currency(lines)));
        for (OrderLine line : lines) {
            Delivery delivery = line.delivery();
            boolean isOver = line.surplus() > 0;
            table.row(
                    line.material(),
                    OrderWords.days(delivery.leadDays()),
                    OrderWords.day(delivery.orderBy()),
                    OrderWords.days(delivery.shelfDays()),
                    OrderWords.day(delivery.deliveredFrom()),
                    isOver ? OrderWords.day(order.wanted().flatMap(delivery::keepsUntil)) : "",
                    isOver ? OrderWords.money(line.surplusValue()) : "");
        }
        return table.build();
    }
}
