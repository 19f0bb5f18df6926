package laminate.process.cure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * From a least to a greatest value, both included.
 *
 * @param least the least value
 * @param most the greatest value
 */
public record Span(double least, double most) {
    /** Conversions between units lose the last digits of an edge; the edge must still be reached. */
    static final double ROUNDING = 1e-9;

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the values are not finite and in order
     */
    public Span {
        if (!(least <= most) || Double.isInfinite(least) || Double.isInfinite(most)) {
            throw new IllegalArgumentException("a span must be in order, not " + least + " to " + most);
        }
    }

    /**
     * Whether a value lies inside.
     *
     * @param value a value
     * @return true if it is neither below the least nor above the greatest, but for a rounding of 1e-9 of it
     */
    public boolean contains(double value) {
        return value >= least && value <= most || isSame(value, least) || isSame(value, most);
    }

    /** Whether two values are the same but for rounding. */
    static boolean isSame(double a, double b) {
        return Math.abs(a - b) <= ROUNDING * Math.abs(b);
    }

    /** What lies in this span and in another. */
    Optional<Span> overlap(Span other) {
        double from = Math.max(least, other.least);
        double to = Math.min(most, other.most);
        return from <= to ? Optional.of(new Span(from, to)) : Optional.empty();
    }

    /** Spans in rising order, those that meet made one. */
    static List<Span> joined(List<Span> spans) {
        List<Span> sorted = new ArrayList<>(spans);
        sorted.sort(Comparator.comparingDouble(Span::least));
        List<Span> joined = new ArrayList<>();
        for (Span span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && span.least <= joined.get(last).most) {
                Span before = joined.get(last);
                joined.set(last, new Span(before.least, Math.max(before.most, span.most)));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }
}
