package laminate.theory;

import java.util.function.ToDoubleFunction;

/**
 * Shear stress across the thickness from equilibrium with the bending stress, for bending in one direction.
 *
 * <p>Curvature in the other direction is held at zero and there is no axial force (cylindrical bending), so the bending
 * stress is Q̄11 (z − e) κ about the neutral axis e = B11/A11, and
 *
 * <pre>
 *   τxz(z) = −(Qx / D*) ∫ from −h/2 to z of Q̄11 (ζ − e) dζ,   D* = D11 − B11²/A11
 * </pre>
 *
 * <p>Zero at both faces, continuous between plies. Source: textbook beam theory applied to the laminate (Batoz and
 * Dhatt, <i>Modélisation des structures par éléments finis</i>, vol. 2, from memory, for e = 0). Shear coupling Q̄16
 * is left out.
 */
public final class EquilibriumShear {
    private EquilibriumShear() {}

    /**
     * Shear stress τxz at a height for bending along x.
     *
     * @param laminate the laminate
     * @param shearForce Qx per unit width (N/m)
     * @param z height from mid-plane, from −h/2 to h/2 (m)
     * @return τxz (Pa)
     * @throws IllegalArgumentException if z lies outside the laminate or the force is not finite
     */
    public static double alongX(Laminate laminate, double shearForce, double z) {
        return Require.finite("shear force", shearForce) * Profile.alongX(laminate).at(z);
    }

    /**
     * Shear stress τyz at a height for bending along y.
     *
     * @param laminate the laminate
     * @param shearForce Qy per unit width (N/m)
     * @param z height from mid-plane, from −h/2 to h/2 (m)
     * @return τyz (Pa)
     * @throws IllegalArgumentException if z lies outside the laminate or the force is not finite
     */
    public static double alongY(Laminate laminate, double shearForce, double z) {
        return Require.finite("shear force", shearForce) * Profile.alongY(laminate).at(z);
    }

    /** Shear stress per shear force over the thickness, τ/Q (1/m): a parabola in each ply. */
    static final class Profile {
        private final double[] heights;
        private final double[] q;
        private final double neutral;
        private final double bending;
        /** ∫ Q̄ (ζ − e) dζ up to the lower side of each ply. */
        private final double[] below;

        private Profile(double[] heights, double[] q) {
            this.heights = heights;
            this.q = q;
            neutral = moment(0, 1) / moment(0, 0);
            bending = moment(neutral, 2);
            below = new double[q.length];
            for (int i = 1; i < q.length; i++) {
                below[i] = below[i - 1] + part(i - 1, heights[i], neutral, 1);
            }
        }

        static Profile alongX(Laminate laminate) {
            return of(laminate, ReducedStiffness::Q11);
        }

        static Profile alongY(Laminate laminate) {
            return of(laminate, ReducedStiffness::Q22);
        }

        private static Profile of(Laminate laminate, ToDoubleFunction<ReducedStiffness> entry) {
            double[] q = laminate.plies().stream()
                    .map(Ply::stiffness)
                    .mapToDouble(entry)
                    .toArray();
            return new Profile(laminate.interfaces(), q);
        }

        /** At any height of the laminate (m). */
        double at(double z) {
            double top = heights[heights.length - 1];
            if (!(z >= heights[0] && z <= top)) {
                throw new IllegalArgumentException("z must lie from " + heights[0] + " to " + top + " m, was " + z);
            }
            int ply = 0;
            while (ply < q.length - 1 && z > heights[ply + 1]) {
                ply++;
            }
            return within(ply, z);
        }

        /** At a height within a ply given by its number. */
        double within(int ply, double z) {
            return -(below[ply] + part(ply, z, neutral, 1)) / bending;
        }

        /** ∫ Q̄ (ζ − e)ⁿ dζ over the whole thickness. */
        private double moment(double e, int n) {
            return CompensatedSum.of(q.length, i -> part(i, heights[i + 1], e, n));
        }

        /** ∫ Q̄ (ζ − e)ⁿ dζ from the lower side of a ply up to z. */
        private double part(int ply, double z, double e, int n) {
            return q[ply] * (Math.pow(z - e, n + 1) - Math.pow(heights[ply] - e, n + 1)) / (n + 1);
        }
    }
}
