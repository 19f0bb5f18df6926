package laminate.material;

import java.util.Set;
import laminate.unit.PriceBasis;

/**
 * What the process uses up and the part does not hold: bagging film, peel ply, brushes, solvent.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param soldBy the measure it is sold by
 * @param figures density where it is sold by volume, areal weight where it matters
 */
public record Consumable(String id, String name, PriceBasis soldBy, Figures figures) implements Material {

    /** Properties that a consumable may have. */
    public static final Set<Property> OPTIONAL =
            Property.setOf(Property.DENSITY, Property.AREAL_WEIGHT, Property.ROLL_WIDTH, Property.ROLL_LENGTH);

    /**
     * Checks the consumable.
     *
     * @throws IllegalArgumentException if a figure is out of place or not above zero, or it is sold by what is no measure of it
     */
    public Consumable {
        if (!soldBy.isMeasure()) {
            throw new IllegalArgumentException(
                    id + " cannot be sold by " + soldBy + "; kg, m², m, l or piece measures it");
        }
        figures.check(id, Set.of(), OPTIONAL);
        figures.checkPositive(id, Property.DENSITY, Property.AREAL_WEIGHT, Property.ROLL_WIDTH, Property.ROLL_LENGTH);
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.CONSUMABLE;
    }
}
