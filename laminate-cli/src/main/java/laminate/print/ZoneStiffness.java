package laminate.print;

import java.util.Optional;
import laminate.theory.Compliance;
import laminate.theory.Deformation;
import laminate.theory.EngineeringConstants;
import laminate.theory.Laminate;

/**
 * The constants of a laminate that is free to couple, from one inverse for all of them.
 *
 * @param inPlane the constants in plane
 * @param bending the constants in bending
 * @param expansion free deformation per kelvin; empty if the expansion of a ply is not known
 */
record ZoneStiffness(EngineeringConstants inPlane, EngineeringConstants bending, Optional<Deformation> expansion) {

    /** The constants, empty where the plies differ so much that the stiffness has no inverse to working precision. */
    static Optional<ZoneStiffness> of(Laminate laminate) {
        Compliance compliance;
        try {
            compliance = laminate.compliance();
        } catch (IllegalArgumentException singular) {
            return Optional.empty();
        }
        double h = laminate.thickness();
        return Optional.of(new ZoneStiffness(
                EngineeringConstants.of(compliance.a().times(h)),
                EngineeringConstants.of(compliance.d().times(h * h * h / 12)),
                laminate.thermalResultants().map(compliance::times)));
    }
}
