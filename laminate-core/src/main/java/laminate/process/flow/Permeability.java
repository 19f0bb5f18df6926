package laminate.process.flow;

import laminate.theory.Require;

/**
 * How permeability changes with fibre content, after Kozeny 1927 and Carman 1937: K = c (1 − V)³/V² with c of the fabric.
 * The form is standard; trust it between two fibre contents that lie near each other, not from mat to woven.
 */
public final class Permeability {
    private Permeability() {}

    /**
     * Permeability at another fibre content, K2 = K1 ((1 − V2)/(1 − V1))³ (V1/V2)².
     *
     * @param K1 permeability at V1 (m²)
     * @param V1 fibre volume fraction it was measured at
     * @param V2 fibre volume fraction wanted
     * @return K2 (m²)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double scaled(double K1, double V1, double V2) {
        double room = (1 - Flow.fibreFraction(V2)) / (1 - Flow.fibreFraction(V1));
        double fibre = V1 / V2;
        return Require.positive("permeability", Flow.permeability(K1) * room * room * room * fibre * fibre);
    }

    /**
     * What one per cent of fibre content does to the permeability, d ln K/d ln V = −(2 + V)/(1 − V).
     *
     * @param V fibre volume fraction
     * @return per cent of permeability per per cent of V, negative
     * @throws IllegalArgumentException if V is not above 0 and below 1
     */
    public static double sensitivity(double V) {
        return -(2 + Flow.fibreFraction(V)) / (1 - V);
    }

    /**
     * Scatter of permeability that follows from scatter of fibre content, CV(K) = |d ln K/d ln V| CV(V), to the first
     * order.
     *
     * @param V fibre volume fraction
     * @param cvV coefficient of variation of V; about 0.04 for the thickness of one fabric under vacuum in several
     *     laboratories (Yong and others 2026, <i>Composites A</i> 200)
     * @return coefficient of variation of K
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double variation(double V, double cvV) {
        return Require.finite("variation", -sensitivity(V) * Require.notNegative("variation", cvV));
    }
}
