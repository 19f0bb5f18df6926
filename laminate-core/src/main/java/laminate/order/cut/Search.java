package laminate.order.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleBiFunction;

/**
 * The best layout that a given number of steps finds: first from pieces sorted by several measures, then by annealing
 * the best orders (S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Optimization by simulated annealing, Science 220 (1983)
 * 671-680; from memory).
 *
 * <p>Effort is counted in steps, not in time, and chance has a seed: the same pieces give the same layout everywhere.
 */
final class Search {
    private static final int CHAINS = 2;
    private static final long SEED = 20_010_128;

    /** How much longer a layout may be and still be likely taken at first, as a share of the bound. */
    private static final double WARMTH = 1e-3;

    /** Sizes between two steps of the grid leave a bound that much too low: nearer to it is not worth a search. */
    private static final double NEAR = 1e-7;

    private final Sizes sizes;
    private final Filler filler;
    private final long bound;
    private final long steps;
    private final Random random = new Random(SEED);
    private Layout best = Layout.of(0);
    private long bestLength = Long.MAX_VALUE;

    private record Start(Order order, long length) {}

    private Search(Sizes sizes, Stock stock, long bound, long steps) {
        this.sizes = sizes;
        this.bound = bound;
        this.steps = steps;
        filler = new Filler(sizes, stock);
    }

    /**
     * The shortest layout found.
     *
     * @param sizes the pieces
     * @param stock what they are cut from
     * @param bound a length that cannot be bettered
     * @param steps how many times a piece may be looked at
     */
    static Layout best(Sizes sizes, Stock stock, long bound, long steps) {
        Search search = new Search(sizes, stock, bound, steps);
        List<Start> starts = search.starts();
        for (int chain = 0; chain < Math.min(CHAINS, starts.size()); chain++) {
            search.anneal(starts.get(chain), steps * (chain + 1) / CHAINS);
        }
        return search.best;
    }

    private List<Start> starts() {
        List<Start> starts = new ArrayList<>();
        for (ToDoubleBiFunction<Sizes, Integer> measure : Order.MEASURES) {
            for (Side side : Side.values()) {
                for (Fit fit : Fit.values()) {
                    if (starts.isEmpty() || goesOn(steps)) {
                        Order order = Order.sorted(sizes, measure, side, fit);
                        starts.add(new Start(order, length(order)));
                    }
                }
            }
        }
        starts.sort(Comparator.comparingLong(Start::length));
        return starts;
    }

    private void anneal(Start start, long until) {
        Order order = start.order();
        long length = start.length();
        long from = filler.steps();
        while (goesOn(until)) {
            double left = (until - filler.steps()) / (double) (until - from);
            Order other = order.neighbour(random);
            long otherLength = length(other);
            if (isTaken(otherLength - length, WARMTH * bound * left)) {
                order = other;
                length = otherLength;
            }
        }
    }

    private boolean goesOn(long until) {
        return filler.steps() < until && bestLength - bound > NEAR * bound;
    }

    private boolean isTaken(long longer, double warmth) {
        return longer <= 0 || random.nextDouble() < StrictMath.exp(-longer / warmth);
    }

    private long length(Order order) {
        Layout layout = filler.fill(order);
        if (layout.length() < bestLength) {
            bestLength = layout.length();
            best = layout.copy();
        }
        return layout.length();
    }
}
