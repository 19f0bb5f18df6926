package laminate.print;

import java.util.Locale;
import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.OperationTime;
import laminate.estimate.PartEstimate;
import laminate.print.Table.Column;
import laminate.process.Operation;

/** Hours and cost, for all mouldings. */
final class CostSection {
    private CostSection() {}

    static void addTo(Report.Builder report, PartEstimate estimate) {
        if (!estimate.operations().isEmpty()) {
            report.heading(2, "Hours").grid(hours(estimate));
        }
        estimate.cost().ifPresent(cost -> addCost(report, cost));
    }

    private static Table hours(PartEstimate estimate) {
        Table.Builder table = new Table.Builder(
                Column.words("operation"), Column.numbers("on", ""), Column.words(""), Column.numbers("time", "h"));
        for (OperationTime time : estimate.operations()) {
            table.row(
                    time.operation().name(), amount(time), EstimateWords.basis(time), EstimateWords.hours(time.time()));
        }
        return table.total("together", "", "", EstimateWords.hours(estimate.time()))
                .build();
    }

    private static String amount(OperationTime time) {
        return time.operation().basis() == Operation.Basis.MOULDING
                ? Measures.count(time.amount())
                : Measures.number(time.amount());
    }

    private static void addCost(Report.Builder report, Cost cost) {
        String date = cost.date().map(day -> ", prices of " + day).orElse("");
        report.heading(2, "Cost" + date).grid(lines(cost));
        if (!cost.missing().isEmpty()) {
            report.paragraph("No price is known for: " + String.join(", ", cost.missing())
                    + ". There is no total until there is.");
        }
    }

    private static Table lines(Cost cost) {
        Table.Builder table = new Table.Builder(
                Column.words(""),
                Column.words("for"),
                Column.words("amount and price"),
                Column.numbers("cost", cost.currency()));
        for (Cost.Line line : cost.lines()) {
            table.row(
                    word(line.category()),
                    line.name(),
                    line.amount(),
                    line.cost().amount().toPlainString());
        }
        for (Category category : Category.values()) {
            if (cost.lines().stream().anyMatch(line -> line.category() == category)) {
                table.total(word(category), "", "", cost.of(category).amount().toPlainString());
            }
        }
        String total = cost.total().isPresent() ? "total" : "known total";
        return table.total(total, "", "", cost.knownTotal().amount().toPlainString())
                .build();
    }

    static String word(Category category) {
        return category.name().toLowerCase(Locale.ROOT);
    }
}
