package laminate.theory;

import java.util.Objects;

/**
 * Strain and stress at one point of the thickness, in the axes of the laminate and of the ply.
 *
 * @param ply number of the ply, 0 at the mould face
 * @param at where in the ply
 * @param z height from mid-plane (m)
 * @param strain total strain εx, εy, γxy, free expansion included
 * @param stress σx, σy, τxy (Pa), residual stress included
 * @param plyStrain total strain ε1, ε2, γ12
 * @param plyStress σ1, σ2, τ12 (Pa)
 * @param shear τxz, τyz (Pa)
 * @param plyShear τ13, τ23 (Pa)
 */
public record PlyPoint(
        int ply,
        At at,
        double z,
        Vector3 strain,
        Vector3 stress,
        Vector3 plyStrain,
        Vector3 plyStress,
        ShearStress shear,
        ShearStress plyShear) {

    /** Where in a ply, from the mould face inwards. */
    public enum At {
        /** The side towards the mould face. */
        MOULD_FACE_SIDE,
        /** The middle of the ply. */
        MIDDLE,
        /** The side away from the mould face. */
        INNER_SIDE;

        double between(double low, double high) {
            return switch (this) {
                case MOULD_FACE_SIDE -> low;
                case MIDDLE -> (low + high) / 2;
                case INNER_SIDE -> high;
            };
        }
    }

    /**
     * Checks that all are there.
     *
     * @param ply number of the ply, 0 at the mould face
     * @param at where in the ply
     * @param z height from mid-plane (m)
     * @param strain total strain εx, εy, γxy, free expansion included
     * @param stress σx, σy, τxy (Pa), residual stress included
     * @param plyStrain total strain ε1, ε2, γ12
     * @param plyStress σ1, σ2, τ12 (Pa)
     * @param shear τxz, τyz (Pa)
     * @param plyShear τ13, τ23 (Pa)
     */
    public PlyPoint {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(strain, "strain");
        Objects.requireNonNull(stress, "stress");
        Objects.requireNonNull(plyStrain, "plyStrain");
        Objects.requireNonNull(plyStress, "plyStress");
        Objects.requireNonNull(shear, "shear");
        Objects.requireNonNull(plyShear, "plyShear");
    }
}
