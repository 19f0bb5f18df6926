package laminate.print.estimate;

import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.estimate.OperationTime;
import laminate.estimate.PartEstimate;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.process.Operation;

/** Hours and cost, for all mouldings. */
final class CostSection {
    private final Measures measures;

    CostSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, PartEstimate estimate) {
        if (!estimate.operations().isEmpty()) {
            report.heading(2, "Hours").grid(hours(estimate));
        }
        estimate.cost().ifPresent(cost -> addCost(report, cost));
    }

    private Table hours(PartEstimate estimate) {
        Table.Builder table = new Table.Builder(
                Column.words("operation"), Column.numbers("on", ""), Column.words(""), Column.numbers("time", "h"));
        for (OperationTime time : estimate.operations()) {
            table.row(time.operation().name(), amount(time), basis(time), EstimateWords.hours(time.time()));
        }
        return table.total("together", "", "", EstimateWords.hours(estimate.time()))
                .build();
    }

    private String amount(OperationTime time) {
        return switch (time.operation().basis()) {
            case AREA, LAYER_AREA -> Measures.number(time.amount(), measures.area());
            case EDGE -> Measures.number(time.amount(), measures.longLength());
            case STAGE, ITEM, MOULDING -> Measures.count(time.amount());
        };
    }

    /** What the amount is counted in. */
    private String basis(OperationTime time) {
        return switch (time.operation().basis()) {
            case AREA, LAYER_AREA -> measures.area().symbol() + repeated(time.operation());
            case EDGE -> measures.longLength().symbol() + " of edge";
            case STAGE -> counted(time, "stage");
            case ITEM -> counted(time, "item");
            case MOULDING -> counted(time, "moulding");
        };
    }

    private static String counted(OperationTime time, String one) {
        return time.amount() == 1 ? one : one + "s";
    }

    /** What is done layer by layer, or coat by coat, counts its area as often as it is done; see {@link Operation}. */
    private static String repeated(Operation operation) {
        return switch (operation.name()) {
            case Operation.GELCOAT -> ", every coat";
            case Operation.LAY_UP, Operation.DRY_LAY_UP -> ", every layer";
            case Operation.CORE, Operation.BAGGING -> "";
            default -> operation.basis() == Operation.Basis.LAYER_AREA ? ", every layer" : "";
        };
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
                    CostWords.word(line.category()),
                    line.name(),
                    CostWords.amount(line),
                    line.cost().amount().toPlainString());
        }
        for (Category category : Category.values()) {
            if (cost.lines().stream().anyMatch(line -> line.category() == category)) {
                table.total(
                        CostWords.word(category),
                        "",
                        "",
                        cost.of(category).amount().toPlainString());
            }
        }
        String total = cost.total().isPresent() ? "total" : "known total";
        return table.total(total, "", "", cost.knownTotal().amount().toPlainString())
                .build();
    }
}
