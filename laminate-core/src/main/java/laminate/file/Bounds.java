package laminate.file;

import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * The values that a number may take.
 *
 * @param holds whether a value (SI) is in the range
 * @param accepted the range in the user's words, as "more than zero"
 */
record Bounds(DoublePredicate holds, String accepted) {

    static final Bounds POSITIVE = new Bounds(value -> value > 0, "more than zero");

    static final Bounds ANY = new Bounds(value -> true, "any number");

    static final Bounds NOT_NEGATIVE = new Bounds(value -> value >= 0, "zero or more");

    /** From a value to another, both included. */
    static Bounds between(double low, double high, String accepted) {
        return new Bounds(value -> value >= low && value <= high, accepted);
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
            if (value.isEmpty() || bounds.holds.test(value.get())) {
                return value;
            }
            String written = node instanceof Node.Scalar scalar ? Complaints.shown(scalar.text()) : "this";
            complaints.at(node, written + " is outside the range; accepted: " + bounds.accepted);
            return Optional.empty();
        }
    }
}
