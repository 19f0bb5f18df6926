package laminate.process.flow;

import java.util.List;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * Darcy's law for the feeds of the workshop: flow rate per area q = (K/μ) ΔP/L through the wetted length, which the
 * front follows at q/φ. Each formula is the integral of that for one even bed, one constant pressure and, unless told
 * otherwise, one constant viscosity; derived, and checked against step-by-step integration. Range: the assumptions of the
 * {@linkplain laminate.process.flow package}.
 */
public final class Darcy {
    /** Below this share, of pressure or of radius, the formulas with a logarithm lose digits; a series is summed instead. */
    private static final double SMALL_SHARE = 0.1;

    private Darcy() {}

    /**
     * Line feed, t = φ μ L²/(2 K ΔP).
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param L length from feed to front (m)
     * @param K permeability along the flow (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return t (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double lineTime(double phi, double mu, double L, double K, double dP) {
        Require.notNegative("length", L);
        return Require.finite("time", L * L / (2 * speed(phi, mu, K, dP)));
    }

    /**
     * Line feed, how far in a time: L = √(2 K ΔP t/(φ μ)).
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param t time (s)
     * @param K permeability along the flow (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return L (m)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double lineLength(double phi, double mu, double t, double K, double dP) {
        Require.notNegative("time", t);
        return Require.finite("length", Math.sqrt(2 * t * speed(phi, mu, K, dP)));
    }

    /** K ΔP/(φ μ), half of the square of the length per time (m²/s). */
    private static double speed(double phi, double mu, double K, double dP) {
        return Require.positive(
                "K ΔP/(φ μ)",
                Flow.permeability(K) * Flow.drivingPressure(dP) / (Flow.porosity(phi) * Flow.viscosity(mu)));
    }

    /**
     * Permeability from a strip of the laminate filled as a trial, K = φ μ L²/(2 ΔP t): the best way to get one.
     *
     * @param phi porosity φ of the strip
     * @param mu viscosity μ of what filled it (Pa·s)
     * @param L length it ran (m)
     * @param dP driving pressure ΔP (Pa)
     * @param t time it took (s)
     * @return K (m²), of the strip as it was laid: with mesh, that of both
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double stripPermeability(double phi, double mu, double L, double dP, double t) {
        Require.positive("length", L);
        Require.positive("time", t);
        return Require.positive(
                "permeability", Flow.porosity(phi) * Flow.viscosity(mu) * L * L / (2 * Flow.drivingPressure(dP) * t));
    }

    /**
     * Through the thickness, from mesh over all of one face, t = φ μ h²/(2 Kz ΔP).
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param h thickness (m)
     * @param Kz permeability through the thickness (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return t (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double throughThicknessTime(double phi, double mu, double h, double Kz, double dP) {
        return lineTime(phi, mu, h, Kz, dP);
    }

    /**
     * Beds one after the other from a line feed, t = (μ/ΔP) Σ φi (Ri Li + Li²/(2 Ki)), where Ri = Σ Lj/Kj of the beds
     * passed before.
     *
     * @param segments the beds, from the feed on
     * @param mu viscosity μ (Pa·s)
     * @param dP driving pressure ΔP (Pa)
     * @return t until the last is full (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double seriesTime(List<FlowSegment> segments, double mu, double dP) {
        double passed = 0;
        double sum = 0;
        for (FlowSegment s : segments) {
            double own = s.length() / s.permeability();
            sum += s.porosity() * s.length() * (passed + own / 2);
            passed += own;
        }
        return Require.finite("time", Flow.viscosity(mu) / Flow.drivingPressure(dP) * sum);
    }

    /**
     * Line feed up a slope, t = (φ μ/K) [−L/γ − (ΔP/γ²) ln(1 − γ L/ΔP)]. Downwards γ is negative.
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param L length from feed to front along the slope (m)
     * @param K permeability along the flow (m²)
     * @param dP driving pressure ΔP at the height of the feed (Pa)
     * @param gamma γ = ρ g (rise/length), pressure lost per metre of way (Pa/m); ρ g straight up
     * @return t (s); empty if γ L is as much as ΔP or more, where the resin never gets
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static OptionalDouble riseTime(double phi, double mu, double L, double K, double dP, double gamma) {
        double level = lineTime(phi, mu, L, K, dP);
        double share = Require.finite("loss per metre", gamma) * L / dP;
        return share < 1
                ? OptionalDouble.of(Require.finite("time", level * slopeFactor(share)))
                : OptionalDouble.empty();
    }

    /** 2 (−u − ln(1 − u))/u², which is 1 + 2u/3 + 2u²/4 + 2u³/5 + …: how much longer than on the level. */
    private static double slopeFactor(double u) {
        if (Math.abs(u) > SMALL_SHARE) {
            return 2 * (-u - Math.log1p(-u)) / (u * u);
        }
        double sum = 0;
        double power = 1;
        for (int n = 2; Math.abs(power) > 1e-18; n++) {
            sum += 2 * power / n;
            power *= u;
        }
        return sum;
    }

    /**
     * Viscosity that rises as μ0 exp(t/τ), whatever the feed: t = −τ ln(1 − t0/τ).
     *
     * @param t0 time that the filling would take at μ0 (s)
     * @param tau τ (s)
     * @return t (s); empty if t0 is τ or more: it never fills
     * @throws IllegalArgumentException if t0 is negative or τ not positive
     */
    public static OptionalDouble risingViscosityTime(double t0, double tau) {
        Require.notNegative("time", t0);
        Require.positive("time constant of the viscosity", tau);
        return t0 < tau ? OptionalDouble.of(-tau * Math.log1p(-t0 / tau)) : OptionalDouble.empty();
    }

    /**
     * The length that a resin of rising viscosity never passes from a line feed, L = √(2 K ΔP τ/(φ μ0)).
     *
     * @param phi porosity φ
     * @param mu0 viscosity μ0 at the start (Pa·s)
     * @param tau τ of μ0 exp(t/τ) (s)
     * @param K permeability along the flow (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return L (m)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double greatestLineLength(double phi, double mu0, double tau, double K, double dP) {
        return lineLength(phi, mu0, Require.positive("time constant of the viscosity", tau), K, dP);
    }

    /**
     * Centre feed, t = φ μ/(2 K ΔP) [R² ln(R/r0) − (R² − r0²)/2]. Radial permeability measurements use it the other way
     * round (Adams and others 1988, from memory).
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param R radius of the front (m), r0 or more
     * @param r0 radius of the feed (m)
     * @param K permeability, the same every way (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return t (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double centreTime(double phi, double mu, double R, double r0, double K, double dP) {
        Require.positive("radius of the feed", r0);
        if (!(R >= r0)) {
            throw new IllegalArgumentException("the front lies outside the feed of radius " + r0 + " m, was " + R);
        }
        return Require.finite("time", r0 * r0 * discFactor((R - r0) / r0) / (2 * speed(phi, mu, K, dP)));
    }

    /**
     * Rim feed of a disc, t = φ μ/(2 K ΔP) [(R² − r²)/2 − r² ln(R/r)]; φ μ R²/(4 K ΔP) where the front closes at the
     * very middle.
     *
     * @param phi porosity φ
     * @param mu viscosity μ (Pa·s)
     * @param R radius of the rim (m)
     * @param r radius of the front (m), from 0 to R
     * @param K permeability, the same every way (m²)
     * @param dP driving pressure ΔP (Pa)
     * @return t (s)
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public static double rimTime(double phi, double mu, double R, double r, double K, double dP) {
        Require.positive("radius of the rim", R);
        Require.within("radius of the front", r, R);
        return Require.finite("time", R * R * discFactor((r - R) / R) / (2 * speed(phi, mu, K, dP)));
    }

    /**
     * q² ln q − (q² − 1)/2 with q = 1 + e the radius of the front against that of the feed, from a centre and from a rim
     * alike. Near the feed, e² + 2 (e³/(1·2·3) − e⁴/(2·3·4) + …).
     */
    private static double discFactor(double e) {
        if (Math.abs(e) > SMALL_SHARE) {
            double q = 1 + e;
            return q == 0 ? 0.5 : q * q * Math.log(q) - e * (2 + e) / 2;
        }
        double sum = 1;
        double power = e;
        for (int n = 2; Math.abs(power) > 1e-18; n++) {
            sum += 2 * power / ((n - 1.0) * n * (n + 1));
            power *= -e;
        }
        return e * e * sum;
    }
}
