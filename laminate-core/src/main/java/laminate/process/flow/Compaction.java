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

    private static void exponent(double b) {
        if (!(b >= 0 && b < 1)) {
            throw new IllegalArgumentException("compaction exponent must lie from 0 to below 1, was " + b);
        }
    }
}
