package laminate.order.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Sizes made larger or smaller such that pieces which fit side by side still do: f(a) + f(b) + … ≤ 1 wherever
 * a + b + … ≤ whole. What must then be stretched out over a roll is a lower bound of its length (S. P. Fekete,
 * J. Schepers, A general framework for bounds for higher-dimensional orthogonal packing problems, Mathematical Methods
 * of Operations Research 60 (2004) 311-329; from memory).
 */
@FunctionalInterface
interface DualFeasible {
    /** Most multiples tried by {@link #stepwise}. */
    int MOST_STEPS = 8;

    /**
     * The share that a size counts for.
     *
     * @param size a size (steps), up to the whole
     * @param whole what sizes share (steps)
     * @return from 0 to 1
     */
    double share(long size, long whole);

    /** The size as it is. */
    static DualFeasible plain() {
        return (size, whole) -> (double) size / whole;
    }

    /** A size that leaves less than the least room counts for the whole, one below it for nothing. */
    static DualFeasible leaving(long least) {
        return (size, whole) -> size > whole - least ? 1 : size < least ? 0 : (double) size / whole;
    }

    /** Whole multiples of 1/parts, of a whole cut into parts + 1; what divides it evenly stays as it is. */
    static DualFeasible stepwise(int parts) {
        return (size, whole) -> {
            long multiples = size * (parts + 1) / whole;
            return multiples * whole == size * (parts + 1) ? (double) size / whole : (double) multiples / parts;
        };
    }

    /**
     * Those worth trying for some sizes.
     *
     * @param sizes the sizes of the pieces (steps)
     * @param whole what they share (steps)
     * @param most how many different sizes are tried as least room, from the largest
     */
    static List<DualFeasible> all(long[] sizes, long whole, int most) {
        List<DualFeasible> all = new ArrayList<>();
        all.add(plain());
        for (int parts = 1; parts <= MOST_STEPS; parts++) {
            all.add(stepwise(parts));
        }
        for (long least : leastRooms(sizes, whole, most)) {
            all.add(leaving(least));
        }
        return all;
    }

    private static long[] leastRooms(long[] sizes, long whole, int most) {
        return Arrays.stream(sizes)
                .filter(size -> 2 * size <= whole)
                .distinct()
                .map(size -> -size)
                .sorted()
                .limit(most)
                .map(size -> -size)
                .toArray();
    }
}
