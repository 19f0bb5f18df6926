package laminate.process.flow;

import java.util.List;
import java.util.Optional;
import laminate.theory.Require;

/**
 * The way of the resin from feed to vent.
 *
 * @param feed where it enters
 * @param segments what it passes, from the feed on; at least one
 * @param rise height of the vent above the feed (m), negative where it lies below; taken as an even slope along the way
 * @param supply hoses ahead of the feed, where their loss is to count
 */
public record FlowPath(Feed feed, List<FlowSegment> segments, double rise, Optional<Supply> supply) {
    /** What rounding may add to the radius of a rim. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the path.
     *
     * @throws IllegalArgumentException if there is no segment, the rise is more than the way is long, or the way is
     *     longer than the radius of the rim
     */
    public FlowPath {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("a flow path has at least one segment");
        }
        double length = length(segments);
        if (!(Math.abs(Require.finite("rise", rise)) <= length * (1 + ROUNDING))) {
            throw new IllegalArgumentException(
                    "the rise must not be more than the flow length of " + length + " m, was " + rise + " m");
        }
        if (feed instanceof Feed.Rim rim && length > rim.radius() * (1 + ROUNDING)) {
            throw new IllegalArgumentException("the flow length must not be more than the radius of the rim of "
                    + rim.radius() + " m, was " + length + " m");
        }
    }

    /**
     * A level path through one bed, hoses left out.
     *
     * @param feed where the resin enters
     * @param segment the bed
     * @return the path
     * @throws IllegalArgumentException if the way is longer than the radius of the rim
     */
    public static FlowPath level(Feed feed, FlowSegment segment) {
        return new FlowPath(feed, List.of(segment), 0, Optional.empty());
    }

    /**
     * This path with another rise.
     *
     * @param height of the vent above the feed (m)
     * @return the path
     * @throws IllegalArgumentException if it is more than the way is long
     */
    public FlowPath withRise(double height) {
        return new FlowPath(feed, segments, height, supply);
    }

    /**
     * This path behind hoses.
     *
     * @param hoses the hoses and what they serve
     * @return the path
     */
    public FlowPath withSupply(Supply hoses) {
        return new FlowPath(feed, segments, rise, Optional.of(hoses));
    }

    /**
     * Feed to vent.
     *
     * @return length (m)
     */
    public double length() {
        return length(segments);
    }

    private static double length(List<FlowSegment> segments) {
        double sum = 0;
        for (FlowSegment segment : segments) {
            sum += segment.length();
        }
        return sum;
    }
}
