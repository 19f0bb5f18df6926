package laminate.theory;

import java.util.List;

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
        List<Double> stiffness =
                laminate.plies().stream().map(ply -> ply.stiffness().Q11()).toList();
        return stress(laminate, stiffness, shearForce, z);
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
        List<Double> stiffness =
                laminate.plies().stream().map(ply -> ply.stiffness().Q22()).toList();
        return stress(laminate, stiffness, shearForce, z);
    }

    private static double stress(Laminate laminate, List<Double> q, double shearForce, double z) {
        double[] heights = laminate.interfaces();
        double top = heights[heights.length - 1];
        if (!(z >= heights[0] && z <= top)) {
            throw new IllegalArgumentException("z must lie from " + heights[0] + " to " + top + " m, was " + z);
        }
        double neutral = moment(q, heights, top, 0, 1) / moment(q, heights, top, 0, 0);
        double bending = moment(q, heights, top, neutral, 2);
        return -Require.finite("shear force", shearForce) / bending * moment(q, heights, z, neutral, 1);
    }

    /** ∫ Q (ζ − e)ⁿ dζ from the mould face up to z. */
    private static double moment(List<Double> q, double[] heights, double z, double e, int n) {
        return CompensatedSum.of(q.size(), i -> {
            double from = Math.min(heights[i], z) - e;
            double to = Math.min(heights[i + 1], z) - e;
            return q.get(i) * (Math.pow(to, n + 1) - Math.pow(from, n + 1)) / (n + 1);
        });
    }
}
