package laminate.theory.beam;

import laminate.theory.Require;

/**
 * How a beam of one span is held.
 *
 * <p>Each solves for moment M0 and shear force V0 at the start and the bending slope θ0 there; with Iₙ the load
 * integrated n + 1 times up to the span L and f = EI/S.
 */
public enum Supports {
    /** Free to turn at both ends, held in z: M(0) = M(L) = 0, w(L) = 0. */
    SIMPLY_SUPPORTED {
        @Override
        Start start(BeamSection section, double L, BeamLoad load) {
            double V0 = load.integral(1, L) / L;
            double slope = (V0 * L * L * L / 6 - load.integral(3, L)) / (section.bendingStiffness() * L);
            return new Start(0, V0, slope);
        }
    },

    /** Clamped at x = 0, free at x = L: V and M are zero beyond the end. */
    CANTILEVER {
        @Override
        Start start(BeamSection section, double L, BeamLoad load) {
            double V0 = load.integral(0, L);
            return new Start(load.integral(1, L) - V0 * L, V0, 0);
        }
    },

    /**
     * Clamped at both ends, with f (V0 L − I1) the shear part of w(L) = 0:
     *
     * <pre>
     *   V0 = (I2 L/2 − I3 + f I1) / (L³/12 + f L),   M0 = I2/L − V0 L/2
     * </pre>
     */
    CLAMPED {
        @Override
        Start start(BeamSection section, double L, BeamLoad load) {
            double f = section.bendingStiffness() * section.shearCompliance();
            double I2 = load.integral(2, L);
            double V0 = (I2 * L / 2 - load.integral(3, L) + f * load.integral(1, L)) / (L * L * L / 12 + f * L);
            return new Start(I2 / L - V0 * L / 2, V0, 0);
        }
    };

    /** Moment (N·m), shear force (N) and bending slope at x = 0, before any point load there. */
    record Start(double moment, double shearForce, double slope) {
        Start {
            Require.finite("moment at the start", moment);
            Require.finite("shear force at the start", shearForce);
            Require.finite("slope at the start", slope);
        }
    }

    abstract Start start(BeamSection section, double L, BeamLoad load);
}
