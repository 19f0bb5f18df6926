package laminate.order.cut;

import java.util.Arrays;

/**
 * The upper edge of what has been laid so far: levels from left to right, neighbours of unequal height. The lowest
 * level is the next place to lay a piece (E. K. Burke, G. Kendall, G. Whitwell, A new placement heuristic for the
 * orthogonal stock-cutting problem, Operations Research 52 (2004) 655-671; from memory).
 */
final class Skyline {
    /** Height of the edges of the stock: above everything. */
    static final long WALL = Long.MAX_VALUE / 4;

    private final long width;
    private long[] starts = new long[16];
    private long[] heights = new long[16];
    private int count;

    Skyline(long width) {
        this.width = width;
        clear();
    }

    /** Empties the stock. */
    void clear() {
        count = 1;
        starts[0] = 0;
        heights[0] = 0;
    }

    /** The lowest level, of equal ones the one furthest left. */
    int lowest() {
        int lowest = 0;
        for (int i = 1; i < count; i++) {
            if (heights[i] < heights[lowest]) {
                lowest = i;
            }
        }
        return lowest;
    }

    long start(int level) {
        return starts[level];
    }

    long height(int level) {
        return heights[level];
    }

    long room(int level) {
        return end(level) - starts[level];
    }

    /** How far the neighbour on the left stands above the level. */
    long riseLeft(int level) {
        return (level == 0 ? WALL : heights[level - 1]) - heights[level];
    }

    /** How far the neighbour on the right stands above the level. */
    long riseRight(int level) {
        return (level == count - 1 ? WALL : heights[level + 1]) - heights[level];
    }

    /** Lays a piece on a level, against its left or right end. */
    void lay(int level, long across, long along, boolean left) {
        long top = heights[level] + along;
        if (across == room(level)) {
            heights[level] = top;
            mergeAround(level);
        } else if (left) {
            insert(level);
            starts[level + 1] += across;
            heights[level] = top;
            mergeLeft(level);
        } else {
            insert(level);
            starts[level + 1] = end(level + 1) - across;
            heights[level + 1] = top;
            mergeLeft(level + 2);
        }
    }

    /** Gives up the room over a level up to its lower neighbour; false if it is the whole width. */
    boolean fillUp(int level) {
        if (count == 1) {
            return false;
        }
        heights[level] += Math.min(riseLeft(level), riseRight(level));
        mergeAround(level);
        return true;
    }

    private long end(int level) {
        return level == count - 1 ? width : starts[level + 1];
    }

    /** Doubles a level. */
    private void insert(int level) {
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            heights = Arrays.copyOf(heights, 2 * count);
        }
        System.arraycopy(starts, level, starts, level + 1, count - level);
        System.arraycopy(heights, level, heights, level + 1, count - level);
        count++;
    }

    private void mergeAround(int level) {
        mergeLeft(level + 1);
        mergeLeft(level);
    }

    /** Joins a level to the one on its left if both are of one height. */
    private void mergeLeft(int level) {
        if (level > 0 && level < count && heights[level] == heights[level - 1]) {
            System.arraycopy(starts, level + 1, starts, level, count - level - 1);
            System.arraycopy(heights, level + 1, heights, level, count - level - 1);
            count--;
        }
    }
}
