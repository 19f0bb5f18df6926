package laminate.plan;

import java.util.Arrays;

/** Which share of its resin a stage has drawn at which time: straight lines between knots. */
final class Draw {

    /** Resin that is spread and not drawn. */
    static final Draw NONE = even(0);

    private final double[] shares;
    private final double[] times;

    /**
     * A draw.
     *
     * @param shares rising from 0 to 1 (1)
     * @param times after the first feed was opened (s), never falling
     */
    Draw(double[] shares, double[] times) {
        this.shares = shares;
        this.times = times;
    }

    /** As fast at the end as at the start. */
    static Draw even(double time) {
        return new Draw(new double[] {0, 1}, new double[] {0, time});
    }

    /** All of it (s). */
    double time() {
        return times[times.length - 1];
    }

    /** The time in which the resin between two shares is drawn (s). */
    double between(double from, double to) {
        return at(to) - at(from);
    }

    private double at(double share) {
        int place = Arrays.binarySearch(shares, share);
        if (place >= 0) {
            return times[place];
        }
        int next = Math.min(-place - 1, shares.length - 1);
        double along = (share - shares[next - 1]) / (shares[next] - shares[next - 1]);
        return times[next - 1] + Math.min(1, along) * (times[next] - times[next - 1]);
    }
}
