package laminate.print.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.compare.Alternative;
import laminate.compare.BreakEven;
import laminate.compare.CostCurve;
import laminate.compare.SideBySide;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Money;

/** From how many parts on one alternative is cheaper than another, and the curves that say so. */
final class BreakEvenSection {
    private final List<Alternative> ways;

    BreakEvenSection(List<Alternative> ways) {
        this.ways = ways;
    }

    void addTo(Report.Builder report, SideBySide comparison) {
        if (ways.stream().allMatch(way -> way.curve().isEmpty())) {
            return;
        }
        report.heading(2, "How many parts make it worth while").grid(once());
        List<BreakEven> points = comparison.breakEvens();
        if (points.isEmpty()) {
            report.paragraph("None overtakes another, up to " + CostCurve.MOST_PARTS + " parts.");
        } else {
            report.grid(breakEvens(points));
        }
        report.paragraph("Cost of each part with its share of set-up and moulds, by number of parts:")
                .grid(curve(comparison));
    }

    private Table once() {
        Table.Builder table = new Table.Builder(
                Column.words("way"),
                Column.numbers("set-up, once", currency()),
                Column.numbers("first mould", currency()),
                Column.numbers("lasts", "parts"),
                Column.numbers("then each part", currency()));
        for (Alternative way : ways) {
            way.curve()
                    .ifPresent(curve -> table.row(
                            way.name(),
                            amount(curve.setUp()),
                            curve.mould().map(mould -> amount(mould.cost(1))).orElse(""),
                            curve.life().isPresent()
                                    ? Integer.toString(curve.life().getAsInt())
                                    : "",
                            amount(curve.each())));
        }
        return table.build();
    }

    private static Table breakEvens(List<BreakEven> points) {
        Table.Builder table = new Table.Builder(
                Column.numbers("from part", ""),
                Column.words("is cheaper"),
                Column.words("than"),
                Column.words("for good"));
        for (BreakEven point : points) {
            table.row(Integer.toString(point.parts()), point.overtaking(), point.overtaken(), forGood(point));
        }
        return table.build();
    }

    private static String forGood(BreakEven point) {
        if (point.forGood().isEmpty()) {
            return "no";
        }
        int parts = point.forGood().getAsInt();
        return parts == point.parts() ? "yes" : "from part " + parts;
    }

    private Table curve(SideBySide comparison) {
        List<Column> columns = new ArrayList<>(List.of(Column.numbers("parts", "")));
        for (Alternative way : ways) {
            int group = columns.size();
            way.curve()
                    .ifPresent(curve ->
                            columns.add(Column.numbers(way.name(), currency()).in(group)));
        }
        columns.add(Column.words("least"));
        Table.Builder table = new Table.Builder(columns);
        comparison.counts().stream()
                .filter(count -> isTold(count, comparison))
                .forEach(count -> table.row(point(count)));
        return table.build();
    }

    /** A reader wants the series and the break-evens; a plot also has the points beside each new mould. */
    private boolean isTold(int parts, SideBySide comparison) {
        boolean isPlanned = ways.stream().anyMatch(way -> way.estimate().part().count() == parts);
        return isPlanned
                || isOfSeries(parts)
                || comparison.breakEvens().stream()
                        .anyMatch(point ->
                                point.parts() == parts || point.forGood().orElse(0) == parts);
    }

    /** 1, 2, 5, 10 and so on. */
    private static boolean isOfSeries(int parts) {
        int rest = parts;
        while (rest % 10 == 0) {
            rest /= 10;
        }
        return rest == 1 || rest == 2 || rest == 5;
    }

    private List<String> point(int parts) {
        List<String> cells = new ArrayList<>(List.of(Integer.toString(parts)));
        Optional<Money> least = Optional.empty();
        String name = "";
        for (Alternative way : ways) {
            if (way.curve().isEmpty()) {
                continue;
            }
            CostCurve.Point point = way.curve().get().at(parts);
            cells.add(amount(point.each()));
            if (least.isEmpty() || point.total().amount().compareTo(least.get().amount()) < 0) {
                least = Optional.of(point.total());
                name = way.name();
            }
        }
        cells.add(name);
        return cells;
    }

    private String currency() {
        return ways.stream()
                .flatMap(way -> way.curve().stream())
                .map(curve -> curve.running().currency())
                .findFirst()
                .orElse("");
    }

    private static String amount(Money money) {
        return money.amount().toPlainString();
    }
}
