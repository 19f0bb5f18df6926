package laminate.check;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * One change, all else left as it is, by which a limit would just be met. Found by making the change and checking again,
 * so it holds for this very part; several remedies are choices, not a list to work off.
 *
 * @param lever what is to be changed
 * @param factor what it is to be multiplied by
 * @param from its value now, of a thickness (m) or a mass (kg)
 * @param to its value then
 */
public record Remedy(Lever lever, double factor, OptionalDouble from, OptionalDouble to) {
    /** What can be changed. */
    public enum Lever {
        /** The thickness of every layer, reinforced and core alike; from and to are the laminate's (m). */
        LAMINATE_THICKNESS("thickness of the laminate"),
        /** The thickness of the reinforced layers on either side of a core; from and to are theirs together (m). */
        FACE_THICKNESS("thickness of the faces"),
        /** The thickness of the core (m). */
        CORE_THICKNESS("thickness of the core"),
        /** The moduli of every layer but the core; of a laminate without core so its bending stiffness. */
        LAYER_STIFFNESS("stiffness of the layers"),
        /** The shear moduli of the core. */
        CORE_SHEAR_STIFFNESS("shear stiffness of the core"),
        /** The modulus of the core through its thickness, together with its shear moduli. */
        CORE_STIFFNESS("stiffness of the core"),
        /** The strengths of the plies. */
        PLY_STRENGTH("strength of the layers"),
        /** The shear strength of the core. */
        CORE_SHEAR_STRENGTH("shear strength of the core"),
        /** The compressive strength of the core. */
        CORE_COMPRESSIVE_STRENGTH("compressive strength of the core"),
        /** The mass (kg). */
        MASS("mass");

        private final String text;

        Lever(String text) {
            this.text = text;
        }

        /**
         * The words in a report.
         *
         * @return for example "thickness of the core"
         */
        public String text() {
            return text;
        }
    }

    /**
     * Checks the remedy.
     *
     * @param lever what is to be changed
     * @param factor what it is to be multiplied by
     * @param from its value now, of a thickness (m) or a mass (kg)
     * @param to its value then
     * @throws IllegalArgumentException if the factor is not positive and finite
     */
    public Remedy {
        Objects.requireNonNull(lever, "lever");
        Require.positive("factor", factor);
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }

    static Remedy of(Lever lever, double factor) {
        return new Remedy(lever, factor, OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Remedy of(Lever lever, double factor, double from) {
        return new Remedy(lever, factor, OptionalDouble.of(from), OptionalDouble.of(factor * from));
    }
}
