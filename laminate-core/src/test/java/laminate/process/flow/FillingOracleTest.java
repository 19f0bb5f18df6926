package laminate.process.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Fillings against Darcy's law integrated step by step by a general solver of differential equations. */
class FillingOracleTest {
    private static final int CASES = 60;
    private static final double FINE = 1e-8;

    /** A right-hand side. */
    private interface Slope {
        double[] at(double x, double[] y);
    }

    private static double[] integrate(double from, double to, double[] start, Slope slope) {
        ODEIntegrator solver = new DormandPrince853Integrator(1e-14, 1, 1e-12, 1e-12);
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return start.length;
            }

            @Override
            public double[] computeDerivatives(double x, double[] y) {
                return slope.at(x, y);
            }
        };
        return solver.integrate(equation, new ODEState(from, start), to).getPrimaryState();
    }

    /** Any feed, one to three beds, up, down or level, with hoses or without, viscosity rising or not. */
    record Case(FlowPath path, Drive drive, RisingViscosity viscosity) {
        Filling filling() {
            return Filling.of(path, drive, viscosity);
        }

        /** Radius of the disc at a position, 1/2π for a line so that its width is 1. */
        double radius(double s) {
            if (path.feed() instanceof Feed.Centre centre) {
                return centre.radius() + s;
            }
            return path.feed() instanceof Feed.Rim rim ? rim.radius() - s : 1 / (2 * Math.PI);
        }

        /**
         * Time and resistance at the end, integrated along the way in units of the time that a level line would take:
         * dt/ds = μ(t) φ b R/(ΔP − ρ g z), dR/ds = 1/(K b).
         */
        double fillTime() {
            double[] state = {
                0, path.supply().map(FillingOracleTest::resistance).orElse(0.0)
            };
            double s = 0;
            for (FlowSegment segment : path.segments()) {
                state = integrate(s, s + segment.length(), state, (x, y) -> slopes(segment, x, y));
                s += segment.length();
            }
            return state[0] * UNIT;
        }

        private double[] slopes(FlowSegment segment, double s, double[] y) {
            double width = 2 * Math.PI * radius(s);
            double height = path.rise() * s / path.length();
            double mu = viscosity.initial()
                    * Math.exp(y[0] * UNIT / viscosity.timeConstant().orElse(Double.POSITIVE_INFINITY));
            double left = drive.pressure() - drive.density() * 9.80665 * height;
            return new double[] {
                mu * segment.porosity() * width * y[1] * SCALE / left / UNIT,
                1 / (segment.permeability() * width) / SCALE
            };
        }
    }

    /** Unit of time (s) and of resistance, to bring both near one. */
    private static final double UNIT = 1000;

    private static final double SCALE = 1e10;

    private static double resistance(Supply supply) {
        double sum = 0;
        for (Hose hose : supply.hoses()) {
            sum += 128 * hose.length() / (Math.PI * Math.pow(hose.bore(), 4));
        }
        return sum * supply.section() / SCALE;
    }

    static Stream<Case> randomCases() {
        Random random = new Random(20260412);
        return IntStream.range(0, CASES).mapToObj(i -> randomCase(random, i));
    }

    private static Case randomCase(Random random, int i) {
        List<FlowSegment> segments = new ArrayList<>();
        for (int n = 1 + random.nextInt(3); n > 0; n--) {
            segments.add(new FlowSegment(
                    0.1 + 0.4 * random.nextDouble(),
                    1e-10 * Math.pow(10, random.nextDouble()),
                    0.4 + 0.5 * random.nextDouble()));
        }
        double length = segments.stream().mapToDouble(FlowSegment::length).sum();
        Feed feed = List.of(Feed.LINE, new Feed.Centre(0.01), new Feed.Rim(length * (1 + 0.1 * random.nextDouble())))
                .get(i % 3);
        double rise = i % 2 == 0 ? 0 : length * (2 * random.nextDouble() - 1);
        Optional<Supply> supply = random.nextBoolean()
                ? Optional.empty()
                : Optional.of(new Supply(List.of(new Hose(0.008, 3), new Hose(0.01, 1)), 0.004));
        FlowPath path = new FlowPath(feed, segments, rise, supply);
        Drive drive = new Drive(50e3 + 50e3 * random.nextDouble(), 1100);
        RisingViscosity constant = RisingViscosity.constant(0.1 + 0.2 * random.nextDouble());
        double t0 = Filling.of(path, drive, constant).fillTime().orElseThrow();
        RisingViscosity rising = RisingViscosity.rising(constant.initial(), t0 * (1.1 + random.nextDouble()));
        return new Case(path, drive, random.nextInt(3) == 0 ? constant : rising);
    }

    @ParameterizedTest
    @MethodSource("randomCases")
    void aRigidBedFillsAsTheSolverSays(Case given) {
        assertThat(given.filling().fillTime().orElseThrow() / given.fillTime()).isCloseTo(1, within(FINE));
    }

    @ParameterizedTest
    @MethodSource("randomCases")
    void positionAndTimeAreTheReverseOfEachOther(Case given) {
        Filling filling = given.filling();
        for (double share : new double[] {0, 1e-3, 0.2, 0.5, 0.9, 0.99}) {
            double position = share * filling.length();
            double time = filling.timeAt(position).orElseThrow();
            assertThat(filling.positionAt(time)).isCloseTo(position, within(1e-9 * filling.length()));
        }
    }

    /**
     * The soft bag in its first form: from the front (a = 1, p = 0, flux Λ) back to the feed, p must come to ΔP. The mesh
     * is there in half of the cases.
     */
    @ParameterizedTest
    @CsvSource({
        "0.50, 0.07, 2000, 95e3, 0",
        "0.28, 0.20, 2000, 95e3, 0",
        "0.55, 0.05, 500, 60e3, 1e-3",
        "0.20, 0.25, 10000, 98e3, 2e-3",
        "0.45, 0.15, 100, 90e3, 5e-4",
        "0.50, 0.90, 5000, 90e3, 0",
        "0.60, 0.00, 2000, 95e3, 1e-3"
    })
    void aSoftBagFillsAsTheSolverSays(double V1, double b, double s0, double dP, double meshThickness) {
        double h = 0.004;
        double K1 = 2e-10;
        Optional<FlowMesh> mesh =
                meshThickness == 0 ? Optional.empty() : Optional.of(new FlowMesh(meshThickness, 3e-9, 0.85));
        SoftBag bed = new SoftBag(V1, b, s0, K1, h, mesh);
        double ofMesh = 3e-9 * meshThickness;
        double resin = h * (1 - V1) + 0.85 * meshThickness;
        double speedUp = 1 / bed.shareOfRigidTime(dP);
        double[] atFeed = integrate(1, 0, new double[] {0, speedUp}, (a, y) -> {
            double load = Math.max(1 - y[0] + s0 / dP, s0 / dP / 2);
            double V = V1 * Math.pow(load / (1 + s0 / dP), b);
            double conductance = (h * V1 / V * K1 * Math.pow((1 - V) / (1 - V1), 3) * Math.pow(V1 / V, 2) + ofMesh)
                    / (h * K1 + ofMesh);
            double swelling = b * h * V1 / V / load / resin;
            double slope = -y[1] / conductance;
            return new double[] {slope, speedUp * a * swelling * slope};
        });
        assertThat(atFeed[0]).isCloseTo(1, within(FINE));
    }

    /**
     * The wave behind the front of a mesh in its first form: depth η, distance y and pressure p of dy/dη = φ2 u μ η/(Kz
     * p), dp/dη = μ u φ2 (η + B)/(K1 h1) dy/dη, started where η is small and p goes as η √B.
     */
    @ParameterizedTest
    @CsvSource({"0.001, 3e-9, 0.004, 1e-12", "0.001, 5e-9, 0.008, 5e-13", "0.0005, 1e-8, 0.003, 1e-11"})
    void theLagIsThatOfTheWave(double h1, double K1, double h2, double Kz) {
        double B = 0.85 * h1 / 0.5;
        double A = Kz / (K1 * h1);
        double first = 1e-6 * h2;
        // Lengths in h2, pressure in μ u φ2 h2^1.5/√(K1 h1 Kz).
        double[] start = {first / Math.sqrt(A * B) / h2, first / h2 * Math.sqrt(B / h2)};
        double[] wet = integrate(first / h2, 1, start, (depth, y) -> {
            double back = depth / (y[1] * Math.sqrt(A * h2));
            return new double[] {back, (depth + B / h2) * back * Math.sqrt(A * h2)};
        });
        MeshedLaminate stack = new MeshedLaminate(new FlowMesh(h1, K1, 0.85), h2, 1e-10, Kz, 0.5);
        assertThat(wet[0] * h2 / stack.lag()).isCloseTo(1, within(1e-5));
        // Beyond the lag the front goes at u = ΔP/(C + …), and C u is the pressure at which the laminate is wet
        // through.
        double C = wet[1] * 0.2 * 0.5 * Math.pow(h2, 1.5) / Math.sqrt(K1 * h1 * Kz);
        double d = stack.lag();
        double step = 1e-6 * d;
        double slowness = (stack.meshFrontTime(d + step, 0.2, 95e3) - stack.meshFrontTime(d, 0.2, 95e3)) / step;
        assertThat(slowness * 95e3 / C).isCloseTo(1, within(1e-4));
    }
}
