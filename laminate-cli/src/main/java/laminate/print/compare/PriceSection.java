package laminate.print.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.compare.Alternative;
import laminate.compare.CostRow;
import laminate.compare.SideBySide;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.print.estimate.CostWords;
import laminate.unit.Money;

/** What one part costs by each alternative, line by line, and what the choice costs or saves. */
final class PriceSection {
    private final List<Alternative> ways;

    PriceSection(List<Alternative> ways) {
        this.ways = ways;
    }

    void addTo(Report.Builder report, SideBySide comparison) {
        List<CostRow> rows = comparison.costs();
        if (rows.isEmpty()) {
            return;
        }
        report.heading(2, "Cost of one part, and what the choice costs or saves")
                .grid(table(rows));
    }

    private Table table(List<CostRow> rows) {
        Table.Builder table = new Table.Builder(columns(currency(rows)));
        rows.stream().filter(row -> !row.name().isEmpty()).forEach(row -> table.row(cells(row)));
        rows.stream().filter(row -> row.name().isEmpty()).forEach(row -> table.total(cells(row)));
        return table.build();
    }

    private List<Column> columns(String currency) {
        List<Column> columns = new ArrayList<>(List.of(Column.words(""), Column.words("for")));
        for (int i = 0; i < ways.size(); i++) {
            columns.add(Column.numbers(ways.get(i).name(), currency).in(i));
            if (i > 0) {
                columns.add(Column.numbers("extra", currency).in(i));
            }
        }
        return columns;
    }

    private static String currency(List<CostRow> rows) {
        return rows.stream()
                .flatMap(row -> row.each().stream().flatMap(Optional::stream))
                .map(Money::currency)
                .findFirst()
                .orElse("");
    }

    private List<String> cells(CostRow row) {
        String head = row.head().map(CostWords::word).orElse("total");
        List<String> cells = new ArrayList<>(List.of(head, row.name()));
        for (int i = 0; i < ways.size(); i++) {
            cells.add(row.each()
                    .get(i)
                    .map(money -> money.amount().toPlainString())
                    .orElse("no price"));
            if (i > 0) {
                cells.add(row.extra(i).map(PriceSection::signed).orElse(""));
            }
        }
        return cells;
    }

    /** What it costs with a plus, what it saves with a minus. */
    private static String signed(Money money) {
        BigDecimal amount = money.amount();
        return amount.signum() > 0 ? "+" + amount.toPlainString() : amount.toPlainString();
    }
}
