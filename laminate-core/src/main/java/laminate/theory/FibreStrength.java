package laminate.theory;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Strength of a fibre along it.
 *
 * @param tension tensile strength as worked in the laminate (Pa)
 * @param compression compressive strength, if the fibre itself may give way before a ply of it kinks (Pa)
 */
public record FibreStrength(double tension, OptionalDouble compression) {
    /**
     * Checks the strengths.
     *
     * @param tension tensile strength as worked in the laminate (Pa)
     * @param compression compressive strength, if the fibre itself may give way before a ply of it kinks (Pa)
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public FibreStrength {
        Require.positive("fibre tensile strength", tension);
        if (Objects.requireNonNull(compression, "compression").isPresent()) {
            Require.positive("fibre compressive strength", compression.getAsDouble());
        }
    }

    /**
     * A fibre that does not give way in compression before a ply of it kinks, as glass and carbon.
     *
     * @param tension tensile strength as worked in the laminate (Pa)
     * @return the strength
     * @throws IllegalArgumentException if it is not positive and finite
     */
    public static FibreStrength inTension(double tension) {
        return new FibreStrength(tension, OptionalDouble.empty());
    }
}
