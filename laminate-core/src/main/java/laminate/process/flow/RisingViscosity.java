package laminate.process.flow;

import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * Viscosity of a resin in the pot and on its way, μ = μ0 exp(t/τ) from the time it is mixed and drawn, or constant.
 *
 * <p>A simplification that suits epoxies; styrenic resins stay near flat until close to gel (from memory).
 *
 * @param initial μ0 (Pa·s)
 * @param timeConstant τ, in which it grows 2.718 times (s); empty if it stays as it is
 */
public record RisingViscosity(double initial, OptionalDouble timeConstant) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public RisingViscosity {
        Flow.viscosity(initial);
        timeConstant.ifPresent(tau -> Require.positive("time constant of the viscosity", tau));
    }

    /**
     * A viscosity that stays as it is.
     *
     * @param mu μ (Pa·s)
     * @return the viscosity
     * @throws IllegalArgumentException if it is not positive
     */
    public static RisingViscosity constant(double mu) {
        return new RisingViscosity(mu, OptionalDouble.empty());
    }

    /**
     * A viscosity that rises.
     *
     * @param mu0 μ0 at the start (Pa·s)
     * @param tau τ (s)
     * @return the viscosity
     * @throws IllegalArgumentException if one is not positive
     */
    public static RisingViscosity rising(double mu0, double tau) {
        return new RisingViscosity(mu0, OptionalDouble.of(tau));
    }

    /**
     * Viscosity at a time.
     *
     * @param time t since the start (s)
     * @return μ (Pa·s)
     * @throws IllegalArgumentException if the time is negative, or so late that no number holds the viscosity
     */
    public double at(double time) {
        Require.notNegative("time", time);
        return timeConstant.isEmpty()
                ? initial
                : Require.finite("viscosity", initial * Math.exp(time / timeConstant.getAsDouble()));
    }

    /**
     * The time that a flow takes which would take t0 at the viscosity of the start; {@link Darcy#risingViscosityTime}.
     *
     * @param t0 time at constant viscosity (s)
     * @return time (s); empty if the resin sets before
     * @throws IllegalArgumentException if t0 is negative
     */
    public OptionalDouble time(double t0) {
        return timeConstant.isEmpty()
                ? OptionalDouble.of(Require.notNegative("time", t0))
                : Darcy.risingViscosityTime(t0, timeConstant.getAsDouble());
    }

    /**
     * The reverse of {@link #time}: how far a time gets, as the time it would take at the viscosity of the start, t0 =
     * τ (1 − exp(−t/τ)).
     *
     * @param time t (s)
     * @return t0 (s)
     * @throws IllegalArgumentException if the time is negative
     */
    public double timeAtInitial(double time) {
        Require.notNegative("time", time);
        return timeConstant.isEmpty()
                ? time
                : -timeConstant.getAsDouble() * Math.expm1(-time / timeConstant.getAsDouble());
    }
}
