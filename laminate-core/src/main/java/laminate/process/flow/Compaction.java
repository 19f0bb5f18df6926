package laminate.process.flow;

import laminate.theory.Require;

/**
 * A bed of fibres under pressure, V = Vref (P/Pref)^b (form of Robitaille and Gauvin 1998, from memory).
 *
 * <p>The exponent is the fabric's own and has to be measured; from memory mats lie at 0.15 to 0.25, wovens at 0.05 to
 * 0.10, stitched fabrics at 0.04 to 0.08. Holds for loading within the pressures it was fitted to; beds creep, and come
 * back far less than they went.
 *
 * @param fibreVolumeFraction Vref at the pressure of reference
 * @param pressure Pref on the fibres (Pa)
 * @param exponent b, from 0 (rigid) to below 1
 */
public record Compaction(double fibreVolumeFraction, double pressure, double exponent) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public Compaction {
        Flow.fibreFraction(fibreVolumeFraction);
        Require.positive("pressure", pressure);
        exponent(exponent);
    }

    /**
     * Fibre content at a pressure, V = Vref (P/Pref)^b.
     *
     * @param Vref fibre volume fraction at Pref
     * @param Pref pressure of reference (Pa)
     * @param b exponent
     * @param P pressure on the fibres (Pa)
     * @return V
     * @throws IllegalArgumentException if an argument is out of its range, or the bed would be solid fibre
     */
    public static double fibreVolumeFraction(double Vref, double Pref, double b, double P) {
        Flow.fibreFraction(Vref);
        double ratio = Require.positive("pressure", P) / Require.positive("pressure of reference", Pref);
        return Flow.fibreFraction(Vref * Math.pow(ratio, exponent(b)));
    }

    /**
     * Exponent from two points, b = ln(V2/V1)/ln(P2/P1). Where resin was let out between them it comes out too high.
     *
     * @param V1 fibre volume fraction at P1
     * @param P1 pressure on the fibres (Pa)
     * @param V2 fibre volume fraction at P2
     * @param P2 another pressure (Pa)
     * @return b
     * @throws IllegalArgumentException if an argument is out of its range, the pressures are equal, or b would not lie
     *     from 0 to below 1
     */
    public static double exponent(double V1, double P1, double V2, double P2) {
        double ratio = Require.positive("pressure", P2) / Require.positive("pressure", P1);
        if (ratio == 1) {
            throw new IllegalArgumentException("an exponent needs two pressures, both were " + P1 + " Pa");
        }
        return exponent(Math.log(Flow.fibreFraction(V2) / Flow.fibreFraction(V1)) / Math.log(ratio));
    }

    /**
     * Fibre content at a pressure.
     *
     * @param P pressure on the fibres (Pa)
     * @return V
     * @throws IllegalArgumentException if the pressure is not positive, or the bed would be solid fibre
     */
    public double at(double P) {
        return fibreVolumeFraction(fibreVolumeFraction, pressure, exponent, P);
    }

    static double exponent(double b) {
        if (!(b >= 0 && b < 1)) {
            throw new IllegalArgumentException("compaction exponent must lie from 0 to below 1, was " + b);
        }
        return b;
    }
}
