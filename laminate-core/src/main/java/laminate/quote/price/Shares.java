package laminate.quote.price;

/** Checks shares such as rates of rejects, overhead and margin. */
final class Shares {

    private Shares() {}

    /** A share from 0 to below 1. */
    static void checkBelowOne(String what, double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(what + " must be from 0 to below 100 %, not " + share * 100 + " %");
        }
    }

    /** A share from 0 up. */
    static void checkNotNegative(String what, double share) {
        if (!(share >= 0) || !Double.isFinite(share)) {
            throw new IllegalArgumentException(what + " must be 0 or more, not " + share * 100 + " %");
        }
    }
}
