package laminate.file;

import java.util.Optional;

/**
 * The values (SI) that a number may take.
 *
 * @param low the low end
 * @param lowIncluded whether that may be taken itself
 * @param high the high end
 * @param highIncluded whether that may be taken itself
 * @param accepted the range in the user's words, as "more than zero"
 */
record Bounds(double low, boolean lowIncluded, double high, boolean highIncluded, String accepted) {

    private static final double MOST = Double.POSITIVE_INFINITY;

    static final Bounds POSITIVE = above(0, MOST, "more than zero");

    static final Bounds ANY = between(-MOST, MOST, "any number");

    static final Bounds NOT_NEGATIVE = between(0, MOST, "zero or more");

    /** From a value to another, both included. */
    static Bounds between(double low, double high, String accepted) {
        return new Bounds(low, true, high, true, accepted);
    }

    /** From a value on that is left out to another that is included. */
    static Bounds above(double low, double high, String accepted) {
        return new Bounds(low, false, high, true, accepted);
    }

    /** From a value that is included to another that is left out. */
    static Bounds below(double low, double high, String accepted) {
        return new Bounds(low, true, high, false, accepted);
    }

    /** From a value to another, both left out. */
    static Bounds inside(double low, double high, String accepted) {
        return new Bounds(low, false, high, false, accepted);
    }

    private boolean holds(double value) {
        return (lowIncluded ? value >= low : value > low) && (highIncluded ? value <= high : value < high);
    }

    /** The reading within this range; the message shows the text as it was written. */
    Reading<Double> limit(Reading<Double> reading) {
        return new Limited(reading, this);
    }

    /** A reading within a range. */
    private record Limited(Reading<Double> reading, Bounds bounds) implements Reading<Double> {

        @Override
        public Optional<Double> read(Node node, Complaints complaints) {
            Optional<Double> value = reading.read(node, complaints);
            if (value.isEmpty() || bounds.holds(value.get())) {
                return value;
            }
            String written = node instanceof Node.Scalar scalar ? Complaints.shown(scalar.text()) : "this";
            complaints.at(node, written + " is outside the range; accepted: " + bounds.accepted);
            return Optional.empty();
        }
    }
}
