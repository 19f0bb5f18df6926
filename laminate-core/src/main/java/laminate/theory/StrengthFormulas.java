package laminate.theory;

/**
 * The formulas by which the strengths of fibre and matrix make those of a ply, one method each.
 *
 * <p>Symbols: index f fibre, m matrix, Vf and Vv fibre and void volume fraction of the whole, σ strength. Arguments are
 * taken as they come; the checks are made where they enter, in {@link StrengthMicromechanics}. All are first estimates:
 * strengths scatter far more than moduli, and no formula replaces a test.
 */
public final class StrengthFormulas {
    private StrengthFormulas() {}

    /**
     * Tension along the fibres, limited by the fibre: Xt = σf Vf + Em εf (1 − Vf), with εf = σf/Ef. A matrix that
     * breaks before the fibre, at an elongation below εf, counts for nothing; a matrix that holds alone after the few
     * fibres of a small Vf are broken gives Xt = σm (1 − Vf), if that is more. Kelly and Tyson 1965; Aveston, Cooper and Kelly
     * 1971; both as in Hull and Clyne 1996, ch. 8, from memory. With σf as worked in the laminate, not of virgin
     * filament.
     *
     * @param sigmaF tensile strength of the fibre (Pa)
     * @param Ef modulus of the fibre along it (Pa)
     * @param Em modulus of the matrix that fills 1 − Vf (Pa)
     * @param sigmaM tensile strength of the matrix that fills 1 − Vf (Pa)
     * @param elongation strain at which the matrix breaks
     * @param Vf fibre volume fraction
     * @return Xt (Pa)
     */
    public static double alongInTension(
            double sigmaF, double Ef, double Em, double sigmaM, double elongation, double Vf) {
        double strain = sigmaF / Ef;
        double held = elongation < strain ? 0 : Math.min(Em * strain, sigmaM);
        return Math.max(UnidirectionalFormulas.ruleOfMixtures(sigmaF, held, Vf), sigmaM * (1 - Vf));
    }

    /**
     * Compression along the fibres, limited by kinking where they run askew: Xc = G12/(1 + φ G12/S). Budiansky 1983 and
     * Budiansky and Fleck 1993, for a matrix that yields at once, after Argon 1972; from memory. For φ = 0 it is the
     * elastic buckling of straight fibres.
     *
     * @param G12 in-plane shear modulus of the ply (Pa)
     * @param S in-plane shear strength of the ply (Pa)
     * @param phi angle by which the fibres run askew (rad)
     * @return Xc (Pa)
     */
    public static double kinking(double G12, double S, double phi) {
        return G12 / (1 + phi * G12 / S);
    }

    /**
     * Strength across the fibres by that of the matrix: Y = σm [1 − (√Vf − Vf)(1 − Em/Ef)], in tension and compression
     * each with its own σm. Chamis, NASA TM-83320, 1983, from memory. For sound bonding and no
     * stress from cure: of four void-free plies of the World-Wide Failure Exercise it gives 1.2 to 2.5 times the tension
     * and 0.6 to 1.1 times the compression measured.
     *
     * @param sigmaM strength of the matrix that fills 1 − Vf, tensile or compressive (Pa)
     * @param Em modulus of the matrix (Pa)
     * @param Ef modulus of the fibre across it (Pa)
     * @param Vf fibre volume fraction
     * @return Yt or Yc (Pa)
     */
    public static double across(double sigmaM, double Em, double Ef, double Vf) {
        return sigmaM * (1 - (Math.sqrt(Vf) - Vf) * (1 - Em / Ef));
    }

    /**
     * What voids leave of the strength of the matrix: 1 − √(4 Vv/(π (1 − Vf))), round voids that run along the fibres.
     * Chamis, NASA TM-83320, 1983, from memory; for a few per cent of voids.
     *
     * @param Vf fibre volume fraction of the whole
     * @param Vv void fraction of the whole
     * @return the factor on σm
     */
    public static double voidFactor(double Vf, double Vv) {
        return 1 - Math.sqrt(4 * Vv / (Math.PI * (1 - Vf)));
    }

    /**
     * Shear strength of an isotropic solid that is stronger in compression than in tension: τ = √(σt σc/3). The
     * paraboloid of von Mises's kind, 3 J2 + (σc − σt) I1 = σc σt, of Stassi 1967; from memory.
     *
     * @param sigmaT tensile strength (Pa)
     * @param sigmaC compressive strength (Pa)
     * @return shear strength (Pa)
     */
    public static double paraboloidShear(double sigmaT, double sigmaC) {
        return Math.sqrt(sigmaT) * Math.sqrt(sigmaC) / Math.sqrt(3);
    }

    /**
     * Strength of fibres that lie in all directions of the plane, from that of the ply of the same content with all in
     * one: σ = (2 S/π)[2 + ln(X Y/S²)], in tension and compression each with its own X and Y. The maximum-stress
     * strength of the ply at the angle θ, the least of X/cos²θ, S/(sin θ cos θ) and Y/sin²θ, averaged over all θ: Lees
     * 1968; Chen 1971; from memory. For X Y ≥ S², below which shear governs nowhere.
     *
     * @param X strength along the fibres (Pa)
     * @param Y strength across them (Pa)
     * @param S in-plane shear strength (Pa)
     * @return strength in every direction of the plane (Pa)
     */
    public static double random(double X, double Y, double S) {
        return 2 * S / Math.PI * (2 + Math.log(X / S * (Y / S)));
    }
}
