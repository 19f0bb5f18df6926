package laminate.process.cure;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.material.Status;

/**
 * A gel time on the way from points to an answer.
 *
 * @param seconds the time (s)
 * @param from the stated times that it rests on
 */
record Knot(double seconds, List<Figure> from) {

    static Knot of(Resin.GelPoint point) {
        return new Knot(point.time().value(), List.of(point.time()));
    }

    /** Between this and another in the logarithm of time: 0 is here, 1 there. */
    Knot towards(Knot other, double weight) {
        return new Knot(
                power(seconds, other.seconds, weight),
                Stream.concat(from.stream(), other.from.stream()).toList());
    }

    GelTime gelTime() {
        Status weakest = from.stream()
                .map(Figure::status)
                .max(Comparator.comparingInt(Knot::weakness))
                .orElseThrow();
        String sources = from.stream().map(Figure::source).distinct().collect(Collectors.joining("; "));
        return new GelTime(seconds, weakest, from.size() == 1 ? sources : "between points of: " + sources);
    }

    /** From one value to another along a line in the logarithm. */
    static double power(double here, double there, double weight) {
        return here * Math.pow(there / here, weight);
    }

    /** What a user states is their own cup test, as good as print. */
    private static int weakness(Status status) {
        return switch (status) {
            case PRINTED -> 0;
            case USER -> 1;
            case MEMORY -> 2;
            case COMMON_PRACTICE -> 3;
        };
    }
}
