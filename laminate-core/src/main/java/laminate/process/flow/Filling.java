package laminate.process.flow;

import java.util.List;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * A filling: where the front of the resin stands at which time.
 *
 * <p>A viscosity that rises alike everywhere slows all flow by the same factor, so a filling is solved at the viscosity
 * of the start and its time transformed by {@link RisingViscosity#time}. Solved to 1e-8 or better; the permeability decides
 * how true it is ({@linkplain laminate.process.flow package}).
 */
public final class Filling {
    /** What rounding may add to a position given as the length. */
    private static final double ROUNDING = 1e-9;

    private final double length;
    private final Advance advance;
    private final RisingViscosity viscosity;

    private Filling(double length, Advance advance, RisingViscosity viscosity) {
        this.length = length;
        this.advance = advance;
        this.viscosity = viscosity;
    }

    /**
     * Filling of beds that do not give way.
     *
     * @param path feed to vent
     * @param drive what drives the resin
     * @param viscosity of the resin, from when it enters the feed
     * @return the filling
     */
    public static Filling of(FlowPath path, Drive drive, RisingViscosity viscosity) {
        return new Filling(
                Math.min(path.length(), FrontShape.of(path.feed()).middleBehind()),
                new RigidAdvance(path, drive, viscosity.initial()),
                viscosity);
    }

    /**
     * Filling of a level bed that gives way, from a feed line.
     *
     * @param bed the bed
     * @param length feed to vent (m)
     * @param drivingPressure ΔP (Pa)
     * @param viscosity of the resin, from when it enters the feed
     * @return the filling
     * @throws IllegalArgumentException if length or pressure is not positive
     */
    public static Filling softBag(SoftBag bed, double length, double drivingPressure, RisingViscosity viscosity) {
        return new Filling(
                Require.positive("flow length", length),
                SimilarAdvance.of(bed, drivingPressure, viscosity.initial()),
                viscosity);
    }

    /**
     * Feed to vent.
     *
     * @return length (m)
     */
    public double length() {
        return length;
    }

    /**
     * When the front reaches the vent.
     *
     * @return time (s); empty if it never does
     */
    public OptionalDouble fillTime() {
        return timeAt(length);
    }

    /**
     * When the front reaches a position.
     *
     * @param position from the feed (m)
     * @return time (s); empty if it never does
     * @throws IllegalArgumentException if the position is not between feed and vent
     */
    public OptionalDouble timeAt(double position) {
        double time = advance.time(onTheWay(position));
        return Double.isInfinite(time) ? OptionalDouble.empty() : viscosity.time(time);
    }

    /**
     * Where the front stands at a time.
     *
     * @param time since the resin entered the feed (s)
     * @return position (m); that of the vent once it is full
     * @throws IllegalArgumentException if the time is negative
     */
    public double positionAt(double time) {
        return Math.min(length, reach(time));
    }

    /**
     * Where the front stands at some times.
     *
     * @param times since the resin entered the feed (s)
     * @return a point for each
     * @throws IllegalArgumentException if a time is negative
     */
    public List<FrontPoint> front(List<Double> times) {
        return times.stream().map(t -> new FrontPoint(t, positionAt(t))).toList();
    }

    /**
     * How far the resin would get in a time if the last bed and the slope went on.
     *
     * @param time since the resin entered the feed (s)
     * @return length (m), for a rim its radius at most
     * @throws IllegalArgumentException if the time is negative
     */
    public double reach(double time) {
        return advance.position(viscosity.timeAtInitial(time));
    }

    /**
     * How far the resin would ever get if the last bed and the slope went on.
     *
     * @return length (m); empty if there is no end
     */
    public OptionalDouble greatestLength() {
        if (viscosity.timeConstant().isPresent()) {
            return OptionalDouble.of(advance.position(viscosity.timeConstant().getAsDouble()));
        }
        return Double.isInfinite(advance.end()) ? OptionalDouble.empty() : OptionalDouble.of(advance.end());
    }

    /**
     * What the hoses take of the driving pressure while the front stands at a position; it falls as the front goes on.
     *
     * @param position from the feed (m)
     * @return pressure loss (Pa), 0 without hoses
     * @throws IllegalArgumentException if the position is not between feed and vent
     */
    public double hoseLoss(double position) {
        return advance.hoseLoss(onTheWay(position));
    }

    private double onTheWay(double position) {
        if (!(position >= 0 && position <= length * (1 + ROUNDING))) {
            throw new IllegalArgumentException(
                    "a position lies from 0 at the feed to " + length + " m at the vent, was " + position);
        }
        return Math.min(position, length);
    }
}
