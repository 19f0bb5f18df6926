package laminate.process.cure;

import laminate.theory.Require;

/**
 * When a slab of curing resin runs away: Frank-Kamenetskii's theory of thermal explosion (1955, from memory).
 *
 * <p>A slab whose faces are held at T₀, and whose heat is released at q exp(θ) with θ = E (T − T₀)/(R T₀²), has a steady
 * temperature only while
 *
 * <pre>  δ = q E L²/(λ R T₀²) ≤ {@value #CRITICAL_SLAB}  </pre>
 *
 * <p>Good for teaching why twice the thickness is four times the danger. In practice q is not known, the reactant is used
 * up, and the faces are not held.
 */
public final class FrankKamenetskii {
    /** The greatest δ of a slab: the maximum over θ of 2 e<sup>−θ</sup> arcosh²(e<sup>θ/2</sup>). */
    public static final double CRITICAL_SLAB = 0.8784576797812904;

    private FrankKamenetskii() {}

    /**
     * The number δ of a slab.
     *
     * @param heatRate q, heat released in a volume at T₀ (W/m³)
     * @param activationEnergy E (J/mol)
     * @param halfThickness L (m)
     * @param conductivity λ (W/(m·K))
     * @param temperature T₀ of the faces (K)
     * @return δ; the slab runs away above {@link #CRITICAL_SLAB}
     * @throws IllegalArgumentException if a value is not above zero
     */
    public static double number(
            double heatRate, double activationEnergy, double halfThickness, double conductivity, double temperature) {
        double length = Require.positive("half thickness", halfThickness);
        double kelvin = Require.positive("temperature", temperature);
        return Require.positive("heat rate", heatRate)
                * Require.positive("activation energy", activationEnergy)
                * length
                * length
                / (Require.positive("conductivity", conductivity) * Arrhenius.GAS_CONSTANT * kelvin * kelvin);
    }

    /**
     * The half thickness at which a slab begins to run away.
     *
     * @param heatRate q, heat released in a volume at T₀ (W/m³)
     * @param activationEnergy E (J/mol)
     * @param conductivity λ (W/(m·K))
     * @param temperature T₀ of the faces (K)
     * @return L (m)
     * @throws IllegalArgumentException if a value is not above zero
     */
    public static double criticalHalfThickness(
            double heatRate, double activationEnergy, double conductivity, double temperature) {
        return Math.sqrt(CRITICAL_SLAB / number(heatRate, activationEnergy, 1, conductivity, temperature));
    }
}
