package laminate.order.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * The largest rectangle that no piece touches, then the largest of what is left, and so on.
 *
 * <p>The edges of the pieces divide the stock into cells. Going down the rows, each column stands free for so far
 * back, and the largest rectangle that ends at the row is the largest under a row of columns of unequal height, found
 * with a stack in one pass.
 */
final class FreeRectangles {
    private static final int MOST = 12;

    private final long[] xs;
    private final long[] ys;
    private final BitSet taken = new BitSet();
    private final long least;

    private FreeRectangles(Box stock, List<Box> pieces, long least) {
        xs = edges(
                Stream.concat(Stream.of(stock), pieces.stream()).flatMapToLong(b -> LongStream.of(b.x(), b.right())));
        ys = edges(Stream.concat(Stream.of(stock), pieces.stream()).flatMapToLong(b -> LongStream.of(b.y(), b.end())));
        this.least = least;
        pieces.forEach(this::take);
    }

    /**
     * Free rectangles, none over another, largest first.
     *
     * @param stock all of it
     * @param pieces what lies on it
     * @param least the least size that can serve
     */
    static List<Box> of(Box stock, List<Box> pieces, long least) {
        FreeRectangles free = new FreeRectangles(stock, pieces, least);
        List<Box> found = new ArrayList<>();
        Optional<Box> largest = free.largest();
        while (largest.isPresent()) {
            found.add(largest.get());
            free.take(largest.get());
            largest = found.size() < MOST ? free.largest() : Optional.empty();
        }
        return found;
    }

    private static long[] edges(LongStream edges) {
        return edges.sorted().distinct().toArray();
    }

    private int columns() {
        return xs.length - 1;
    }

    private void take(Box box) {
        int from = Arrays.binarySearch(xs, box.x());
        int to = Arrays.binarySearch(xs, box.right());
        for (int row = Arrays.binarySearch(ys, box.y()); ys[row] < box.end(); row++) {
            taken.set(row * columns() + from, row * columns() + to);
        }
    }

    private Optional<Box> largest() {
        int[] freeFrom = new int[columns()];
        Optional<Box> largest = Optional.empty();
        for (int row = 0; row < ys.length - 1; row++) {
            for (int column = 0; column < columns(); column++) {
                if (taken.get(row * columns() + column)) {
                    freeFrom[column] = row + 1;
                }
            }
            largest = larger(largest, largestEndingAt(row, freeFrom));
        }
        return largest;
    }

    private Optional<Box> largestEndingAt(int row, int[] freeFrom) {
        int[] starts = new int[columns() + 1];
        int[] tops = new int[columns() + 1];
        int depth = 0;
        Optional<Box> largest = Optional.empty();
        for (int column = 0; column <= columns(); column++) {
            int top = column == columns() ? row + 1 : freeFrom[column];
            int start = column;
            while (depth > 0 && tops[depth - 1] < top) {
                depth--;
                start = starts[depth];
                largest = larger(largest, serving(new Box(xs[start], ys[tops[depth]], xs[column], ys[row + 1])));
            }
            if (depth == 0 || tops[depth - 1] > top) {
                starts[depth] = start;
                tops[depth] = top;
                depth++;
            }
        }
        return largest;
    }

    private Optional<Box> serving(Box box) {
        return box.right() - box.x() >= least && box.end() - box.y() >= least ? Optional.of(box) : Optional.empty();
    }

    private static Optional<Box> larger(Optional<Box> one, Optional<Box> other) {
        return one.isEmpty()
                        || (other.isPresent() && other.get().area() > one.get().area())
                ? other
                : one;
    }
}
