package laminate.order.cut;

import java.util.List;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * Plans how pieces are cut from a roll, so that as little of it is pulled as can be found.
 *
 * <p>The same pieces in whatever order give a plan of the same length, everywhere: effort is counted in steps, not in
 * time. Where rolls are shorter than the plan, no pull is longer than a roll; {@link Lengths} lays the pulls on rolls.
 *
 * @param width usable width of the roll (m)
 * @param cuts whether each pull is as long as a piece and cut straight across
 * @param leastOffcut the least width and length of an offcut that can serve (m)
 * @param steps effort: how many times a piece may be looked at
 * @param rollLength usable length of a roll (m), which no pull exceeds; empty for a roll longer than any plan
 */
public record RollPlanner(double width, Cuts cuts, double leastOffcut, long steps, OptionalDouble rollLength) {
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
     * @param rollLength usable length of a roll (m)
     * @throws IllegalArgumentException if a size is not positive and finite, or the effort is below 1
     */
    public RollPlanner {
        Require.positive("width of the roll", width);
        Require.positive("least size of an offcut", leastOffcut);
        Pieces.requireEffort(steps);
        if (rollLength.isPresent()) {
            Require.positive("length of the roll", rollLength.getAsDouble());
        }
    }

    /**
     * A planner with the usual effort, cutting freely.
     *
     * @param width usable width of the roll (m)
     * @return the planner
     * @throws IllegalArgumentException if the width is not positive and finite
     */
    public static RollPlanner of(double width) {
        return new RollPlanner(width, Cuts.FREE, LEAST_OFFCUT, STEPS, OptionalDouble.empty());
    }

    /**
     * The same with other cuts.
     *
     * @param wanted whether each pull is as long as a piece and cut straight across
     * @return the planner
     */
    public RollPlanner withCuts(Cuts wanted) {
        return new RollPlanner(width, wanted, leastOffcut, steps, rollLength);
    }

    /**
     * The same with another effort.
     *
     * @param wanted how many times a piece may be looked at; the first layout is made in any case
     * @return the planner
     * @throws IllegalArgumentException if it is below 1
     */
    public RollPlanner withSteps(long wanted) {
        return new RollPlanner(width, cuts, leastOffcut, wanted, rollLength);
    }

    /**
     * The same for rolls of a length.
     *
     * @param longest usable length of a roll (m), which no pull exceeds
     * @return the planner
     * @throws IllegalArgumentException if it is not positive and finite
     */
    public RollPlanner withRollLength(double longest) {
        return new RollPlanner(width, cuts, leastOffcut, steps, OptionalDouble.of(longest));
    }

    /**
     * Plans the cutting.
     *
     * @param pieces the pieces, laps included, in any order
     * @return the plan
     * @throws IllegalArgumentException if there are none, or one is wider than the roll or longer
     */
    public RollPlan plan(List<Piece> pieces) {
        Pieces.requireSome(pieces);
        for (Piece piece : pieces) {
            Pieces.requireFits(piece, width);
            rollLength.ifPresent(length -> Pieces.requireFits(piece, width, length));
        }
        Grid grid = Grid.of(width);
        Sizes sizes = new Sizes(pieces, grid);
        Stock stock = Stock.roll(grid.steps("width of the roll", width), cuts);
        long bound = LowerBounds.length(sizes, stock);
        Pulls pulls = pulls(sizes, stock, bound, grid);
        return new RollPlan(
                width,
                rollLength,
                grid.metres(pulls.length()),
                grid.metres(bound),
                pulls.all(),
                pulls.offcuts(leastOffcut));
    }

    private Pulls pulls(Sizes sizes, Stock endless, long bound, Grid grid) {
        Pulls pulls = new Pulls(sizes, Search.best(sizes, endless, bound, steps), endless, grid);
        if (rollLength.isEmpty()) {
            return pulls;
        }
        long longest = grid.steps("length of the roll", rollLength.getAsDouble());
        boolean fit = pulls.longest() <= longest && (cuts == Cuts.ACROSS || pulls.length() <= longest);
        return fit ? pulls : pullsOfRolls(sizes, Stock.sheets(endless.width(), longest), grid);
    }

    /** Pieces that reach into each other may make one pull of many: laid roll by roll, none reaches over an end. */
    private Pulls pullsOfRolls(Sizes sizes, Stock rolls, Grid grid) {
        Layout layout = Search.best(sizes, rolls, LowerBounds.length(sizes, rolls), steps);
        return new Pulls(sizes, layout, rolls, grid);
    }
}
