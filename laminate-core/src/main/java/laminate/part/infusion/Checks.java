package laminate.part.infusion;

import java.util.OptionalDouble;

/** Checks of single values, each with the offending value in its message. */
final class Checks {

    private Checks() {}

    /** Finite and above zero. */
    static void positive(String what, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value + " " + unit);
        }
    }

    static void positive(String what, OptionalDouble value, String unit) {
        if (value.isPresent()) {
            positive(what, value.getAsDouble(), unit);
        }
    }

    /** Above zero and below one, both left out. */
    static void fraction(String what, double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(what + " must be above 0 and below 1, not " + value);
        }
    }

    static void fraction(String what, OptionalDouble value) {
        if (value.isPresent()) {
            fraction(what, value.getAsDouble());
        }
    }
}
