package laminate.part.infusion;

/**
 * The flow mesh that lies over the whole way.
 *
 * @param thickness under the bag (m)
 * @param permeability along the flow (m²)
 * @param porosity (1)
 */
public record Mesh(double thickness, double permeability, double porosity) {

    /**
     * Checks the mesh.
     *
     * @throws IllegalArgumentException if a value is not above zero, or the porosity not below one
     */
    public Mesh {
        Checks.positive("thickness of the mesh", thickness, "m");
        Checks.positive("permeability of the mesh", permeability, "m²");
        Checks.fraction("porosity of the mesh", porosity);
    }
}
