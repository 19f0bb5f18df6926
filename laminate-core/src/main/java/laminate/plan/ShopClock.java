package laminate.plan;

import laminate.process.WorkingDay;

/**
 * The clock of the crew: work is begun where it can be ended within the working day, else on the next. Times are seconds
 * since the midnight before the first day.
 */
final class ShopClock {
    private static final double DAY = 24 * 3600;

    private final double opening;
    private final double length;
    private double free;

    ShopClock(WorkingDay day) {
        opening = day.start().toSecondOfDay();
        length = day.length();
        free = opening;
    }

    /**
     * Takes the crew for a piece of work. What is longer than a day starts in the morning and runs on.
     *
     * @param ready the earliest time to start
     * @param duration how long it takes (s)
     * @return when it starts
     */
    double take(double ready, double duration) {
        double start = Math.max(ready, free);
        double morning = opening + Math.floor((start - opening) / DAY) * DAY;
        boolean fits = start + duration <= morning + length;
        if (!fits && start > morning) {
            start = morning + DAY;
        }
        free = start + duration;
        return start;
    }

    /** The next morning after a time. */
    double morningAfter(double time) {
        return opening + (Math.floor((time - opening) / DAY) + 1) * DAY;
    }

    double length() {
        return length;
    }
}
