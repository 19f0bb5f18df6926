package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import laminate.process.flow.Filling;
import laminate.process.flow.FlowSegment;

/**
 * What the hose has drawn by a time: lines at once, laminate and mesh with the front, the catch pot when it is full; with
 * what has to stay in the bucket.
 *
 * @param model the flow
 * @param filling its filling, which reaches the vent
 * @param lines in hose and spiral tube (kg)
 * @param bed in laminate, peel ply and mesh (kg)
 * @param left in catch pot and bucket (kg)
 */
record Drawn(FlowModel model, Filling filling, double lines, double bed, double left) implements DoubleUnaryOperator {

    /** Into how many equal shares what is drawn is told: halves, thirds, quarters, fifths and sixths are among them. */
    private static final int SHARES = 60;

    /** So often is a time halved: to a millionth of the fill time. */
    private static final int HALVINGS = 20;

    /** When it is full (s). */
    double end() {
        return filling.fillTime().orElseThrow();
    }

    /** When each of the equal shares has been drawn, the last as it is full (s). */
    List<Double> times() {
        double total = applyAsDouble(end());
        List<Double> times = new ArrayList<>();
        double time = 0;
        for (int share = 1; share < SHARES; share++) {
            time = when(total * share / SHARES, time);
            times.add(time);
        }
        times.add(end());
        return times;
    }

    /** The root of what is drawn less a mass, which never falls: by halving. */
    private double when(double mass, double from) {
        double low = from;
        double high = end();
        if (applyAsDouble(low) >= mass) {
            return low;
        }
        for (int step = 0; step < HALVINGS; step++) {
            double middle = (low + high) / 2;
            if (applyAsDouble(middle) >= mass) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    @Override
    public double applyAsDouble(double time) {
        double end = end();
        return time >= end ? lines + bed + left : lines + bed * wetted(filling.positionAt(time));
    }

    /** Share of the pores that is wet when the front stands at a position. */
    private double wetted(double position) {
        double radius = model.plan().path().feedRadius().orElse(0);
        double length = filling.length();
        return switch (model.plan().path().feed()) {
            case LINE -> pores(position) / pores(length);
            case CENTRE -> position * (2 * radius + position) / (length * (2 * radius + length));
            case RIM -> position * (2 * radius - position) / (length * (2 * radius - length));
        };
    }

    /** Along segments of different porosity; a disc is taken as of one. */
    private double pores(double position) {
        double sum = 0;
        double from = 0;
        for (FlowSegment segment : model.bed().segments(1)) {
            sum += segment.porosity() * Math.max(0, Math.min(segment.length(), position - from));
            from += segment.length();
        }
        return sum;
    }
}
