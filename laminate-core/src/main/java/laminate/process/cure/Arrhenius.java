package laminate.process.cure;

import laminate.process.Range;
import laminate.theory.Require;

/**
 * How a time of cure changes with temperature, by Arrhenius' law.
 *
 * <p>Valid between the temperatures at which one reaction rules: from about 15 to 40 °C for laminating resins that cure in
 * the cold. Below 15 °C the inhibitor holds the gel of polyester back longer than the law says.
 */
public final class Arrhenius {
    /** Molar gas constant R (J/(mol·K)), exact since the SI of 2019. */
    public static final double GAS_CONSTANT = 8.31446261815324;

    /**
     * Activation energy of the gel of polyester and vinylester with ketone peroxide and cobalt (J/mol): 40 to 60 by J.
     * Appl. Polym. Sci. 102 (2006) 1870; 55 in the middle of what gel times of vinylester give.
     */
    public static final Range STYRENIC = new Range(55e3, 40e3, 60e3);

    /** Activation energy of the gel of epoxies that cure in the cold (J/mol): 43 to 65 by published abstracts. */
    public static final Range EPOXY = new Range(50e3, 40e3, 65e3);

    private Arrhenius() {}

    /**
     * A time at another temperature: t₂ = t₁ exp(E<sub>a</sub>/R (1/T₂ − 1/T₁)).
     *
     * @param time the time t₁ (s)
     * @param activationEnergy E<sub>a</sub> (J/mol)
     * @param from its temperature T₁ (K)
     * @param to the other temperature T₂ (K)
     * @return t₂ (s)
     * @throws IllegalArgumentException if time or a temperature is not above zero, or the result is not finite
     */
    public static double time(double time, double activationEnergy, double from, double to) {
        return shifted(Require.positive("time", time), activationEnergy, from, to);
    }

    /**
     * The activation energy that two times give: E<sub>a</sub> = R ln(t₁/t₂)/(1/T₁ − 1/T₂).
     *
     * @param time1 a time t₁ (s)
     * @param temperature1 its temperature T₁ (K)
     * @param time2 another time t₂ (s)
     * @param temperature2 its temperature T₂ (K)
     * @return E<sub>a</sub> (J/mol)
     * @throws IllegalArgumentException if a value is not above zero, or the temperatures are the same
     */
    public static double activationEnergy(double time1, double temperature1, double time2, double temperature2) {
        double ratio = Require.positive("time", time1) / Require.positive("time", time2);
        double inverse = inverse(temperature2, temperature1);
        if (inverse == 0) {
            throw new IllegalArgumentException("two temperatures are wanted, not " + temperature1 + " K twice");
        }
        return GAS_CONSTANT * Math.log(ratio) / inverse;
    }

    /** A quantity that falls with temperature as exp(E/(R T)) does, from one temperature to another. */
    static double shifted(double quantity, double energy, double from, double to) {
        double factor = Math.exp(Require.notNegative("activation energy", energy) / GAS_CONSTANT * inverse(from, to));
        return Require.finite("a time or viscosity", quantity * factor);
    }

    private static double inverse(double from, double to) {
        return 1 / Require.positive("temperature", to) - 1 / Require.positive("temperature", from);
    }
}
