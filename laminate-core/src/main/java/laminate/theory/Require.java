package laminate.theory;

/**
 * Checks of arguments for the packages of the theory and those above it; each returns the value or throws an exception that
 * names and shows it.
 */
public final class Require {
    private Require() {}

    /**
     * Any finite number.
     *
     * @param name what it is called in the message
     * @param value the value
     * @return the value
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, was " + value);
        }
        return value;
    }

    /**
     * A finite number above zero.
     *
     * @param name what it is called in the message
     * @param value the value
     * @return the value
     * @throws IllegalArgumentException if it is zero, negative, NaN or infinite
     */
    public static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must be positive and finite, was " + value);
        }
        return value;
    }

    /**
     * A finite number, zero or above.
     *
     * @param name what it is called in the message
     * @param value the value
     * @return the value
     * @throws IllegalArgumentException if it is negative, NaN or infinite
     */
    public static double notNegative(String name, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(name + " must not be negative or infinite, was " + value);
        }
        return value;
    }

    /**
     * A number from 0 to a limit, both included.
     *
     * @param name what it is called in the message
     * @param value the value
     * @param limit the limit
     * @return the value
     * @throws IllegalArgumentException if it lies outside or is NaN
     */
    public static double within(String name, double value, double limit) {
        if (!(value >= 0 && value <= limit)) {
            throw new IllegalArgumentException(name + " must lie from 0 to " + limit + ", was " + value);
        }
        return value;
    }

    /**
     * A share of a whole, from 0 to 1, both included.
     *
     * @param name what it is called in the message
     * @param value the value
     * @return the value
     * @throws IllegalArgumentException if it lies outside or is NaN
     */
    public static double share(String name, double value) {
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
