package laminate.process.flow;

/**
 * The similarity solution of {@link SoftBag}, by shooting.
 *
 * <p>With a = x/L, pressure, thickness H of resin and conductance T against ΔP and their values at the front, and Λ the
 * speed-up against the rigid bed: −Λ a H' = (T p')', p(1) = 0, p'(1) = −Λ, p(0) = 1. With the flux −T p' = Λ g and y =
 * ln(σ/(ΔP + s0)) in the place of a, everything is smooth down to the feed, yEnd = ln(s0/(ΔP + s0)):
 *
 * <pre>
 *   da/dy = T(y) e^y (1 + s0/ΔP)/(Λ g),   a = 1 at y = 0
 *   dg/dy = a dH/dy,                      g = 1 at y = 0
 * </pre>
 *
 * <p>and Λ is right when a = 0 at the end. Both right sides only grow with a, g and Λ, so there is one such Λ; past a = 0
 * nothing is added to g, which keeps it so.
 */
final class Similarity {
    /** Runge–Kutta of the fourth order: with this share of an e-fold of pressure a step, the answer is good to 1e-8. */
    private static final double STEP = 0.05;

    private static final int LEAST_STEPS = 64;
    private static final double PRECISION = 1e-13;
    private static final int MOST_TRIALS = 200;

    private final SoftBag bed;
    /** yEnd. */
    private final double end;
    /** 1 + s0/ΔP. */
    private final double scale;
    /** Conductance of the mesh and of the laminate at the front, their sum being 1. */
    private final double meshConductance;

    private final double bedConductance;
    /** Thickness of the laminate against that of the resin, both at the front. */
    private final double thicknessPerResin;

    private Similarity(SoftBag bed, double drivingPressure) {
        this.bed = bed;
        double ratio = bed.leastPressure() / drivingPressure;
        this.scale = 1 + ratio;
        this.end = -Math.log1p(drivingPressure / bed.leastPressure());
        double ofMesh = bed.mesh().map(m -> m.permeability() * m.thickness()).orElse(0.0);
        double ofBed = bed.permeability() * bed.thickness();
        this.meshConductance = ofMesh / (ofMesh + ofBed);
        this.bedConductance = ofBed / (ofMesh + ofBed);
        double resin = (1 - bed.fibreVolumeFraction()) * bed.thickness()
                + bed.mesh().map(m -> m.porosity() * m.thickness()).orElse(0.0);
        this.thicknessPerResin = bed.thickness() / resin;
    }

    static Similarity of(SoftBag bed, double drivingPressure) {
        return new Similarity(bed, drivingPressure);
    }

    /** Λ: how much faster than the rigid bed. */
    double speedUp() {
        double low = 1;
        double high = 1;
        while (positionOfFeed(low) > 0) {
            low /= 2;
        }
        while (positionOfFeed(high) < 0) {
            high *= 2;
        }
        return between(low, high);
    }

    /** False position, Illinois variant. */
    private double between(double from, double to) {
        double low = from;
        double high = to;
        double below = positionOfFeed(low);
        double above = positionOfFeed(high);
        for (int i = 0; i < MOST_TRIALS && high - low > PRECISION * high && above > below; i++) {
            double trial = (low * above - high * below) / (above - below);
            double a = positionOfFeed(trial);
            if (Math.abs(a) < PRECISION) {
                return trial;
            }
            if (a < 0) {
                low = trial;
                below = a;
                above /= 2;
            } else {
                high = trial;
                above = a;
                below /= 2;
            }
        }
        return high;
    }

    /** Where a trial of Λ puts the feed; should be 0. */
    private double positionOfFeed(double speedUp) {
        int steps = Math.max(LEAST_STEPS, (int) Math.ceil(-end / STEP));
        double h = end / steps;
        double a = 1;
        double g = 1;
        for (int i = 0; i < steps; i++) {
            double y = i * h;
            double a1 = slopeOfPosition(y, g, speedUp);
            double g1 = slopeOfFlux(y, a);
            double a2 = slopeOfPosition(y + h / 2, g + g1 * h / 2, speedUp);
            double g2 = slopeOfFlux(y + h / 2, a + a1 * h / 2);
            double a3 = slopeOfPosition(y + h / 2, g + g2 * h / 2, speedUp);
            double g3 = slopeOfFlux(y + h / 2, a + a2 * h / 2);
            double a4 = slopeOfPosition(y + h, g + g3 * h, speedUp);
            double g4 = slopeOfFlux(y + h, a + a3 * h);
            a += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
            g += h / 6 * (g1 + 2 * g2 + 2 * g3 + g4);
        }
        return a;
    }

    private double slopeOfPosition(double y, double g, double speedUp) {
        return conductance(y) * Math.exp(y) * scale / (speedUp * g);
    }

    private double slopeOfFlux(double y, double a) {
        return Math.max(0, a) * -bed.exponent() * thicknessPerResin * Math.exp(-bed.exponent() * y);
    }

    /** T: of the laminate, whose thickness goes as V1/V, and of the mesh. */
    private double conductance(double y) {
        double V1 = bed.fibreVolumeFraction();
        double swell = Math.exp(-bed.exponent() * y);
        double room = (1 - V1 / swell) / (1 - V1);
        return meshConductance + bedConductance * swell * room * room * room * swell * swell;
    }
}
