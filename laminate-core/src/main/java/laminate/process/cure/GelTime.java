package laminate.process.cure;

import java.util.Objects;
import laminate.material.Status;

/**
 * A gel time of a thin film or a 100 g cup.
 *
 * @param seconds the gel time (s)
 * @param status the weakest standing among the points that it rests on
 * @param source where those points come from
 */
public record GelTime(double seconds, Status status, String source) {

    /**
     * Checks the gel time.
     *
     * @throws IllegalArgumentException if it is not above zero and finite, or its source is blank
     */
    public GelTime {
        Objects.requireNonNull(status, "status");
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("a gel time must be above zero, not " + seconds);
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("a gel time needs a source; " + seconds + " has none");
        }
    }
}
