package laminate.material;

import java.util.Locale;
import java.util.Set;

/**
 * A fibre.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param type the sort of fibre, which decides how closely it packs
 * @param figures density, elastic constants, expansion, strength
 */
public record Fibre(String id, String name, Type type, Figures figures) implements Material {

    /** Properties that every fibre has. */
    public static final Set<Property> REQUIRED = Property.setOf(
            Property.DENSITY,
            Property.E1,
            Property.E2,
            Property.G12,
            Property.NU12,
            Property.ALPHA1,
            Property.ALPHA2,
            Property.TENSILE_STRENGTH);

    /** Properties that a fibre may have. */
    public static final Set<Property> OPTIONAL = Set.of(Property.COMPRESSIVE_STRENGTH);

    /** The sorts of fibre. */
    public enum Type {
        /** E-glass, S-glass and their like. */
        GLASS,
        /** Carbon of any modulus. */
        CARBON,
        /** Para-aramid. */
        ARAMID,
        /** Basalt. */
        BASALT,
        /** Plant fibres, flax above all. */
        NATURAL,
        /** Polyester and other polymer fibres of veils. */
        POLYMER;

        /**
         * Whether the fibre itself gives way in compression, by folding or buckling of its own threads, before a ply
         * of it kinks. How strong a ply is then, only a figure of the fibre can tell.
         *
         * @return false for glass, carbon and basalt
         */
        public boolean isWeakInCompression() {
            return this == ARAMID || this == NATURAL || this == POLYMER;
        }

        /**
         * The word in files.
         *
         * @return the word, in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Checks the fibre.
     *
     * @throws IllegalArgumentException if a figure is missing, out of place or not above zero
     */
    public Fibre {
        figures.check(id, REQUIRED, OPTIONAL);
        figures.checkPositive(
                id,
                Property.DENSITY,
                Property.E1,
                Property.E2,
                Property.G12,
                Property.TENSILE_STRENGTH,
                Property.COMPRESSIVE_STRENGTH);
    }

    /**
     * Density.
     *
     * @return ρf (kg/m³)
     */
    public double density() {
        return figures.value(Property.DENSITY);
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.FIBRE;
    }
}
