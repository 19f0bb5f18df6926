package laminate.process.flow;

import laminate.theory.Require;

/**
 * A hose, or a spiral tube at its bore, that the resin passes before it meets the fibres.
 *
 * <p>Slow flow in a round tube, Hagen 1839 and Poiseuille 1840, textbook: below a Reynolds number of about 2000, which
 * resin never reaches.
 *
 * @param bore d, inner diameter (m)
 * @param length L (m)
 */
public record Hose(double bore, double length) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public Hose {
        Require.positive("bore", bore);
        Require.positive("length of the hose", length);
    }

    /**
     * What passes a round tube, Q = π d⁴ ΔP/(128 μ L).
     *
     * @param d bore (m)
     * @param L length (m)
     * @param mu viscosity μ (Pa·s)
     * @param dP pressure loss ΔP (Pa)
     * @return Q (m³/s)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double flowRate(double d, double L, double mu, double dP) {
        return Require.finite("flow rate", Flow.drivingPressure(dP) / (Flow.viscosity(mu) * resistance(d, L)));
    }

    /**
     * Resistance of a round tube, R = 128 L/(π d⁴), so that ΔP = μ R Q.
     *
     * @param d bore (m)
     * @param L length (m)
     * @return R (1/m³)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double resistance(double d, double L) {
        Require.positive("bore", d);
        return Require.finite(
                "resistance of the hose", 128 * Require.positive("length", L) / (Math.PI * d * d * d * d));
    }

    /**
     * Resistance of this hose.
     *
     * @return R (1/m³)
     */
    public double resistance() {
        return resistance(bore, length);
    }
}
