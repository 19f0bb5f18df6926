package laminate.order.cut;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;

/** In which order pieces are laid, and by what rules: all that a {@link Filler} needs to make one layout. */
final class Order {
    private static final List<Side> SIDES = List.of(Side.values());
    private static final List<Fit> FITS = List.of(Fit.values());

    /** Below it, a change turns a piece besides swapping it. */
    private static final double TURN = 0.1;

    /** Below it, a change swaps two pieces; above, it moves one. */
    private static final double SWAP = 0.55;

    /** Share of the changes that try another rule. */
    private static final double OTHER_RULE = 0.03;

    /** By what pieces are sorted to begin with, the largest first. */
    static final List<ToDoubleBiFunction<Sizes, Integer>> MEASURES = List.of(
            (sizes, item) -> sizes.area(item),
            (sizes, item) -> sizes.across(item, false),
            (sizes, item) -> sizes.along(item, false),
            (sizes, item) -> sizes.across(item, false) + sizes.along(item, false),
            (sizes, item) -> Math.max(sizes.across(item, false), sizes.along(item, false)),
            (sizes, item) -> Math.min(sizes.across(item, false), sizes.along(item, false)));

    private final int[] items;
    private final boolean[] turned;
    private Side side;
    private Fit fit;

    private Order(int[] items, boolean[] turned, Side side, Fit fit) {
        this.items = items;
        this.turned = turned;
        this.side = side;
        this.fit = fit;
    }

    /** Largest first by a measure. */
    static Order sorted(Sizes sizes, ToDoubleBiFunction<Sizes, Integer> measure, Side side, Fit fit) {
        int[] items = IntStream.range(0, sizes.count())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer item) -> -measure.applyAsDouble(sizes, item)))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Order(items, new boolean[items.length], side, fit);
    }

    int count() {
        return items.length;
    }

    int item(int place) {
        return items[place];
    }

    /** Whether a piece is rather turned by a quarter where both ways are as good. */
    boolean turned(int item) {
        return turned[item];
    }

    Side side() {
        return side;
    }

    Fit fit() {
        return fit;
    }

    /** A copy with two pieces swapped, one moved or one turned, and now and then another rule. */
    Order neighbour(Random random) {
        Order other = new Order(items.clone(), turned.clone(), side, fit);
        int from = random.nextInt(items.length);
        int to = random.nextInt(items.length);
        double change = random.nextDouble();
        if (change < TURN) {
            other.turned[from] = !turned[from];
        }
        if (change < SWAP) {
            other.swap(from, to);
        } else {
            other.move(from, to);
        }
        other.changeRules(random);
        return other;
    }

    private void swap(int one, int two) {
        int item = items[one];
        items[one] = items[two];
        items[two] = item;
    }

    private void move(int from, int to) {
        int item = items[from];
        if (from < to) {
            System.arraycopy(items, from + 1, items, from, to - from);
        } else {
            System.arraycopy(items, to, items, to + 1, from - to);
        }
        items[to] = item;
    }

    private void changeRules(Random random) {
        if (random.nextDouble() < OTHER_RULE) {
            side = SIDES.get(random.nextInt(SIDES.size()));
        }
        if (random.nextDouble() < OTHER_RULE) {
            fit = FITS.get(random.nextInt(FITS.size()));
        }
    }
}
