package laminate.order.cut;

import java.util.List;
import laminate.theory.Require;

/**
 * Plans how pieces are cut from a roll, so that as little of it is pulled as can be found.
 *
 * <p>The same pieces in whatever order give a plan of the same length, everywhere: effort is counted in steps, not in
 * time. A roll plan is not for rolls shorter than its length; those are cut as sheets, see {@link SheetPlanner}.
 *
 * @param width usable width of the roll (m)
 * @param cuts whether each pull is as long as a piece and cut straight across
 * @param leastOffcut the least width and length of an offcut that can serve (m)
 * @param steps effort: how many times a piece may be looked at
 */
public record RollPlanner(double width, Cuts cuts, double leastOffcut, long steps) {
    /** The usual least width and length of an offcut that can serve (m): common practice, no source. */
    public static final double LEAST_OFFCUT = 0.1;

    /** The usual effort: two or three tenths of a second of one core at most. */
    public static final long STEPS = 40_000_000;

    /**
     * Checks the sizes.
     *
     * @param width usable width of the roll (m)
     * @param cuts whether each pull is cut straight across
     * @param leastOffcut the least width and length of an offcut that can serve (m)
     * @param steps effort
     * @throws IllegalArgumentException if a size is not positive and finite, or the effort is below 1
     */
    public RollPlanner {
        Require.positive("width of the roll", width);
        Require.positive("least size of an offcut", leastOffcut);
        Pieces.requireEffort(steps);
    }

    /**
     * A planner with the usual effort, cutting freely.
     *
     * @param width usable width of the roll (m)
     * @return the planner
     * @throws IllegalArgumentException if the width is not positive and finite
     */
    public static RollPlanner of(double width) {
        return new RollPlanner(width, Cuts.FREE, LEAST_OFFCUT, STEPS);
    }

    /**
     * The same with other cuts.
     *
     * @param wanted whether each pull is as long as a piece and cut straight across
     * @return the planner
     */
    public RollPlanner withCuts(Cuts wanted) {
        return new RollPlanner(width, wanted, leastOffcut, steps);
    }

    /**
     * The same with another effort.
     *
     * @param wanted how many times a piece may be looked at; the first layout is made in any case
     * @return the planner
     * @throws IllegalArgumentException if it is below 1
     */
    public RollPlanner withSteps(long wanted) {
        return new RollPlanner(width, cuts, leastOffcut, wanted);
    }

    /**
     * Plans the cutting.
     *
     * @param pieces the pieces, laps included, in any order
     * @return the plan
     * @throws IllegalArgumentException if there are none, or one is wider than the roll
     */
    public RollPlan plan(List<Piece> pieces) {
        Pieces.requireSome(pieces);
        pieces.forEach(piece -> Pieces.requireFits(piece, width));
        Grid grid = Grid.of(width);
        Sizes sizes = new Sizes(pieces, grid);
        Stock stock = Stock.roll(grid.steps("width of the roll", width), cuts);
        long bound = LowerBounds.length(sizes, stock);
        Layout layout = Search.best(sizes, stock, bound, steps);
        Pulls pulls = new Pulls(sizes, layout, stock, grid);
        return new RollPlan(
                width, grid.metres(layout.length()), grid.metres(bound), pulls.all(), pulls.offcuts(leastOffcut));
    }
}
