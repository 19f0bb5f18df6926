package laminate.material;

import java.util.Set;

/**
 * What makes a resin cure: a peroxide catalyst or the hardener of a two-part resin.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param kind {@link MaterialKind#CATALYST} or {@link MaterialKind#HARDENER}
 * @param figures the density
 */
public record Agent(String id, String name, MaterialKind kind, Figures figures) implements Material {

    /** Properties that every agent has. */
    public static final Set<Property> REQUIRED = Set.of(Property.DENSITY);

    /**
     * Checks the agent.
     *
     * @throws IllegalArgumentException if the kind is neither, or the density is missing or not above zero
     */
    public Agent {
        if (kind != MaterialKind.CATALYST && kind != MaterialKind.HARDENER) {
            throw new IllegalArgumentException(id + " must be a catalyst or a hardener, not a " + kind.word());
        }
        figures.check(id, REQUIRED, Set.of());
        figures.checkPositive(id, Property.DENSITY);
    }

    /**
     * Density of the liquid.
     *
     * @return ρ (kg/m³)
     */
    public double density() {
        return figures.value(Property.DENSITY);
    }

    /**
     * Whether this is a hardener, which becomes part of the matrix; a catalyst does not.
     *
     * @return true for a hardener
     */
    public boolean isHardener() {
        return kind == MaterialKind.HARDENER;
    }
}
