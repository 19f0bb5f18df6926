package laminate.plan.infusion;

import java.util.Objects;
import laminate.material.Status;
import laminate.theory.Require;

/**
 * The drop test that the bag has to pass, pump shut off, before the resin is let in.
 *
 * @param drop how much the vacuum may fall (Pa)
 * @param time in which it is read (s)
 * @param source the published source, or what stands in for one
 * @param status how the test relates to that source
 */
public record LeakLimit(double drop, double time, String source, Status status) {

    /** The test where a plan states none: 10 mbar in 10 min. */
    public static final LeakLimit USUAL = new LeakLimit(
            1000,
            600,
            "habit of many workshops, from memory; Composites Manufacturing 2021 prints 2 inHg in 5 min as the limit",
            Status.MEMORY);

    /**
     * Checks the test.
     *
     * @throws IllegalArgumentException if a value is not above zero
     */
    public LeakLimit {
        Require.positive("drop of a leak test", drop);
        Require.positive("time of a leak test", time);
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(status, "status");
    }

    /**
     * How fast the vacuum may fall.
     *
     * @return drop over time (Pa/s)
     */
    public double rate() {
        return drop / time;
    }
}
