package laminate.order.cut;

import java.util.List;
import laminate.theory.Require;

/**
 * How pieces are cut from equal sheets. Places are exact to some thousand-millionths of the sheet's width.
 *
 * @param width size of a sheet across (m)
 * @param length size of a sheet along (m)
 * @param lowerBound a number of sheets below which nobody can come
 * @param sheets the sheets; within their number, the last one is used as little along its length as was found
 */
public record SheetPlan(double width, double length, int lowerBound, List<Sheet> sheets) {
    /**
     * Checks the sizes.
     *
     * @param width size of a sheet across (m)
     * @param length size of a sheet along (m)
     * @param lowerBound a number of sheets below which nobody can come
     * @param sheets the sheets
     * @throws IllegalArgumentException if a size is not positive and finite, or there are fewer sheets than the bound
     */
    public SheetPlan {
        Require.positive("width of a sheet", width);
        Require.positive("length of a sheet", length);
        sheets = List.copyOf(sheets);
        if (lowerBound < 1 || sheets.size() < lowerBound) {
            throw new IllegalArgumentException("at least 1 sheet and no fewer than the bound are wanted, not "
                    + sheets.size() + " and bound " + lowerBound);
        }
    }

    /**
     * The share of the sheets that goes into pieces.
     *
     * @return area of the pieces over that of all sheets, up to 1
     */
    public double yieldFraction() {
        double pieces = sheets.stream()
                .flatMap(sheet -> sheet.placements().stream())
                .mapToDouble(p -> p.piece().area())
                .sum();
        return Math.min(1, pieces / (width * length * sheets.size()));
    }
}
