package laminate.process.cure;

import laminate.process.Range;
import laminate.theory.Require;

/** How runny a resin is: with styrene, with temperature, and while it cures. */
public final class Viscosity {
    /** The styrene contents that {@link #withStyrene} was measured at. */
    public static final Span STYRENE = new Span(0.4, 0.6);

    /** Activation energy of the flow of polyester and vinylester (J/mol), handbook typical, from memory. */
    public static final Range STYRENIC = new Range(40e3, 30e3, 50e3);

    /** Activation energy of the flow of epoxy (J/mol), handbook typical, from memory. */
    public static final Range EPOXY = new Range(60e3, 50e3, 70e3);

    /** By how much the viscosity has risen at the gel, μ<sub>gel</sub>/μ₀: a convention of this package. */
    public static final double RISE_AT_GEL = 1000;

    private static final double WITHOUT_STYRENE = 8.86488;
    private static final double BY_STYRENE = -8.63440;

    private Viscosity() {}

    /**
     * Viscosity of one uncured polyester at 26 °C by its styrene: ln μ = 8.86488 − 8.63440 w<sub>s</sub>, μ in mPa·s.
     *
     * <p>Our fit to three measured points (40, 50 and 60 %: 219.3, 98.4 and 39 mPa·s), within 4 % of each: Osman et
     * al., Malaysian Polymer Journal 7 (2012) 46–55. One resin: the slope teaches, the level is not that of another.
     *
     * @param styrene mass fraction of styrene w<sub>s</sub>, 0.4 to 0.6
     * @return μ (Pa·s)
     * @throws IllegalArgumentException if the fraction is outside the measured ones
     */
    public static double withStyrene(double styrene) {
        if (!STYRENE.contains(styrene)) {
            throw new IllegalArgumentException("viscosity by styrene is known from a fraction of " + STYRENE.least()
                    + " to " + STYRENE.most() + ", not at " + styrene);
        }
        return Math.exp(WITHOUT_STYRENE + BY_STYRENE * styrene) / 1000;
    }

    /**
     * Viscosity at another temperature: μ₂ = μ₁ exp(E<sub>μ</sub>/R (1/T₂ − 1/T₁)).
     *
     * <p>The form is standard; E<sub>μ</sub> of {@link #STYRENIC} means 4 to 7 % a kelvin at 20 °C, that of
     * {@link #EPOXY} 7 to 10 %. Valid over some 20 K about the known temperature.
     *
     * @param viscosity μ₁ (Pa·s)
     * @param activationEnergy E<sub>μ</sub> (J/mol)
     * @param from its temperature T₁ (K)
     * @param to the other temperature T₂ (K)
     * @return μ₂ (Pa·s)
     * @throws IllegalArgumentException if viscosity or a temperature is not above zero, or the result is not finite
     */
    public static double atTemperature(double viscosity, double activationEnergy, double from, double to) {
        return Arrhenius.shifted(Require.positive("viscosity", viscosity), activationEnergy, from, to);
    }

    /**
     * Time constant of a viscosity that rises steadily to the gel: τ = t<sub>gel</sub>/ln({@value #RISE_AT_GEL}), so
     * that μ = μ₀ exp(t/τ).
     *
     * <p>Suits epoxies. Polyester and vinylester stay nearly as runny as at first until close to the gel: take their
     * viscosity as constant and fill within half of the gel time (from memory).
     *
     * @param gelTime t<sub>gel</sub> (s)
     * @return τ (s)
     * @throws IllegalArgumentException if the gel time is not above zero
     */
    public static double riseTime(double gelTime) {
        return Require.positive("gel time", gelTime) / Math.log(RISE_AT_GEL);
    }
}
