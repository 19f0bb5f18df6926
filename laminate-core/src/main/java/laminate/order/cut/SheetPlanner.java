package laminate.order.cut;

import java.util.List;
import laminate.theory.Require;

/**
 * Plans how pieces are cut from equal sheets, or from rolls of a given length: as few of them as can be found, and of
 * the last one as little length as can be found.
 *
 * @param width usable size of a sheet across (m)
 * @param length usable size of a sheet along (m)
 * @param leastOffcut the least width and length of an offcut that can serve (m)
 * @param steps effort: how many times a piece may be looked at
 */
public record SheetPlanner(double width, double length, double leastOffcut, long steps) {
    /**
     * Checks the sizes.
     *
     * @param width usable size of a sheet across (m)
     * @param length usable size of a sheet along (m)
     * @param leastOffcut the least width and length of an offcut that can serve (m)
     * @param steps effort
     * @throws IllegalArgumentException if a size is not positive and finite, or the effort is below 1
     */
    public SheetPlanner {
        Require.positive("width of a sheet", width);
        Require.positive("length of a sheet", length);
        Require.positive("least size of an offcut", leastOffcut);
        Pieces.requireEffort(steps);
    }

    /**
     * A planner with the usual effort.
     *
     * @param width usable size of a sheet across (m)
     * @param length usable size of a sheet along (m)
     * @return the planner
     * @throws IllegalArgumentException if a size is not positive and finite
     */
    public static SheetPlanner of(double width, double length) {
        return new SheetPlanner(width, length, RollPlanner.LEAST_OFFCUT, RollPlanner.STEPS);
    }

    /**
     * The same with another effort.
     *
     * @param wanted how many times a piece may be looked at; the first layout is made in any case
     * @return the planner
     * @throws IllegalArgumentException if it is below 1
     */
    public SheetPlanner withSteps(long wanted) {
        return new SheetPlanner(width, length, leastOffcut, wanted);
    }

    /**
     * Plans the cutting.
     *
     * @param pieces the pieces in any order; the length of each lies along the sheet unless it is turned
     * @return the plan
     * @throws IllegalArgumentException if there are none, or one is larger than a sheet
     */
    public SheetPlan plan(List<Piece> pieces) {
        Pieces.requireSome(pieces);
        pieces.forEach(piece -> Pieces.requireFits(piece, width, length));
        Grid grid = Grid.of(width);
        Sizes sizes = new Sizes(pieces, grid);
        Stock stock = Stock.sheets(grid.steps("width of a sheet", width), grid.steps("length of a sheet", length));
        Layout layout = Search.best(sizes, stock, LowerBounds.length(sizes, stock), steps);
        Sheets sheets = new Sheets(sizes, layout, stock, grid);
        return new SheetPlan(width, length, LowerBounds.sheets(sizes, stock), sheets.all(leastOffcut));
    }
}
