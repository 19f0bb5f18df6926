package laminate.theory.beam;

import java.util.Objects;
import laminate.theory.Deformation;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.Require;
import laminate.theory.TransverseShearStiffness;

/**
 * A strip cut from a laminate along its x, as a test piece or a beam.
 *
 * <p>For a strip at another angle θ give the laminate {@linkplain Laminate#turnedBy turned} by −θ.
 *
 * @param laminate the laminate
 * @param width b (m)
 * @param form narrow, or wide in cylindrical bending
 */
public record Strip(Laminate laminate, double width, StripWidth form) {
    /**
     * Checks the strip.
     *
     * @param laminate the laminate
     * @param width b (m)
     * @param form narrow, or wide in cylindrical bending
     * @throws IllegalArgumentException if the width is not positive
     */
    public Strip {
        Objects.requireNonNull(laminate, "laminate");
        Require.positive("width", width);
        Objects.requireNonNull(form, "form");
    }

    /**
     * Bending stiffness EI = b/d11 or b D*.
     *
     * @return EI (N·m²)
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public double bendingStiffness() {
        return width * form.bendingStiffness(laminate);
    }

    /**
     * The section with the shear stiffness of the equilibrium shear stress, no shear force acting across the strip:
     * S = b (Sxx − Sxy²/Syy). The stress is that of cylindrical bending for a narrow strip too.
     *
     * @return the section
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public BeamSection section() {
        TransverseShearStiffness shear = TransverseShearStiffness.of(laminate);
        return section(shear.xx() - shear.xy() * shear.xy() / shear.yy());
    }

    /**
     * The section with another shear stiffness per width.
     *
     * @param shearStiffness shear force per width and shear strain in the x-z plane (N/m)
     * @return the section
     */
    public BeamSection section(double shearStiffness) {
        return BeamSection.of(bendingStiffness(), width * shearStiffness);
    }

    /**
     * What the laminate carries at a place of a beam made of this strip, from which stresses and failure follow.
     *
     * @param response the beam under its load
     * @param x distance from the start of the beam (m)
     * @return moment and shear force per width; a wide strip is held flat across
     * @throws IllegalArgumentException if x lies beyond the beam
     */
    public LaminateLoad loadAt(BeamResponse response, double x) {
        return form.load(response.momentAt(x) / width).withShear(response.shearForceAt(x) / width, 0);
    }

    /**
     * Strain and curvature of the laminate under a moment.
     *
     * @param moment M over the whole width (N·m)
     * @return ε0 and κ
     */
    public Deformation deformationUnder(double moment) {
        return form.perCurvature(laminate).times(Require.finite("moment", moment) / bendingStiffness());
    }
}
