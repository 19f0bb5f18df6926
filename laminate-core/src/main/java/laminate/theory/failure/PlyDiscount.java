package laminate.theory.failure;

import laminate.theory.Lamina;
import laminate.theory.TransverseShear;

/**
 * What a failed ply still carries in a progressive analysis.
 *
 * <p>Failure along direction 1, and any failure of a mat or core, breaks the ply: all its moduli are multiplied by the
 * remainder. Other failure cracks it: E2, G12, ν12, G13 and G23 are multiplied and E1 stays, unless the whole ply is
 * discounted at its first failure. A woven ply is treated alike, its weft as if it were matrix: on the safe side.
 *
 * @param remainder factor on the lost moduli, above 0 so that the laminate keeps a stiffness, and below 1
 * @param wholePly whether any failure breaks the ply
 */
public record PlyDiscount(double remainder, boolean wholePly) {
    /**
     * Fibres carry on after a crack between them; 0.1 % of what is lost remains. Common practice, no source for the
     * figure: near enough to nothing that the last-ply load does not depend on it, without a singular laminate.
     */
    public static final PlyDiscount BY_MODE = new PlyDiscount(0.001, false);

    /** The whole ply goes at its first failure, as in the worked examples of Kaw 2006, ch. 5, from memory. */
    public static final PlyDiscount WHOLE_PLY = new PlyDiscount(0.001, true);

    /**
     * Checks the discount.
     *
     * @param remainder factor on the lost moduli, above 0 and below 1
     * @param wholePly whether any failure breaks the ply
     * @throws IllegalArgumentException if the factor is out of range
     */
    public PlyDiscount {
        if (!(remainder > 0 && remainder < 1)) {
            throw new IllegalArgumentException("remainder must lie above 0 and below 1, was " + remainder);
        }
    }

    boolean breaks(Mode mode) {
        return wholePly || mode.breaksPly();
    }

    /**
     * What is left of a lamina whose ply has broken.
     *
     * @param lamina as it was made
     * @return the lamina that remains
     */
    public Lamina broken(Lamina lamina) {
        return lamina.scaledBy(remainder);
    }

    /**
     * What is left of a lamina whose ply has cracked between its fibres.
     *
     * @param m the lamina as it was made
     * @return the lamina that remains
     */
    public Lamina cracked(Lamina m) {
        return new Lamina(
                m.E1(),
                remainder * m.E2(),
                remainder * m.G12(),
                remainder * m.nu12(),
                m.transverseShear().map(g -> new TransverseShear(remainder * g.G13(), remainder * g.G23())),
                m.thermalExpansion(),
                m.moistureExpansion(),
                m.strength());
    }
}
