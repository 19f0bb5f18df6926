package laminate.part.infusion;

/**
 * How much the vacuum may fall, pump shut off, before the resin is let in.
 *
 * @param drop the fall (Pa)
 * @param time in which it is read (s)
 */
public record LeakTest(double drop, double time) {

    /**
     * Checks the test.
     *
     * @throws IllegalArgumentException if a value is not above zero
     */
    public LeakTest {
        Checks.positive("drop of a leak test", drop, "Pa");
        Checks.positive("time of a leak test", time, "s");
    }
}
