package laminate.part;

/** Checks of the sizes of panels and beams. */
final class Lengths {

    private Lengths() {}

    /** A finite length above zero (m). */
    static void check(String owner, String what, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(owner + ": " + what + " must be above zero, not " + value + " m");
        }
    }
}
