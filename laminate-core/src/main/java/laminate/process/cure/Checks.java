package laminate.process.cure;

/** Refuses what no formula of this package can take. */
final class Checks {
    private Checks() {}

    static double positive(String what, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value);
        }
        return value;
    }

    static double notNegative(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(what + " must not be below zero, not " + value);
        }
        return value;
    }

    static double fraction(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " must be from 0 to 1, not " + value);
        }
        return value;
    }

    static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " is beyond all numbers: " + value);
        }
        return value;
    }
}
