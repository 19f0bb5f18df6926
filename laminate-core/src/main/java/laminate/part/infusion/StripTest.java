package laminate.part.infusion;

import java.util.OptionalDouble;

/**
 * A strip of the dry layers filled from one end under the bag, without mesh, and timed.
 *
 * @param length how far the front ran (m)
 * @param time in what time it did (s)
 * @param viscosity of the liquid (Pa·s), empty for that of the infusion
 * @param drivingPressure atmosphere less bag pressure (Pa), empty for that of the infusion
 * @param porosity of the strip (1), empty for that of the laminate
 */
public record StripTest(
        double length, double time, OptionalDouble viscosity, OptionalDouble drivingPressure, OptionalDouble porosity) {

    /**
     * Checks the readings.
     *
     * @throws IllegalArgumentException if one is not above zero, or the porosity not below one
     */
    public StripTest {
        Checks.positive("length of a strip test", length, "m");
        Checks.positive("time of a strip test", time, "s");
        Checks.positive("viscosity of a strip test", viscosity, "Pa·s");
        Checks.positive("driving pressure of a strip test", drivingPressure, "Pa");
        Checks.fraction("porosity of a strip test", porosity);
    }

    /**
     * A test of the infusion's own layers with its own resin and pressure.
     *
     * @param length how far the front ran (m)
     * @param time in what time it did (s)
     * @return the test
     * @throws IllegalArgumentException if one is not above zero
     */
    public static StripTest of(double length, double time) {
        return new StripTest(length, time, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }
}
