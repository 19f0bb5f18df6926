package laminate.process.flow;

import java.util.List;
import java.util.OptionalDouble;

/** A filling: where the front of the resin stands at which time. */
public final class Filling {
    private Filling() {}

    /**
     * Filling of a rigid bed.
     *
     * @param path feed to vent
     * @param drive what drives the resin
     * @param viscosity of the resin
     * @return the filling
     */
    public static Filling of(FlowPath path, Drive drive, RisingViscosity viscosity) {
        throw new UnsupportedOperationException();
    }

    /**
     * Filling of a level bed that gives way, from a feed line.
     *
     * @param bed the bed
     * @param length feed to vent (m)
     * @param drivingPressure ΔP (Pa)
     * @param viscosity of the resin
     * @return the filling
     * @throws IllegalArgumentException if length or pressure is not positive
     */
    public static Filling softBag(SoftBag bed, double length, double drivingPressure, RisingViscosity viscosity) {
        throw new UnsupportedOperationException();
    }

    /**
     * Feed to vent.
     *
     * @return length (m)
     */
    public double length() {
        throw new UnsupportedOperationException();
    }

    /**
     * When the front reaches the vent.
     *
     * @return time (s); empty if it never does
     */
    public OptionalDouble fillTime() {
        throw new UnsupportedOperationException();
    }

    /**
     * When the front reaches a position.
     *
     * @param position from the feed (m)
     * @return time (s); empty if it never does
     * @throws IllegalArgumentException if the position is not between feed and vent
     */
    public OptionalDouble timeAt(double position) {
        throw new UnsupportedOperationException();
    }

    /**
     * Where the front stands at a time.
     *
     * @param time since the resin entered (s)
     * @return position (m); that of the vent once it is full
     * @throws IllegalArgumentException if the time is negative
     */
    public double positionAt(double time) {
        throw new UnsupportedOperationException();
    }

    /**
     * Where the front stands at some times.
     *
     * @param times since the resin entered (s)
     * @return a point for each
     * @throws IllegalArgumentException if a time is negative
     */
    public List<FrontPoint> front(List<Double> times) {
        throw new UnsupportedOperationException();
    }

    /**
     * How far the resin would get in a time if the last bed and the slope went on.
     *
     * @param time since the resin entered (s)
     * @return length (m), for a rim its radius at most
     * @throws IllegalArgumentException if the time is negative
     */
    public double reach(double time) {
        throw new UnsupportedOperationException();
    }

    /**
     * How far the resin would ever get if the last bed and the slope went on.
     *
     * @return length (m); empty if there is no end
     */
    public OptionalDouble greatestLength() {
        throw new UnsupportedOperationException();
    }

    /**
     * What the hoses take of the driving pressure while the front stands at a position; it falls as the front goes on.
     *
     * @param position from the feed (m)
     * @return pressure loss (Pa), 0 without hoses
     * @throws IllegalArgumentException if the position is not between feed and vent
     */
    public double hoseLoss(double position) {
        throw new UnsupportedOperationException();
    }
}
