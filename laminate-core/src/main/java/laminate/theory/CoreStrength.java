package laminate.theory;

import java.util.OptionalDouble;

/**
 * Strength of a sandwich core: shear across the thickness and stress through it; every figure is positive.
 *
 * @param shear13 shear strength in the plane of direction 1 and the thickness (Pa)
 * @param shear23 shear strength in the plane of direction 2 and the thickness (Pa)
 * @param compression compressive strength through the thickness (Pa)
 * @param tension tensile strength through the thickness, if known (Pa)
 */
public record CoreStrength(double shear13, double shear23, double compression, OptionalDouble tension)
        implements Strength {
    /**
     * Checks the strengths.
     *
     * @param shear13 shear strength in the plane of direction 1 and the thickness (Pa)
     * @param shear23 shear strength in the plane of direction 2 and the thickness (Pa)
     * @param compression compressive strength through the thickness (Pa)
     * @param tension tensile strength through the thickness, if known (Pa)
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public CoreStrength {
        Require.positive("shear13", shear13);
        Require.positive("shear23", shear23);
        Require.positive("compression", compression);
        if (tension.isPresent()) {
            Require.positive("tension", tension.getAsDouble());
        }
    }
}
