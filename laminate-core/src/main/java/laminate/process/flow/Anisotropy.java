package laminate.process.flow;

import laminate.theory.Require;

/**
 * A bed that lets resin through better one way than square to it, fed from its centre: the front is an ellipse. In
 * lengths stretched until both ways are alike it is a circle, and {@link Darcy#centreTime} holds.
 *
 * <p>K. L. Adams, W. B. Russel, L. Rebenfeld 1988 (from memory), derived by stretching the coordinates. The feed is taken
 * as round in the stretched plane, so that it holds where the front is far from the feed.
 *
 * @param along K1, permeability along the axis that a front is measured on (m²)
 * @param across K2, permeability square to it in the plane (m²)
 */
public record Anisotropy(double along, double across) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is not positive
     */
    public Anisotropy {
        Flow.permeability(along);
        Flow.permeability(across);
    }

    /**
     * Permeability of the bed that is alike every way and fills as fast, Ke = √(K1 K2).
     *
     * @return Ke (m²)
     */
    public double effective() {
        return Math.sqrt(along) * Math.sqrt(across);
    }

    /**
     * Radius in the stretched plane, R = a (K2/K1)^¼.
     *
     * @param a half axis of the front along K1 (m)
     * @return R (m)
     * @throws IllegalArgumentException if it is not positive
     */
    public double equivalentRadius(double a) {
        return Require.positive("half axis", a) * Math.sqrt(Math.sqrt(across / along));
    }

    /**
     * The reverse of {@link #equivalentRadius}, a = R (K1/K2)^¼.
     *
     * @param R radius in the stretched plane (m)
     * @return half axis of the front along K1 (m)
     * @throws IllegalArgumentException if it is not positive
     */
    public double axisAlong(double R) {
        return Require.positive("radius", R) * Math.sqrt(Math.sqrt(along / across));
    }

    /**
     * The other half axis of the front, b = a √(K2/K1).
     *
     * @param a half axis of the front along K1 (m)
     * @return b, square to it (m)
     * @throws IllegalArgumentException if it is not positive
     */
    public double axisAcross(double a) {
        return Require.positive("half axis", a) * Math.sqrt(across / along);
    }
}
