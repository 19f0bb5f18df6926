package laminate.theory.beam;

import java.util.Objects;
import laminate.theory.Require;

/**
 * A straight beam of one span and constant section.
 *
 * @param section its stiffness
 * @param span L, between the supports or from clamp to free end (m)
 * @param supports how it is held
 */
public record Beam(BeamSection section, double span, Supports supports) {
    /**
     * Checks the beam.
     *
     * @param section its stiffness
     * @param span L, between the supports or from clamp to free end (m)
     * @param supports how it is held
     * @throws IllegalArgumentException if the span is not positive
     */
    public Beam {
        Objects.requireNonNull(section, "section");
        Require.positive("span", span);
        Objects.requireNonNull(supports, "supports");
    }

    /**
     * How the beam answers to a load.
     *
     * @param load the load
     * @return moment, shear force and deflection along x
     * @throws IllegalArgumentException if a point load stands beyond the span
     */
    public BeamResponse under(BeamLoad load) {
        for (PointLoad p : load.points()) {
            if (p.position() > span) {
                throw new IllegalArgumentException(
                        "a point load must stand from 0 to the span " + span + " m, was at " + p.position());
            }
        }
        return new BeamResponse(this, load);
    }
}
