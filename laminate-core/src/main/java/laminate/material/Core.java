package laminate.material;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * A core, sold in sheets of a density.
 *
 * <p>E1, E2, G12 and ν12 are in the plane of the sheet, Ez through its thickness; G13 and G23 are the shear moduli that
 * carry the transverse shear of a sandwich.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param type the sort of core, such as {@code cross-linked PVC}
 * @param openCell whether resin under vacuum would run into it
 * @param figures density, moduli, strengths, resin uptake
 */
public record Core(String id, String name, Type type, boolean openCell, Figures figures) implements Material {

    /** Properties that every core has. */
    public static final Set<Property> REQUIRED = Property.setOf(
            Property.DENSITY,
            Property.E1,
            Property.E2,
            Property.G12,
            Property.NU12,
            Property.EZ,
            Property.G13,
            Property.G23,
            Property.ALPHA,
            Property.COMPRESSIVE_STRENGTH,
            Property.SHEAR_STRENGTH,
            Property.UPTAKE_HAND);

    /** Properties that a core may have; one that cannot be infused states no uptake by infusion. */
    public static final Set<Property> OPTIONAL =
            Property.setOf(Property.TENSILE_STRENGTH, Property.CELL_SIZE, Property.UPTAKE_INFUSION);

    /** Resin that no face of a core takes up (kg/m²): it would stand 8 mm deep. */
    private static final double MOST_UPTAKE = 10;

    /** The sorts of core. */
    public enum Type {
        /** Cross-linked PVC foam. */
        PVC_CROSS_LINKED("cross-linked PVC"),
        /** Linear PVC foam. */
        PVC_LINEAR("linear PVC"),
        /** Styrene acrylonitrile foam. */
        SAN("SAN"),
        /** PET foam. */
        PET("PET"),
        /** End-grain balsa. */
        BALSA("balsa"),
        /** Honeycomb. */
        HONEYCOMB("honeycomb"),
        /** Plywood. */
        PLYWOOD("plywood"),
        /** Polyurethane foam. */
        PU("PU"),
        /** Polystyrene foam, which styrene dissolves. */
        PS("PS");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks the core.
     *
     * @throws IllegalArgumentException if a figure is missing, out of place or out of its range
     */
    public Core {
        figures.check(id, REQUIRED, OPTIONAL);
        figures.checkPositive(
                id,
                Property.DENSITY,
                Property.E1,
                Property.E2,
                Property.G12,
                Property.EZ,
                Property.G13,
                Property.G23,
                Property.COMPRESSIVE_STRENGTH,
                Property.SHEAR_STRENGTH,
                Property.TENSILE_STRENGTH,
                Property.CELL_SIZE);
        figures.checkRange(id, 0, MOST_UPTAKE, Property.UPTAKE_HAND, Property.UPTAKE_INFUSION);
    }

    /**
     * Width across the flats of its cells, over which a thin face may dimple.
     *
     * @return the width (m), empty for a core without open cells or where none is stated
     */
    public OptionalDouble cellSize() {
        return figures.valueOf(Property.CELL_SIZE);
    }

    /**
     * Density of the dry core.
     *
     * @return ρ (kg/m³)
     */
    public double density() {
        return figures.value(Property.DENSITY);
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.CORE;
    }
}
