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
        return (node, complaints) -> reading.read(node, complaints).flatMap(value -> {
            if (holds.test(value)) {
                return Optional.of(value);
            }
            String written = node instanceof Node.Scalar scalar ? Complaints.shown(scalar.text()) : "this";
            complaints.at(node, written + " is outside the range; accepted: " + accepted);
            return Optional.empty();
        });
    }
}
