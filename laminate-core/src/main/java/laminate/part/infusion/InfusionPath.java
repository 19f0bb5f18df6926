package laminate.part.infusion;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The way that the resin has to run, from the feed to the vent.
 *
 * @param feed where it enters
 * @param flowLength L, from the feed to the vent (m)
 * @param feedRadius centre feed: r₀, the radius of the port or ring that feeds, so that the vent lies at r₀ + L (m); rim
 *     feed: R, the radius of the rim, so that the vent lies at R − L, which may be zero (m); empty for a line
 * @param rise how much higher the vent lies than the feed (m); below zero where the resin runs down
 */
public record InfusionPath(FeedKind feed, double flowLength, OptionalDouble feedRadius, double rise) {

    /** Room for rounding, of the flow length, where two lengths have to be the same (1). */
    static final double ROUNDING = 1e-9;

    /**
     * Checks the path.
     *
     * @throws IllegalArgumentException if a length is not above zero, the rise is not finite, a line has a radius, another
     *     feed has none, or the flow length is longer than the radius of the rim
     */
    public InfusionPath {
        Objects.requireNonNull(feed, "feed");
        Checks.positive("flow length", flowLength, "m");
        Checks.positive("feed radius", feedRadius, "m");
        if (!Double.isFinite(rise)) {
            throw new IllegalArgumentException("rise must be finite, not " + rise + " m");
        }
        if ((feed == FeedKind.LINE) == feedRadius.isPresent()) {
            throw new IllegalArgumentException(
                    feedRadius.isPresent()
                            ? "a line feed has no feed radius, not even " + feedRadius.getAsDouble() + " m"
                            : "a " + feed.word() + " feed needs a feed radius");
        }
        if (feed == FeedKind.RIM && flowLength > feedRadius.getAsDouble() * (1 + ROUNDING)) {
            throw new IllegalArgumentException("a flow length of " + flowLength
                    + " m is longer than the radius of the rim, " + feedRadius.getAsDouble() + " m");
        }
    }

    /**
     * A level path from a line.
     *
     * @param flowLength L (m)
     * @return the path
     * @throws IllegalArgumentException if the length is not above zero
     */
    public static InfusionPath line(double flowLength) {
        return new InfusionPath(FeedKind.LINE, flowLength, OptionalDouble.empty(), 0);
    }

    /**
     * A level path outwards.
     *
     * @param feedRadius r₀ (m)
     * @param flowLength L (m)
     * @return the path
     * @throws IllegalArgumentException if a length is not above zero
     */
    public static InfusionPath centre(double feedRadius, double flowLength) {
        return new InfusionPath(FeedKind.CENTRE, flowLength, OptionalDouble.of(feedRadius), 0);
    }

    /**
     * A level path inwards.
     *
     * @param feedRadius R (m)
     * @param flowLength L (m), at most R
     * @return the path
     * @throws IllegalArgumentException if a length is not above zero or L exceeds R
     */
    public static InfusionPath rim(double feedRadius, double flowLength) {
        return new InfusionPath(FeedKind.RIM, flowLength, OptionalDouble.of(feedRadius), 0);
    }

    /**
     * Radius of the vent of a centre or rim feed.
     *
     * @return r₀ + L or R − L (m), never below zero; empty for a line
     */
    public OptionalDouble ventRadius() {
        if (feedRadius.isEmpty()) {
            return OptionalDouble.empty();
        }
        double radius = feedRadius.getAsDouble();
        return OptionalDouble.of(feed == FeedKind.CENTRE ? radius + flowLength : Math.max(0, radius - flowLength));
    }
}
