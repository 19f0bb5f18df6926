package laminate.compare;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import laminate.check.Subject;

/**
 * One figure of every alternative: a line of the table whose columns are the alternatives.
 *
 * @param subject what it is of: the part, a zone, a load case, a panel or a beam
 * @param measure what is measured
 * @param values in the order of the alternatives, in the measure's SI unit; empty where one has no such thing
 */
public record Row(Subject subject, Measure measure, List<OptionalDouble> values) {
    /** A smaller share is rounding of the computer: what was made equal is equal. */
    private static final double ROUNDING = 1e-12;

    /**
     * Keeps a copy.
     *
     * @param subject what it is of
     * @param measure what is measured
     * @param values in the order of the alternatives
     */
    public Row {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(measure, "measure");
        values = List.copyOf(values);
    }

    /**
     * The difference of an alternative to the first.
     *
     * @param alternative its number, the first is 0
     * @return a share of the first: 0.12 for 12 % more; empty where one of both is unknown, or the first is zero and the
     *     other is not
     */
    public OptionalDouble difference(int alternative) {
        return difference(values.get(0), values.get(alternative));
    }

    static OptionalDouble difference(OptionalDouble first, OptionalDouble other) {
        if (first.isEmpty() || other.isEmpty()) {
            return OptionalDouble.empty();
        }
        double by = first.getAsDouble();
        double of = other.getAsDouble();
        return Math.abs(of - by) <= ROUNDING * Math.abs(by)
                ? OptionalDouble.of(0)
                : by == 0 ? OptionalDouble.empty() : OptionalDouble.of((of - by) / Math.abs(by));
    }
}
