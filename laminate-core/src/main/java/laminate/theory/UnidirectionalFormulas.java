package laminate.theory;

/**
 * The formulas by which fibre and matrix make a unidirectional ply, one method each.
 *
 * <p>Symbols: index f fibre, m matrix, Vf fibre volume fraction. The matrix is what fills 1 − Vf; with voids it is the
 * porous one of {@link MatrixProperties#withVoids}. Arguments are taken as they come; the checks are made where they
 * enter, in {@link Micromechanics}.
 */
public final class UnidirectionalFormulas {
    private UnidirectionalFormulas() {}

    /**
     * Rule of mixtures, P = Pf Vf + Pm (1 − Vf): for E1 and ν12. Jones 1999, ch. 3; for E1 within a few per
     * cent of tests at any Vf.
     *
     * @param Pf property of the fibre
     * @param Pm property of the matrix, same unit
     * @param Vf fibre volume fraction
     * @return property of the ply, same unit
     */
    public static double ruleOfMixtures(double Pf, double Pm, double Vf) {
        return Pf * Vf + Pm * (1 - Vf);
    }

    /**
     * Inverse rule of mixtures, 1/P = Vf/Pf + (1 − Vf)/Pm: for E2 and G12. Jones 1999, ch. 3; a lower
     * bound, well below tests at the usual fibre contents.
     *
     * @param Pf modulus of the fibre (Pa)
     * @param Pm modulus of the matrix (Pa)
     * @param Vf fibre volume fraction
     * @return modulus of the ply (Pa)
     */
    public static double inverseRuleOfMixtures(double Pf, double Pm, double Vf) {
        return 1 / (Vf / Pf + (1 - Vf) / Pm);
    }

    /**
     * Halpin–Tsai, P = Pm (1 + ξ η Vf)/(1 − η Vf) with η = (Pf/Pm − 1)/(Pf/Pm + ξ). Halpin and Kardos 1976; ξ = 2 for
     * E2, ξ = 1 for G12 of round fibres, good to about Vf = 0.65 (above, ξ = 1 + 40 Vf¹⁰ for G12).
     *
     * @param Pf modulus of the fibre (Pa)
     * @param Pm modulus of the matrix (Pa)
     * @param Vf fibre volume fraction
     * @param xi reinforcing efficiency ξ; 0 gives the inverse rule of mixtures
     * @return modulus of the ply (Pa)
     */
    public static double halpinTsai(double Pf, double Pm, double Vf, double xi) {
        double eta = (Pf / Pm - 1) / (Pf / Pm + xi);
        return Pm * (1 + xi * eta * Vf) / (1 - eta * Vf);
    }

    /**
     * Share of a load along the fibres that the fibres carry, Ef Vf / E1. Jones 1999, ch. 3.
     *
     * @param Ef modulus of the fibre (Pa)
     * @param Em modulus of the matrix (Pa)
     * @param Vf fibre volume fraction
     * @return share between 0 and 1
     */
    public static double fibreLoadShare(double Ef, double Em, double Vf) {
        return Ef * Vf / ruleOfMixtures(Ef, Em, Vf);
    }

    /**
     * Expansion along the fibres, α1 = (αf Ef Vf + αm Em (1 − Vf)) / (Ef Vf + Em (1 − Vf)). Schapery 1968; close for
     * like Poisson ratios.
     *
     * @param alphaF expansion of the fibre along it (1/K)
     * @param alphaM expansion of the matrix (1/K)
     * @param Ef modulus of the fibre along it (Pa)
     * @param Em modulus of the matrix (Pa)
     * @param Vf fibre volume fraction
     * @return α1 (1/K)
     */
    public static double schaperyAlong(double alphaF, double alphaM, double Ef, double Em, double Vf) {
        return ruleOfMixtures(alphaF * Ef, alphaM * Em, Vf) / ruleOfMixtures(Ef, Em, Vf);
    }

    /**
     * Expansion across the fibres, α2 = (αf2 + νf αf1) Vf + (1 + νm) αm (1 − Vf) − ν12 α1. Schapery 1968 for isotropic
     * fibres, αf1 = αf2; in this form for fibres of unequal α, as commonly used. Not for small Vf of stiff fibres: the
     * constraint of the matrix along the fibre is taken as full.
     *
     * @param fibre expansion of the fibre (1/K)
     * @param nuF Poisson ratio of the fibre
     * @param alphaM expansion of the matrix (1/K)
     * @param nuM Poisson ratio of the matrix
     * @param Vf fibre volume fraction
     * @param alpha1 expansion of the ply along the fibres (1/K)
     * @return α2 (1/K)
     */
    public static double schaperyAcross(
            Expansion fibre, double nuF, double alphaM, double nuM, double Vf, double alpha1) {
        double nu12 = ruleOfMixtures(nuF, nuM, Vf);
        return ruleOfMixtures(fibre.across() + nuF * fibre.along(), (1 + nuM) * alphaM, Vf) - nu12 * alpha1;
    }

    /**
     * E2 of the classification rules for marine laminates before their coefficient C2:
     * E2 = [Em/(1 − νm²)] (1 + 0.85 Vf²) / [(1 − Vf)^1.25 + (Em/Ef) Vf/(1 − νm²)]. From memory; for Vf 0.2 to 0.7 (it
     * does not end at Em for Vf = 0).
     *
     * @param Ef modulus of the fibre across it (Pa)
     * @param Em modulus of the matrix (Pa)
     * @param nuM Poisson ratio of the matrix
     * @param Vf fibre volume fraction
     * @return E2 / C2 (Pa)
     */
    public static double marineRuleAcross(double Ef, double Em, double nuM, double Vf) {
        double plane = 1 - nuM * nuM;
        return Em / plane * (1 + 0.85 * Vf * Vf) / (Math.pow(1 - Vf, 1.25) + Em / Ef * Vf / plane);
    }
}
