package laminate.plan;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How the resin of a planned infusion is drawn in, as a plan of mixes takes it: fast at first, as a rule, and slower as the
 * way behind the front grows.
 *
 * @param zones the names of the zones that are filled together
 * @param count how many such infusions a moulding takes, one after the other
 * @param times when each of so many equal shares of its resin has been drawn, after the feed was opened (s), the last of
 *     them as it is full; empty where it never fills
 */
public record Inflow(List<String> zones, int count, List<Double> times) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if there is no zone or no infusion, or a time is not finite, below zero or before the
     *     one that stands before it
     */
    public Inflow {
        zones = List.copyOf(zones);
        times = List.copyOf(times);
        if (zones.isEmpty() || count < 1) {
            throw new IllegalArgumentException(
                    "an inflow fills one zone or more, once or more, not " + zones + ", " + count + " times");
        }
        double before = 0;
        for (double time : times) {
            if (!(time >= before) || !Double.isFinite(time)) {
                throw new IllegalArgumentException("the times of an inflow must rise from zero, not " + times);
            }
            before = time;
        }
    }

    /**
     * Until one such infusion is full.
     *
     * @return time (s), empty where it never fills
     */
    public OptionalDouble fillTime() {
        return times.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(times.get(times.size() - 1));
    }
}
