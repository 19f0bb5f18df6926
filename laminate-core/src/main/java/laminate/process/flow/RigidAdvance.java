package laminate.process.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * The front in beds that do not give way. At any time the same flow Q passes hoses and wetted beds, Q = (ΔP − γ s)/(μ
 * R(s)) with R the resistance up to the front, s its position and γ the pressure that each metre of slope costs; the front
 * of width b follows at ds/dt = Q/(φ b). So t = μ ∫ φ b R/(ΔP − γ s) ds.
 */
final class RigidAdvance implements Advance {
    private static final double PRECISION = 1e-15;
    private static final int MOST_STEPS = 200;

    private final FrontShape front;
    private final double pressure;
    private final double lossPerMetre;
    private final double viscosity;
    private final double hoses;
    private final List<Stretch> stretches = new ArrayList<>();

    /** A segment with what lies before it: resistance, hoses included, and time (s). */
    private record Stretch(double start, double permeability, double porosity, double resistance, double time) {}

    RigidAdvance(FlowPath path, Drive drive, double viscosity) {
        this.front = FrontShape.of(path.feed());
        this.pressure = drive.pressure();
        this.lossPerMetre = drive.density() * Drive.GRAVITY * path.rise() / path.length();
        this.viscosity = viscosity;
        this.hoses = path.supply().map(Supply::resistance).orElse(0.0);
        double start = 0;
        double resistance = hoses;
        double time = 0;
        for (FlowSegment s : path.segments()) {
            if (start >= front.middleBehind()) {
                break;
            }
            Stretch stretch = new Stretch(start, s.permeability(), s.porosity(), resistance, time);
            stretches.add(stretch);
            start = Math.min(start + s.length(), front.middleBehind());
            resistance = resistance(stretch, start);
            time = time(stretch, start);
        }
    }

    @Override
    public double time(double position) {
        return time(at(position), position);
    }

    private Stretch at(double position) {
        int i = stretches.size() - 1;
        while (i > 0 && stretches.get(i).start() >= position) {
            i--;
        }
        return stretches.get(i);
    }

    private double time(Stretch stretch, double position) {
        if (lossPerMetre * position >= pressure) {
            return Double.POSITIVE_INFINITY;
        }
        // Level, this is ±∞; on a slope down it lies before the feed.
        double used = pressure / lossPerMetre;
        double left = Math.max(front.middleBefore(), used < 0 ? used : Double.NEGATIVE_INFINITY);
        double right = Math.min(front.middleBehind(), used > 0 ? used : Double.POSITIVE_INFINITY);
        return stretch.time() + Integral.of(s -> slowness(stretch, s), stretch.start(), position, left, right);
    }

    /** dt/ds (s/m). */
    private double slowness(Stretch stretch, double s) {
        return viscosity * stretch.porosity() * front.width(s) * resistance(stretch, s) / (pressure - lossPerMetre * s);
    }

    private double resistance(Stretch stretch, double position) {
        return stretch.resistance() + front.resistance(stretch.start(), position) / stretch.permeability();
    }

    /** Newton's method on the time, halved where it leaves the bracket. */
    @Override
    public double position(double time) {
        if (time == 0) {
            return 0;
        }
        double low = 0;
        double high = bracket(time);
        if (time(high) <= time) {
            return high;
        }
        double s = high / 2;
        for (int i = 0; i < MOST_STEPS && high - low > PRECISION * high; i++) {
            double early = time(s) - time;
            if (early < 0) {
                low = s;
            } else {
                high = s;
            }
            double next = s - early / slowness(at(s), s);
            double before = s;
            s = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(s - before) <= PRECISION * s) {
                break;
            }
        }
        return s;
    }

    /** A position not reached in that time, or the end. */
    private double bracket(double time) {
        double end = end();
        double high = Math.min(end, Math.max(stretches.get(stretches.size() - 1).start(), 1));
        while (high < end && time(high) <= time) {
            high = Math.min(end, 2 * high);
        }
        return high;
    }

    @Override
    public double end() {
        double stop = lossPerMetre > 0 ? pressure / lossPerMetre : Double.POSITIVE_INFINITY;
        return Math.min(stop, front.middleBehind());
    }

    @Override
    public double hoseLoss(double position) {
        if (hoses == 0) {
            return 0;
        }
        double left = Math.max(0, pressure - lossPerMetre * position);
        return left * hoses / resistance(at(position), position);
    }
}
