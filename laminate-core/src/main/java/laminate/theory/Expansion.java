package laminate.theory;

/**
 * Free expansion of a lamina or fibre along and across, per kelvin (α) or per unit of moisture content (β).
 *
 * @param along coefficient in direction 1 (1/K, or 1 for moisture: m/m per kg/kg)
 * @param across coefficient in direction 2, same unit
 */
public record Expansion(double along, double across) {
    /**
     * Checks the coefficients; they may be negative (carbon and aramid along the fibre are).
     *
     * @param along coefficient in direction 1 (1/K, or 1 for moisture: m/m per kg/kg)
     * @param across coefficient in direction 2, same unit
     * @throws IllegalArgumentException if one is not finite
     */
    public Expansion {
        Require.finite("expansion along", along);
        Require.finite("expansion across", across);
    }

    /** The two coefficients as a strain in the axes of the ply. */
    Vector3 asStrain() {
        return new Vector3(along, across, 0);
    }
}
