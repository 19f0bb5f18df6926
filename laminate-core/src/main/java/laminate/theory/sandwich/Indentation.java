package laminate.theory.sandwich;

import laminate.theory.Require;

/**
 * Indentation of a sandwich beam by a line load P across its whole width b, a roller or a support: the loaded face is a
 * beam on the core as foundation. The far side of the core is taken as held, and global bending of the beam is left out,
 * which lowers the load where the face is already stressed.
 *
 * <p>First the core yields under the load ({@link #coreYieldLoad}); then the yielded zone grows until the face fails:
 * {@link #elasticFaceLoad} for a brittle face, {@link #plasticHingeLoad} for one that yields.
 */
public final class Indentation {
    private Indentation() {}

    /**
     * Stiffness of the core as Winkler foundation, k = Ec/c: springs side by side (Zenkert 1995, from memory). For a core
     * that is not much thicker than the length 1/β; on a thick core shear between the springs makes it stiffer.
     *
     * @param Ec modulus of the core through the thickness (Pa)
     * @param c thickness of the core (m)
     * @return pressure per depth (Pa/m)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double foundationModulus(double Ec, double c) {
        return Require.finite(
                "foundation modulus", Require.positive("core modulus", Ec) / Require.positive("core thickness", c));
    }

    /**
     * β = (3 k/(Ef t³))^(1/4): the dent of an elastic face on an elastic core dies away over about 3/β (Hetényi 1946).
     *
     * @param k foundation modulus (Pa/m)
     * @param Ef modulus of the face along the beam (Pa)
     * @param t thickness of the face (m)
     * @return β (1/m)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double beta(double k, double Ef, double t) {
        double stiffness = Require.positive("face modulus", Ef) * Math.pow(Require.positive("face thickness", t), 3);
        return Require.finite("β", Math.pow(3 * Require.positive("foundation modulus", k) / stiffness, 0.25));
    }

    /**
     * Load at which the core under the line begins to yield, P = 2 b σc/β, from w = P β/(2 k b) (Hetényi 1946).
     *
     * @param b width (m)
     * @param sigmaC compressive strength of the core (Pa)
     * @param beta β (1/m)
     * @return P (N)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double coreYieldLoad(double b, double sigmaC, double beta) {
        double perLength = Require.positive("width", b) * Require.positive("core strength", sigmaC);
        return Require.finite("yield load", 2 * perLength / Require.positive("β", beta));
    }

    /**
     * Stress of the face by its local bending while the core is elastic, 6 M/(b t²) with M = P/(4 β) (Hetényi 1946).
     *
     * @param P line load (N)
     * @param b width (m)
     * @param t thickness of the face (m)
     * @param beta β (1/m)
     * @return stress at the surface of the face, tension on the core side under a load that presses (Pa)
     * @throws IllegalArgumentException if P is not finite or another not positive
     */
    public static double faceBendingStress(double P, double b, double t, double beta) {
        double section = Require.positive("width", b) * Math.pow(Require.positive("face thickness", t), 2) / 6;
        double moment = Require.finite("line load", P) / (4 * Require.positive("β", beta));
        return Require.finite("face stress", moment / section);
    }

    /**
     * Load at which an elastic, brittle face breaks over a core that yields at constant stress: P = 4/3 b t √(σc σf)
     * (Soden 1996, from memory).
     *
     * <p>Over the half length λ of the yielded zone the core gives σc b, beyond it is rigid: slope and moment vanish at
     * λ, so P = 4/3 σc b λ, and the face stress under the load is σc λ²/t².
     *
     * @param b width (m)
     * @param t thickness of the face (m)
     * @param sigmaC compressive strength of the core (Pa)
     * @param sigmaF bending strength of the face along the beam (Pa)
     * @return P (N)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double elasticFaceLoad(double b, double t, double sigmaC, double sigmaF) {
        return Require.finite("indentation load", 4.0 / 3 * product(b, t, sigmaC, sigmaF));
    }

    /**
     * How deep the face of {@link #elasticFaceLoad} is pressed in, σc b λ⁴/(72 Ef I) with λ = 3 P/(4 σc b) and
     * I = b t³/12, that is 27 P⁴/(512 σc³ b⁴ Ef t³) (Soden 1996, from memory; worked out here).
     *
     * @param P line load (N)
     * @param b width (m)
     * @param t thickness of the face (m)
     * @param sigmaC compressive strength of the core (Pa)
     * @param Ef modulus of the face along the beam (Pa)
     * @return depth (m)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double depth(double P, double b, double t, double sigmaC, double Ef) {
        double q = Require.positive("core strength", sigmaC) * Require.positive("width", b);
        double lambda = 3 * Require.positive("line load", P) / (4 * q);
        double bending =
                Require.positive("face modulus", Ef) * b * Math.pow(Require.positive("face thickness", t), 3) / 12;
        return Require.finite("depth", q * Math.pow(lambda, 4) / (72 * bending));
    }

    /**
     * Load at which a face forms plastic hinges over a core that yields: P = 2 b t √(σc σf) + σc b a (Ashby, Evans, Fleck
     * and others 2000, from memory). For faces that yield; a glass-fibre face breaks at {@link #elasticFaceLoad}.
     *
     * @param b width (m)
     * @param t thickness of the face (m)
     * @param sigmaC compressive strength of the core (Pa)
     * @param sigmaF yield strength of the face (Pa)
     * @param a length of the flat punch along the beam, 0 for a roller (m)
     * @return P (N)
     * @throws IllegalArgumentException if a is negative or another not positive
     */
    public static double plasticHingeLoad(double b, double t, double sigmaC, double sigmaF, double a) {
        double punch = sigmaC * b * Require.notNegative("length of the punch", a);
        return Require.finite("indentation load", 2 * product(b, t, sigmaC, sigmaF) + punch);
    }

    private static double product(double b, double t, double sigmaC, double sigmaF) {
        return Require.positive("width", b)
                * Require.positive("face thickness", t)
                * Math.sqrt(Require.positive("core strength", sigmaC) * Require.positive("face strength", sigmaF));
    }
}
