package laminate.part;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.process.ContentSet;

/**
 * A zone of a part: an area with one schedule.
 *
 * @param name the name
 * @param area area of the finished part (m²), of one such zone
 * @param count how many such zones the part has
 * @param coatings coatings in the order applied: those at the mould face before the layers, the others after them
 * @param layers layers in the order laid, mould face first
 * @param trim the margin trimmed off, empty for none
 * @param contents the set of nominal fibre contents
 * @param measured what was measured on this zone
 */
public record Zone(
        String name,
        double area,
        int count,
        List<Coating> coatings,
        List<Layer> layers,
        Optional<Trim> trim,
        ContentSet contents,
        Measured measured) {

    /**
     * Checks the zone.
     *
     * @throws IllegalArgumentException if the name is blank, the area not above zero, the count below one or the zone
     *     without layers
     */
    public Zone {
        Objects.requireNonNull(trim, "trim");
        Objects.requireNonNull(contents, "contents");
        Objects.requireNonNull(measured, "measured");
        coatings = List.copyOf(coatings);
        layers = List.copyOf(layers);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a zone needs a name");
        }
        if (!(area > 0) || !Double.isFinite(area)) {
            throw new IllegalArgumentException(name + ": area must be above zero, not " + area + " m²");
        }
        if (count < 1) {
            throw new IllegalArgumentException(name + ": count must be one or more, not " + count);
        }
        if (layers.isEmpty()) {
            throw new IllegalArgumentException(name + " has no layers");
        }
    }

    /**
     * A zone without coatings or trim, once in the part, at the trade's fibre contents.
     *
     * @param name the name
     * @param area area of the finished part (m²)
     * @param layers layers in the order laid
     * @return the zone
     */
    public static Zone of(String name, double area, List<Layer> layers) {
        return new Zone(name, area, 1, List.of(), layers, Optional.empty(), ContentSet.TRADE, Measured.NOTHING);
    }

    /**
     * This zone at another set of nominal fibre contents.
     *
     * @param set the set
     * @return the zone
     */
    public Zone with(ContentSet set) {
        return new Zone(name, area, count, coatings, layers, trim, set, measured);
    }

    /**
     * Area of all such zones of one moulding.
     *
     * @return area times count (m²)
     */
    public double totalArea() {
        return area * count;
    }
}
