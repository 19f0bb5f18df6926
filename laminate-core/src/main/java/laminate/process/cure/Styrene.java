package laminate.process.cure;

import laminate.material.Figure;
import laminate.material.Status;
import laminate.theory.Require;

/**
 * Styrene in the air of the workshop: an estimate that replaces no measurement.
 *
 * <p>The flow of fresh air is the one that would dilute all that is given off, evenly mixed, to the limit. Near the mould
 * the air is never evenly mixed: a worker who leans over the laminate breathes more.
 */
public final class Styrene {
    /** Mass of one part per million by volume (kg/m³): 4.26 mg/m³, as exposure limits are converted. */
    public static final double PPM = 4.26e-6;

    /** The usual limit (kg/m³): 100 ppm over 8 h. */
    public static final Figure USUAL_LIMIT = new Figure(
            100 * PPM,
            "UK workplace exposure limit of 100 ppm over 8 h, as told by a trade body; see that EH40 still says so",
            Status.PRINTED);

    private Styrene() {}

    /**
     * Flow of fresh air that dilutes what is given off to a limit: Q = m/(t c).
     *
     * @param mass styrene given off, m (kg)
     * @param seconds time over which it is given off, t (s)
     * @param limit concentration not to be exceeded, c (kg/m³)
     * @return Q (m³/s)
     * @throws IllegalArgumentException if the mass is below zero, or time or limit is not above zero
     */
    public static double freshAir(double mass, double seconds, double limit) {
        return Require.finite(
                "flow of fresh air",
                Require.notNegative("mass of styrene", mass)
                        / (Require.positive("time", seconds) * Require.positive("limit", limit)));
    }

    /**
     * Parts per million by volume as a mass concentration.
     *
     * @param partsPerMillion parts per million
     * @return kg/m³
     * @throws IllegalArgumentException if it is below zero
     */
    public static double ofPartsPerMillion(double partsPerMillion) {
        return Require.notNegative("concentration", partsPerMillion) * PPM;
    }

    /**
     * A mass concentration as parts per million by volume.
     *
     * @param concentration kg/m³
     * @return parts per million
     * @throws IllegalArgumentException if it is below zero
     */
    public static double partsPerMillion(double concentration) {
        return Require.notNegative("concentration", concentration) / PPM;
    }
}
