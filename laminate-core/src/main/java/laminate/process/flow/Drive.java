package laminate.process.flow;

import laminate.theory.Require;

/**
 * What drives the resin.
 *
 * @param pressure ΔP between feed and vent (Pa): the vacuum, where the pot stands open at the height of the feed
 * @param density ρ of the liquid resin (kg/m³); counts only where the path rises
 */
public record Drive(double pressure, double density) {
    /** Standard gravity (m/s²), 3rd General Conference on Weights and Measures, 1901. */
    public static final double GRAVITY = 9.80665;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public Drive {
        Flow.drivingPressure(pressure);
        Require.positive("density", density);
    }
}
