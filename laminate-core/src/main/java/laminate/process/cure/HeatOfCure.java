package laminate.process.cure;

import laminate.process.Range;
import laminate.theory.Require;

/**
 * Heat that a resin gives off as it cures.
 *
 * <p>66 kJ for each mole of carbon double bonds that reacts (Lucas et al., Polymer 34 (1993) 3216–3219; 69 at full
 * conversion), those of the styrene and of the polyester counted together.
 */
public final class HeatOfCure {
    /** Heat of a mole of double bonds (J/mol): Lucas et al., Polymer 34 (1993) 3216–3219. */
    public static final double DOUBLE_BOND = 66e3;

    /** Molar mass of styrene, which has one double bond (kg/mol): C₈H₈. */
    public static final double STYRENE_MOLAR_MASS = 0.10415;

    /**
     * Heat of cure of laminating polyester and vinylester (J/kg): 363 kJ/kg for 40 % styrene by
     * {@link #unsaturated}, rounded; 300 to 420 between a lean backbone and a rich one.
     */
    public static final Range STYRENIC = new Range(350e3, 300e3, 420e3);

    private HeatOfCure() {}

    /**
     * Heat of cure of an unsaturated resin in styrene: H = (w<sub>s</sub>/M<sub>s</sub> + (1 − w<sub>s</sub>)/M) h.
     *
     * @param styrene mass fraction of styrene w<sub>s</sub>
     * @param backbone mass of backbone per mole of its double bonds M (kg/mol), such as 0.362
     * @return H (J/kg of resin)
     * @throws IllegalArgumentException if the fraction is not from 0 to 1, or the mass is not above zero
     */
    public static double unsaturated(double styrene, double backbone) {
        double bonds = Require.share("styrene content", styrene) / STYRENE_MOLAR_MASS
                + (1 - styrene) / Require.positive("backbone per double bond", backbone);
        return Require.finite("heat of cure", bonds * DOUBLE_BOND);
    }
}
