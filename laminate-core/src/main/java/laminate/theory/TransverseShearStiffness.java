package laminate.theory;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Stiffness of a laminate against shear across its thickness: [Qx; Qy] = [[xx, xy], [xy, yy]] [γxz; γyz].
 *
 * <p>On a sandwich the core gives nearly all of the shear deflection. Summing G t over the plies, as is good enough for
 * a solid laminate, counts the stiff faces as if they sheared as freely as the core and overstates the stiffness of a
 * foam sandwich by more than ten times.
 *
 * @param xx shear force Qx per γxz (N/m)
 * @param xy shear force Qx per γyz (N/m)
 * @param yy shear force Qy per γyz (N/m)
 */
public record TransverseShearStiffness(double xx, double xy, double yy) {
    /** The shear factor 5/6 of a homogeneous plate (E. Reissner, J. Appl. Mech. 12 (1945) A69, from memory). */
    public static final double HOMOGENEOUS_FACTOR = 5.0 / 6;

    /** Gauss points and weights on (−1, 1) that integrate a quintic exactly; the energy is a quartic in z. */
    private static final double[] POINTS = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    /**
     * Checks that shearing takes energy.
     *
     * @param xx shear force Qx per γxz (N/m)
     * @param xy shear force Qx per γyz (N/m)
     * @param yy shear force Qy per γyz (N/m)
     * @throws IllegalArgumentException if it does not
     */
    public TransverseShearStiffness {
        Require.positive("shear stiffness xx", xx);
        Require.positive("shear stiffness yy", yy);
        Require.finite("shear stiffness xy", xy);
        Require.positive("determinant of the shear stiffness", xx * yy - xy * xy);
    }

    /**
     * The stiffness that stores the energy of the equilibrium shear stress of {@link EquilibriumShear}.
     *
     * <pre>
     *   ½ Qᵀ S Q = ½ ∫ τᵀ g τ dz,   τ = F(z) Q,   stiffness = S⁻¹
     * </pre>
     *
     * <p>with g the shear compliance of the ply at z, turned by its angle (1/G13 along its fibre, 1/G23 across). For
     * each direction it is the shear stiffness of cylindrical bending (J. M. Whitney, J. Appl. Mech. 40 (1973) 302,
     * from memory); 5/6 G h for a homogeneous plate. Integrated exactly.
     *
     * @param laminate the laminate
     * @return the stiffness
     */
    public static TransverseShearStiffness of(Laminate laminate) {
        EquilibriumShear shear = EquilibriumShear.of(laminate);
        double[] z = laminate.interfaces();
        double[] s = new double[3];
        for (int i = 0; i < laminate.plies().size(); i++) {
            double[] g = compliance(laminate.plies().get(i));
            double half = (z[i + 1] - z[i]) / 2;
            for (int k = 0; k < POINTS.length; k++) {
                Matrix2 f = shear.within(i, z[i] + half * (1 + POINTS[k]));
                double weight = WEIGHTS[k] * half;
                s[0] += weight * energy(g, f.m11(), f.m21(), f.m11(), f.m21());
                s[1] += weight * energy(g, f.m11(), f.m21(), f.m12(), f.m22());
                s[2] += weight * energy(g, f.m12(), f.m22(), f.m12(), f.m22());
            }
        }
        double determinant = s[0] * s[2] - s[1] * s[1];
        return new TransverseShearStiffness(s[2] / determinant, -s[1] / determinant + 0.0, s[0] / determinant);
    }

    /** First stress (xz, yz) times compliance times second stress. */
    private static double energy(double[] g, double xz, double yz, double otherXz, double otherYz) {
        return g[0] * xz * otherXz + g[1] * (xz * otherYz + yz * otherXz) + g[2] * yz * otherYz;
    }

    /**
     * A factor on the sum of G t over the plies. Only to reproduce published solutions for solid plates, which take
     * {@link #HOMOGENEOUS_FACTOR}; wrong for a sandwich.
     *
     * @param laminate the laminate
     * @param factor the shear correction factor
     * @return the stiffness
     * @throws IllegalArgumentException if the factor is not positive
     */
    public static TransverseShearStiffness summed(Laminate laminate, double factor) {
        Require.positive("shear factor", factor);
        return new TransverseShearStiffness(
                factor
                        * sum(
                                laminate,
                                p -> p.lamina().G13() * c2(p) + p.lamina().G23() * s2(p)),
                factor * sum(laminate, p -> (p.lamina().G13() - p.lamina().G23()) * sc(p)),
                factor
                        * sum(
                                laminate,
                                p -> p.lamina().G13() * s2(p) + p.lamina().G23() * c2(p)));
    }

    private static double sum(Laminate laminate, ToDoubleFunction<Ply> modulus) {
        List<Ply> plies = laminate.plies();
        return CompensatedSum.of(plies.size(), i -> plies.get(i).thickness() * modulus.applyAsDouble(plies.get(i)));
    }

    /** Shear compliance in laminate axes: xz-xz, xz-yz, yz-yz (1/Pa). */
    private static double[] compliance(Ply ply) {
        double along = 1 / ply.lamina().G13();
        double across = 1 / ply.lamina().G23();
        return new double[] {
            along * c2(ply) + across * s2(ply), (along - across) * sc(ply), along * s2(ply) + across * c2(ply)
        };
    }

    private static double c2(Ply ply) {
        return ply.angle().cosSquared();
    }

    private static double s2(Ply ply) {
        return ply.angle().sinSquared();
    }

    private static double sc(Ply ply) {
        return ply.angle().sinCos();
    }
}
