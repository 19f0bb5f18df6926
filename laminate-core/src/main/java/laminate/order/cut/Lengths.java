package laminate.order.cut;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import laminate.theory.Require;

/**
 * Lays lengths on rolls, none over the end of a roll: bin packing in one dimension. The longest first, each where it leaves
 * least (best fit decreasing); where that finds no way, all ways are tried, for so many steps.
 */
public final class Lengths {
    /** A length that is a hair too long by rounding still fits. */
    private static final double ROUNDING = 1e-9;

    /** How many times a roll may be looked at: all ways of ten lengths or so, a few thousandths of a second. */
    private static final int MOST_LOOKS = 300_000;

    private final double[] wanted;
    private final Integer[] longestFirst;
    private final double[] left;
    private final int[] places;
    private int looks;

    private Lengths(List<Double> wanted, List<Double> rolls) {
        this.wanted = wanted.stream().mapToDouble(length -> length).toArray();
        longestFirst = IntStream.range(0, this.wanted.length).boxed().toArray(Integer[]::new);
        Arrays.sort(longestFirst, Comparator.comparingDouble(item -> -this.wanted[item]));
        left = rolls.stream().mapToDouble(length -> length).toArray();
        places = new int[this.wanted.length];
    }

    /**
     * Lays lengths on rolls.
     *
     * @param wanted the lengths to pull (m)
     * @param rolls how long each roll is (m); infinite for one that is not known
     * @return for each length the place of its roll in the list, from 0; empty if no way was found to lay them
     * @throws IllegalArgumentException if a length is not above zero and finite, or a roll not above zero
     */
    public static Optional<List<Integer>> lay(List<Double> wanted, List<Double> rolls) {
        wanted.forEach(length -> Require.positive("a length to pull", length));
        for (double roll : rolls) {
            if (!(roll > 0)) {
                throw new IllegalArgumentException("the length of a roll must be above zero, not " + roll + " m");
            }
        }
        Lengths bestFirst = new Lengths(wanted, rolls);
        if (bestFirst.laysBestFirst()) {
            return Optional.of(bestFirst.found());
        }
        Lengths anyhow = new Lengths(wanted, rolls);
        return anyhow.isEnough() && anyhow.laysFrom(0) ? Optional.of(anyhow.found()) : Optional.empty();
    }

    private List<Integer> found() {
        return Arrays.stream(places).boxed().toList();
    }

    private boolean isEnough() {
        return Arrays.stream(wanted).sum() <= Arrays.stream(left).sum() * (1 + ROUNDING);
    }

    private boolean laysBestFirst() {
        for (int item : longestFirst) {
            int fullest = -1;
            for (int roll = 0; roll < left.length; roll++) {
                if (fits(item, roll) && (fullest < 0 || left[roll] < left[fullest])) {
                    fullest = roll;
                }
            }
            if (fullest < 0) {
                return false;
            }
            put(item, fullest);
        }
        return true;
    }

    private boolean laysFrom(int place) {
        if (place == longestFirst.length) {
            return true;
        }
        int item = longestFirst[place];
        for (int roll = 0; roll < left.length && looks < MOST_LOOKS; roll++) {
            looks++;
            if (fits(item, roll) && !isAsOneBefore(roll)) {
                put(item, roll);
                if (laysFrom(place + 1)) {
                    return true;
                }
                left[roll] += wanted[item];
            }
        }
        return false;
    }

    private boolean fits(int item, int roll) {
        return wanted[item] <= left[roll] + wanted[item] * ROUNDING;
    }

    /** Of rolls that are equally full one is as good as another. */
    private boolean isAsOneBefore(int roll) {
        for (int i = 0; i < roll; i++) {
            if (left[i] == left[roll]) {
                return true;
            }
        }
        return false;
    }

    private void put(int item, int roll) {
        places[item] = roll;
        left[roll] -= wanted[item];
    }
}
