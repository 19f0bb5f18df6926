package laminate.theory;

import java.util.Objects;
import java.util.Optional;

/**
 * One ply of a laminate: a lamina with a thickness, laid at an angle.
 *
 * @param lamina what it is made of
 * @param thickness thickness (m)
 * @param angleDegrees angle of its direction 1, from x towards y (°)
 */
public record Ply(Lamina lamina, double thickness, double angleDegrees) {
    /**
     * Checks the ply.
     *
     * @param lamina what it is made of
     * @param thickness thickness (m)
     * @param angleDegrees angle of its direction 1, from x towards y (°)
     * @throws IllegalArgumentException if the thickness is not positive or the angle not finite
     */
    public Ply {
        Objects.requireNonNull(lamina, "lamina");
        Require.positive("ply thickness", thickness);
        Require.finite("ply angle", angleDegrees);
    }

    /**
     * Whether it is a core.
     *
     * @return true if its lamina is one
     */
    public boolean isCore() {
        return lamina.isCore();
    }

    /**
     * This ply at another thickness.
     *
     * @param factor what its thickness is multiplied by
     * @return the ply
     * @throws IllegalArgumentException if the thickness is not positive and finite then
     */
    public Ply thickerBy(double factor) {
        return new Ply(lamina, factor * thickness, angleDegrees);
    }

    /**
     * The angle, folded to half a turn.
     *
     * @return the angle of direction 1
     */
    public Angle angle() {
        return Angle.ofDegrees(angleDegrees);
    }

    /**
     * The stiffness in laminate axes.
     *
     * @return Q̄ (Pa)
     */
    public ReducedStiffness stiffness() {
        return lamina.reducedStiffness().rotatedBy(angle());
    }

    /**
     * Free thermal strain per kelvin in laminate axes, if the expansion of the lamina is known.
     *
     * @return αx, αy, αxy (1/K), shear as engineering strain
     */
    public Optional<Vector3> thermalExpansion() {
        return lamina.thermalExpansion().map(this::inLaminateAxes);
    }

    /**
     * Free strain per unit moisture content in laminate axes, if the moisture expansion of the lamina is known.
     *
     * @return βx, βy, βxy, shear as engineering strain
     */
    public Optional<Vector3> moistureExpansion() {
        return lamina.moistureExpansion().map(this::inLaminateAxes);
    }

    private Vector3 inLaminateAxes(Expansion expansion) {
        return angle().strainFromPly(expansion.asStrain());
    }

    /**
     * Stress in laminate axes, σ = Q̄ ε.
     *
     * @param mechanicalStrain total strain less the free strain α ΔT + β c: εx, εy, γxy
     * @return σx, σy, τxy (Pa)
     */
    public Vector3 stress(Vector3 mechanicalStrain) {
        return stiffness().times(mechanicalStrain);
    }
}
