package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The parts that a plan rests on, each against its definition tried out in full. */
class CutInternalsTest {
    /** Whatever fits into the whole still fits when the function has changed it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatFitsStillFitsInTheBound(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 2000; round++) {
            long whole = 20L + random.nextInt(100);
            long[] sizes = partsWithin(whole, random);
            for (DualFeasible function :
                    DualFeasible.all(LongStream.rangeClosed(1, whole).toArray(), whole, 100)) {
                double sum = LongStream.of(sizes)
                        .mapToDouble(size -> function.share(size, whole))
                        .sum();
                assertThat(sum).isLessThanOrEqualTo(1 + 1e-12);
            }
        }
    }

    private static long[] partsWithin(long whole, Random random) {
        List<Long> parts = new ArrayList<>();
        long left = whole;
        while (left > 0 && parts.size() < 6) {
            long part = 1L + random.nextInt((int) left);
            parts.add(part);
            left -= part;
        }
        return parts.stream().mapToLong(Long::longValue).toArray();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theFirstFreeRectangleIsTheLargestThereIs(long seed) {
        Random random = new Random(seed);
        Box stock = new Box(0, 0, 9, 11);
        List<Box> pieces = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            long x = random.nextInt(8);
            long y = random.nextInt(10);
            pieces.add(new Box(x, y, x + 1 + random.nextInt(Math.min(3, 9 - (int) x)), y + 1));
        }
        for (long least : new long[] {1, 2, 3}) {
            double largest = FreeRectangles.of(stock, pieces, least).stream()
                    .mapToDouble(Box::area)
                    .findFirst()
                    .orElse(0);
            assertThat(largest).isEqualTo(largestTried(stock, pieces, least));
        }
    }

    private static double largestTried(Box stock, List<Box> pieces, long least) {
        double largest = 0;
        for (long x = 0; x < stock.right(); x++) {
            for (long y = 0; y < stock.end(); y++) {
                for (long right = x + least; right <= stock.right(); right++) {
                    for (long end = y + least; end <= stock.end(); end++) {
                        Box box = new Box(x, y, right, end);
                        largest = isFree(box, pieces) ? Math.max(largest, box.area()) : largest;
                    }
                }
            }
        }
        return largest;
    }

    private static boolean isFree(Box box, List<Box> pieces) {
        return pieces.stream()
                .allMatch(
                        p -> p.right() <= box.x() || p.x() >= box.right() || p.end() <= box.y() || p.y() >= box.end());
    }

    /** The skyline against one that keeps the height of every step of the width. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theSkylineIsTheUpperEdge(long seed) {
        Random random = new Random(seed);
        long[] heights = new long[30];
        Skyline skyline = new Skyline(heights.length);
        for (int i = 0; i < 500; i++) {
            int level = skyline.lowest();
            int room = (int) skyline.room(level);
            if (random.nextInt(3) == 0 && skyline.fillUp(level)) {
                raiseLowest(heights);
            } else {
                int across = 1 + random.nextInt(room);
                int along = 1 + random.nextInt(4);
                boolean left = random.nextBoolean();
                int from = (int) skyline.start(level) + (left ? 0 : room - across);
                skyline.lay(level, across, along, left);
                raise(heights, from, from + across, heights[from] + along);
            }
            checkLowest(skyline, heights);
        }
    }

    private static void raiseLowest(long[] heights) {
        int from = lowest(heights);
        int to = end(heights, from);
        long left = from == 0 ? Long.MAX_VALUE : heights[from - 1];
        long right = to == heights.length ? Long.MAX_VALUE : heights[to];
        raise(heights, from, to, Math.min(left, right));
    }

    private static void raise(long[] heights, int from, int to, long height) {
        Arrays.fill(heights, from, to, height);
    }

    private static int lowest(long[] heights) {
        int lowest = 0;
        for (int i = 1; i < heights.length; i++) {
            lowest = heights[i] < heights[lowest] ? i : lowest;
        }
        return lowest;
    }

    private static int end(long[] heights, int from) {
        int end = from;
        while (end < heights.length && heights[end] == heights[from]) {
            end++;
        }
        return end;
    }

    private static void checkLowest(Skyline skyline, long[] heights) {
        int level = skyline.lowest();
        int from = lowest(heights);
        int to = end(heights, from);
        assertThat(skyline.start(level)).isEqualTo(from);
        assertThat(skyline.room(level)).isEqualTo(to - from);
        assertThat(skyline.height(level)).isEqualTo(heights[from]);
        if (from > 0) {
            assertThat(skyline.riseLeft(level)).isEqualTo(heights[from - 1] - heights[from]);
        }
        if (to < heights.length) {
            assertThat(skyline.riseRight(level)).isEqualTo(heights[to] - heights[from]);
        }
    }

    @Test
    void decimalsAreExactOnTheGrid() {
        Grid grid = Grid.of(1.27);
        long sum = 0;
        for (int i = 0; i < 127; i++) {
            sum += grid.steps("strip", 0.01);
        }
        assertThat(sum).isEqualTo(grid.steps("roll", 1.27));
        assertThat(grid.metres(grid.steps("piece", 0.3))).isEqualTo(0.3);
    }
}
