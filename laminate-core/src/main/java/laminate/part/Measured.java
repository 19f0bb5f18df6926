package laminate.part;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was weighed and measured once the moulding was made.
 *
 * @param mass mass of one moulding as trimmed, with its items (kg), empty where not weighed
 * @param thickness readings of the thickness through laminate and coatings (m)
 */
public record Measured(OptionalDouble mass, List<Double> thickness) {

    /** Nothing measured. */
    public static final Measured NOTHING = new Measured(OptionalDouble.empty(), List.of());

    /**
     * Checks the readings.
     *
     * @throws IllegalArgumentException if one is not above zero and finite
     */
    public Measured {
        thickness = List.copyOf(thickness);
        if (mass.isPresent()) {
            check("mass", mass.getAsDouble());
        }
        for (double value : thickness) {
            check("thickness", value);
        }
    }

    /**
     * The mean thickness.
     *
     * @return the mean (m), empty without readings
     */
    public OptionalDouble meanThickness() {
        if (thickness.isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (double value : thickness) {
            sum += value;
        }
        return OptionalDouble.of(sum / thickness.size());
    }

    private static void check(String what, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("a measured " + what + " must be above zero, not " + value);
        }
    }
}
