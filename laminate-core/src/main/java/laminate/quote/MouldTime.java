package laminate.quote;

import java.util.Objects;
import laminate.process.WorkingDay;

/**
 * How long a batch takes by the clock where one mould is used again and again: the crew works in the hours of the working
 * day, every day; then the moulding cures in the mould, by day and by night, with nobody at it; then the next is begun.
 *
 * <p>All work is taken to be done while the moulding holds the mould, so that the time is the longest it should take: what
 * is trimmed and finished beside the mould shortens it. A second mould, where the life of the first asks for it, comes after
 * the first, not beside it. Weekends are left out of count.
 *
 * @param setUp work before the first moulding, by the clock (s)
 * @param work work on each moulding on the average, by the clock (s)
 * @param cure cure of each in the mould (s)
 * @param pulls mouldings, rejects among them
 * @param day the working day
 */
public record MouldTime(double setUp, double work, double cure, int pulls, WorkingDay day) {

    private static final double DAY = 24 * 3600;

    /** A second and less of a working day is not waited for till the next. */
    private static final double SLACK = 1;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a time is below zero or not finite, or nothing is pulled
     */
    public MouldTime {
        Objects.requireNonNull(day, "day");
        checkTime("set-up", setUp);
        checkTime("work", work);
        checkTime("cure", cure);
        if (pulls < 1) {
            throw new IllegalArgumentException("a batch is of one or more, not " + pulls);
        }
    }

    /**
     * From the beginning of the first working day until the last moulding may be taken out.
     *
     * @return time by the clock (s)
     */
    public double length() {
        double clock = afterWork(0, setUp);
        for (int pull = 0; pull < pulls; pull++) {
            clock = afterWork(clock, work) + cure;
        }
        return clock;
    }

    /**
     * Days that the mould is taken on.
     *
     * @return days, those begun counted whole; one at least
     */
    public int days() {
        return (int) Math.max(1, Math.ceil((length() - SLACK) / DAY));
    }

    /** The clock when work is done that begins at a clock, both counted from the start of the first working day (s). */
    private double afterWork(double from, double work) {
        if (work == 0) {
            return from;
        }
        double days = Math.floor(from / DAY);
        double today = Math.min(from - days * DAY, day.length());
        double worked = today + work;
        double whole = Math.max(0, Math.ceil((worked - SLACK) / day.length()) - 1);
        return Math.max(from, (days + whole) * DAY + worked - whole * day.length());
    }

    private static void checkTime(String what, double seconds) {
        if (!(seconds >= 0) || !Double.isFinite(seconds)) {
            throw new IllegalArgumentException(what + " takes zero or more, not " + seconds + " s");
        }
    }
}
