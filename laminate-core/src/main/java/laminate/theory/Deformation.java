package laminate.theory;

import java.util.Objects;

/**
 * Strain of the mid-plane and curvature of a laminate, or either per kelvin or per unit moisture content.
 *
 * @param strain ε0: εx, εy, γxy
 * @param curvature κ = −w,xx, −w,yy, −2 w,xy (1/m)
 */
public record Deformation(Vector3 strain, Vector3 curvature) {
    /**
     * Checks that both are there.
     *
     * @param strain ε0: εx, εy, γxy
     * @param curvature κ = −w,xx, −w,yy, −2 w,xy (1/m)
     */
    public Deformation {
        Objects.requireNonNull(strain, "strain");
        Objects.requireNonNull(curvature, "curvature");
    }

    /**
     * The strain at a height, ε = ε0 + z κ.
     *
     * @param z height from mid-plane, negative towards the mould face (m)
     * @return εx, εy, γxy
     */
    public Vector3 at(double z) {
        return strain.plus(curvature.times(z));
    }

    /**
     * A multiple of this deformation, as for ΔT times the expansion per kelvin.
     *
     * @param factor the factor
     * @return both parts times the factor
     */
    public Deformation times(double factor) {
        return new Deformation(strain.times(factor), curvature.times(factor));
    }
}
