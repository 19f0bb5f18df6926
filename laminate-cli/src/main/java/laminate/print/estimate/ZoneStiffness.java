package laminate.print.estimate;

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
 * @param beamX EI per width of a strip along x, free to couple (N·m): 1/d11 of the compliance, which is E h³/12 with E in
 *     bending. D11 is more, for it holds back the strip's curl and, of an unsymmetric laminate, its stretch.
 * @param beamY the same along y (N·m): 1/d22
 * @param expansion free deformation per kelvin; empty if the expansion of a ply is not known
 */
record ZoneStiffness(
        EngineeringConstants inPlane,
        EngineeringConstants bending,
        double beamX,
        double beamY,
        Optional<Deformation> expansion) {

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
                1 / compliance.d().m11(),
                1 / compliance.d().m22(),
                laminate.thermalResultants().map(compliance::times)));
    }
}
