package laminate.part;

import java.util.List;
import java.util.Objects;

/**
 * A part to be moulded.
 *
 * @param name the name
 * @param count how many mouldings
 * @param zones the zones, which do not overlap
 * @param items bought-in items of each moulding
 * @param measured what was weighed and measured on a finished moulding
 */
public record Part(String name, int count, List<Zone> zones, List<Item> items, Measured measured) {

    /**
     * Checks the part.
     *
     * @throws IllegalArgumentException if the name is blank, the count below one or the part without zones
     */
    public Part {
        Objects.requireNonNull(measured, "measured");
        zones = List.copyOf(zones);
        items = List.copyOf(items);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a part needs a name");
        }
        if (count < 1) {
            throw new IllegalArgumentException("count must be one or more, not " + count);
        }
        if (zones.isEmpty()) {
            throw new IllegalArgumentException(name + " has no zones");
        }
    }

    /**
     * One moulding without items.
     *
     * @param name the name
     * @param zones the zones
     * @return the part
     */
    public static Part of(String name, List<Zone> zones) {
        return new Part(name, 1, zones, List.of(), Measured.NOTHING);
    }
}
