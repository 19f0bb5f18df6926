package laminate.order.cut;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** What no layout can better: the length of a roll and the number of sheets, from areas and from sizes that clash. */
final class LowerBounds {
    /** Sums are rounded; a bound is lowered by more than that before it is rounded up to whole steps. */
    private static final double ROUNDING = 1e-15;

    private static final int MOST_ROOMS_OF_ROLL = 100;
    private static final int MOST_ROOMS_OF_SHEET = 12;

    private LowerBounds() {}

    /** The least length (steps) of a roll or of sheets laid end to end: the longest piece, or all areas over the width. */
    static long length(Sizes sizes, Stock stock) {
        double least = 0;
        for (DualFeasible function : DualFeasible.all(ways(sizes, true), stock.width(), MOST_ROOMS_OF_ROLL)) {
            least = Math.max(least, sum(sizes, stock, way -> function.share(way.across, stock.width()) * way.along));
        }
        return Math.max((long) Math.ceil(least), longest(sizes, stock));
    }

    /** The least number of sheets. */
    static int sheets(Sizes sizes, Stock stock) {
        List<DualFeasible> ofLength = DualFeasible.all(ways(sizes, false), stock.length(), MOST_ROOMS_OF_SHEET);
        double least = (double) length(sizes, stock) / stock.length();
        for (DualFeasible across : DualFeasible.all(ways(sizes, true), stock.width(), MOST_ROOMS_OF_SHEET)) {
            for (DualFeasible along : ofLength) {
                least = Math.max(
                        least,
                        sum(
                                sizes,
                                stock,
                                way -> across.share(way.across, stock.width())
                                        * along.share(way.along, stock.length())));
            }
        }
        return (int) Math.ceil(least);
    }

    private record Way(long across, long along) {}

    /** Adds up what each piece counts for in the way in which it counts least. */
    private static double sum(Sizes sizes, Stock stock, ToDoubleFunction<Way> measure) {
        double sum = 0;
        for (int item = 0; item < sizes.count(); item++) {
            sum += least(sizes, stock, item, measure);
        }
        return sum * (1 - (sizes.count() + 10) * ROUNDING);
    }

    private static double least(Sizes sizes, Stock stock, int item, ToDoubleFunction<Way> measure) {
        double least = Double.POSITIVE_INFINITY;
        if (stock.fits(sizes, item, false)) {
            least = measure.applyAsDouble(new Way(sizes.across(item, false), sizes.along(item, false)));
        }
        if (sizes.turns(item) && stock.fits(sizes, item, true)) {
            least = Math.min(least, measure.applyAsDouble(new Way(sizes.across(item, true), sizes.along(item, true))));
        }
        return least;
    }

    private static long longest(Sizes sizes, Stock stock) {
        return IntStream.range(0, sizes.count())
                .mapToLong(item -> (long) least(sizes, stock, item, way -> way.along))
                .max()
                .orElseThrow();
    }

    /** The sizes across or along in every way that a piece may be turned. */
    private static long[] ways(Sizes sizes, boolean across) {
        return IntStream.range(0, sizes.count())
                .boxed()
                .flatMapToLong(item -> sizes.turns(item)
                        ? LongStream.of(sizes.across(item, false), sizes.along(item, false))
                        : LongStream.of(across ? sizes.across(item, false) : sizes.along(item, false)))
                .toArray();
    }
}
