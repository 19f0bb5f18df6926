package laminate.process;

import java.time.LocalTime;
import java.util.Objects;

/**
 * The hours in which laminating goes on.
 *
 * @param start when work begins
 * @param length how long it goes on (s), at most 24 h
 */
public record WorkingDay(LocalTime start, double length) {

    /** A workshop that states nothing: from eight, eight hours; common practice. */
    public static final WorkingDay USUAL = new WorkingDay(LocalTime.of(8, 0), 8 * 3600);

    private static final double DAY = 24 * 3600;

    /**
     * Checks the day.
     *
     * @throws IllegalArgumentException if the length is not above zero and at most 24 h
     */
    public WorkingDay {
        Objects.requireNonNull(start, "start");
        if (!(length > 0 && length <= DAY)) {
            throw new IllegalArgumentException("a working day must be above 0 and at most 86400 s long, not " + length);
        }
    }
}
