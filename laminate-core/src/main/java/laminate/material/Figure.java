package laminate.material;

import java.util.Objects;

/**
 * A number with its origin.
 *
 * @param value the value in SI units; finite
 * @param source the published source, or what stands in for one
 * @param status how the value relates to that source
 */
public record Figure(double value, String source, Status status) {

    /**
     * Checks the figure.
     *
     * @throws IllegalArgumentException if the value is not finite or the source is blank
     */
    public Figure {
        Objects.requireNonNull(status, "status");
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a figure must be finite, not " + value);
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("a figure needs a source; " + value + " has none");
        }
    }

    /**
     * A figure that the user states.
     *
     * @param value the value in SI units
     * @return the figure, with status {@link Status#USER}
     */
    public static Figure stated(double value) {
        return new Figure(value, "stated by the user", Status.USER);
    }
}
