package laminate.part;

import laminate.material.Resin;
import laminate.process.Dose;

/**
 * A bed of paste under a core.
 *
 * @param paste the bonding paste
 * @param dose its agent and amount
 * @param thickness thickness of the bed, with what fills the cells of the core (m)
 */
public record Bed(Resin paste, Dose dose, double thickness) {

    /**
     * Checks the bed.
     *
     * @throws IllegalArgumentException if the thickness is not above zero, the paste is a coating, or the dose is
     *     outside the paste's range
     */
    public Bed {
        if (!(thickness > 0) || !Double.isFinite(thickness)) {
            throw new IllegalArgumentException("the thickness of a bed must be above zero, not " + thickness + " m");
        }
        if (paste.use().isCoating()) {
            throw new IllegalArgumentException(
                    paste.id() + " is a " + paste.use().word() + ", which beds no core");
        }
        dose = Dose.of(paste, dose.agent(), dose.ratio());
    }
}
