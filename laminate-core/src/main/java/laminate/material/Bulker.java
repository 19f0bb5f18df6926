package laminate.material;

import java.util.Set;

/**
 * A bulking mat: a soft mat filled with hollow spheres, wetted out with the laminate and counted at its impregnated
 * thickness and density.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param figures areal weight dry; thickness, density, moduli and strengths impregnated: tension and
 *     compression through the thickness, shear across it
 */
public record Bulker(String id, String name, Figures figures) implements Material {

    /** Properties that every bulker has. */
    public static final Set<Property> REQUIRED = Property.setOf(
            Property.AREAL_WEIGHT, Property.THICKNESS, Property.DENSITY, Property.E, Property.NU, Property.ALPHA);

    /** Properties that a bulker may have. */
    public static final Set<Property> OPTIONAL = Property.setOf(
            Property.ROLL_WIDTH,
            Property.ROLL_LENGTH,
            Property.TENSILE_STRENGTH,
            Property.COMPRESSIVE_STRENGTH,
            Property.SHEAR_STRENGTH);

    /**
     * Checks the bulker.
     *
     * @throws IllegalArgumentException if a figure is missing, out of place or not above zero, or if the dry mat weighs
     *     more than the impregnated one
     */
    public Bulker {
        figures.check(id, REQUIRED, OPTIONAL);
        figures.checkPositive(id, Property.AREAL_WEIGHT, Property.THICKNESS, Property.DENSITY, Property.E);
        figures.checkPositive(id, Property.TENSILE_STRENGTH, Property.COMPRESSIVE_STRENGTH, Property.SHEAR_STRENGTH);
        figures.checkRange(id, -1, 0.5, Property.NU);
        double wet = figures.value(Property.DENSITY) * figures.value(Property.THICKNESS);
        if (figures.value(Property.AREAL_WEIGHT) >= wet) {
            throw new IllegalArgumentException(id + ": the dry mat weighs " + figures.value(Property.AREAL_WEIGHT)
                    + " kg/m², the impregnated one only " + wet);
        }
    }

    /**
     * Mass of dry mat per area.
     *
     * @return w (kg/m²)
     */
    public double arealMass() {
        return figures.value(Property.AREAL_WEIGHT);
    }

    /**
     * Thickness when impregnated.
     *
     * @return t (m)
     */
    public double thickness() {
        return figures.value(Property.THICKNESS);
    }

    /**
     * Resin that the mat takes up: w_resin = ρ t − w, with ρ the impregnated density.
     *
     * @return resin (kg/m²)
     */
    public double resinUptake() {
        return figures.value(Property.DENSITY) * thickness() - arealMass();
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.BULKER;
    }
}
