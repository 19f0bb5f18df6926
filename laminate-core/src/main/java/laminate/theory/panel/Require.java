package laminate.theory.panel;

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

    /** From 0 to a limit, both included. */
    static double within(String name, double value, double limit) {
        if (!(value >= 0 && value <= limit)) {
            throw new IllegalArgumentException(name + " must lie from 0 to " + limit + ", was " + value);
        }
        return value;
    }
}
