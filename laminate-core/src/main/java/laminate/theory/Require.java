package laminate.theory;

/** Checks of arguments; each returns the value or throws an exception that names and shows it. */
final class Require {
    private Require() {}

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, was " + value);
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be positive and finite, was " + value);
        }
        return value;
    }

    /** From 0 to 1, both included. */
    static double share(String name, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must lie from 0 to 1, was " + value);
        }
        return value;
    }

    /** Above 0, up to and including 1. */
    static double positiveShare(String name, double value) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException(name + " must lie above 0 and up to 1, was " + value);
        }
        return value;
    }

    /** From 0, below 1. */
    static double properShare(String name, double value) {
        if (!(value >= 0 && value < 1)) {
            throw new IllegalArgumentException(name + " must lie from 0 to below 1, was " + value);
        }
        return value;
    }
}
