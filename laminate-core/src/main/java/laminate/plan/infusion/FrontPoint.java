package laminate.plan.infusion;

import laminate.theory.Require;

/**
 * Where the resin stands at a time.
 *
 * @param time since the feed was opened (s)
 * @param position how far the front has run from the feed (m)
 */
public record FrontPoint(double time, double position) {

    /**
     * Checks the point.
     *
     * @throws IllegalArgumentException if a value is negative, NaN or infinite
     */
    public FrontPoint {
        Require.notNegative("time of the front", time);
        Require.notNegative("position of the front", position);
    }
}
