package laminate.process.flow;

import java.util.OptionalDouble;

/** Darcy's law. */
public final class Darcy {
    private Darcy() {}

    /**
     * Rising viscosity, t = −τ ln(1 − t0/τ).
     *
     * @param t0 time at constant viscosity (s)
     * @param tau τ (s)
     * @return time (s), empty if never
     */
    public static OptionalDouble risingViscosityTime(double t0, double tau) {
        throw new UnsupportedOperationException();
    }
}
