package laminate.print.quote;

import java.util.List;
import java.util.function.Function;
import laminate.print.Table;
import laminate.print.Table.Column;

/** How a price is made up: its lines, with what they come to before rejects and before margin, and net and tax as totals. */
final class BuildUpTable {

    private BuildUpTable() {}

    /**
     * The table.
     *
     * @param columns its columns
     * @param line the cells of a line of the price
     * @param direct the cells of the direct cost
     * @param cost the cells of all that is a cost
     */
    static Table of(
            List<Column> columns, Function<PriceLine, List<String>> line, List<String> direct, List<String> cost) {
        Table.Builder table = new Table.Builder(columns);
        for (PriceLine part : PriceLine.values()) {
            if (part == PriceLine.REJECTS) {
                table.row(direct);
            } else if (part == PriceLine.MARGIN) {
                table.row(cost);
            }
            if (part.compareTo(PriceLine.NET) < 0) {
                table.row(line.apply(part));
            } else {
                table.total(line.apply(part));
            }
        }
        return table.build();
    }
}
