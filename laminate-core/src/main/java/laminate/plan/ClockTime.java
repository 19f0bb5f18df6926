package laminate.plan;

import java.time.LocalTime;

/**
 * A time on the shop's clock.
 *
 * @param day the day of the plan, from 1; days follow each other, weekends are not known
 * @param time the time of day, to the second
 */
public record ClockTime(int day, LocalTime time) implements Comparable<ClockTime> {
    private static final int DAY = 24 * 3600;

    /**
     * Checks the day.
     *
     * @throws IllegalArgumentException if the day is below 1
     */
    public ClockTime {
        if (day < 1) {
            throw new IllegalArgumentException("days of a plan count from 1, not " + day);
        }
    }

    /** The time so long after the midnight before the first day (s), to the nearest second. */
    static ClockTime at(double seconds) {
        long whole = Math.round(seconds);
        return new ClockTime((int) (whole / DAY) + 1, LocalTime.ofSecondOfDay(whole % DAY));
    }

    /**
     * Time since the midnight before the first day.
     *
     * @return time (s)
     */
    public double seconds() {
        return (day - 1.0) * DAY + time.toSecondOfDay();
    }

    @Override
    public int compareTo(ClockTime other) {
        return Double.compare(seconds(), other.seconds());
    }
}
