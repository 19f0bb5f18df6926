package laminate.theory.beam;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * The stiffness of a beam's cross-section.
 *
 * @param bendingStiffness EI (N·m²)
 * @param shearStiffness S, shear force per shear strain (N); empty: rigid in shear by the user's word
 */
public record BeamSection(double bendingStiffness, OptionalDouble shearStiffness) {
    /**
     * Checks the section.
     *
     * @param bendingStiffness EI (N·m²)
     * @param shearStiffness S, shear force per shear strain (N); empty: rigid in shear by the user's word
     * @throws IllegalArgumentException if a stiffness is not positive and finite
     */
    public BeamSection {
        Require.positive("bending stiffness", bendingStiffness);
        Objects.requireNonNull(shearStiffness, "shearStiffness");
        shearStiffness.ifPresent(S -> Require.positive("shear stiffness", S));
    }

    /**
     * A section that bends and shears (Timoshenko).
     *
     * @param bendingStiffness EI (N·m²)
     * @param shearStiffness S (N)
     * @return the section
     */
    public static BeamSection of(double bendingStiffness, double shearStiffness) {
        return new BeamSection(bendingStiffness, OptionalDouble.of(shearStiffness));
    }

    /**
     * A section taken as rigid in shear (Euler–Bernoulli); on a foam core this leaves out a third or more.
     *
     * @param bendingStiffness EI (N·m²)
     * @return the section
     */
    public static BeamSection rigidInShear(double bendingStiffness) {
        return new BeamSection(bendingStiffness, OptionalDouble.empty());
    }

    /** 1/S (1/N), 0 where rigid. */
    double shearCompliance() {
        return shearStiffness.isPresent() ? 1 / shearStiffness.getAsDouble() : 0;
    }
}
