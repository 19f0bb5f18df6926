package laminate.theory;

import java.util.ArrayList;
import java.util.List;

/**
 * Shear stress across the thickness from equilibrium with the bending stress, for shear forces in both directions.
 *
 * <p>Two cylindrical bendings are laid over each other: along x only εx and κx change, along y only εy and κy, and no
 * membrane force arises. With P = [[Q̄11, Q̄26], [Q̄16, Q̄22]], A′ = ∫ P dz, B′ = ∫ P z dz, D′ = ∫ P z² dz,
 *
 * <pre>
 *   k = (D′ − B′ A′⁻¹ B′)⁻¹ [Qx; Qy],   e = −A′⁻¹ B′ k
 *   [τxz; τyz](z) = −∫ from −h/2 to z of P (e + ζ k) dζ
 * </pre>
 *
 * <p>Zero at both faces, continuous between plies, and ∫ τ dz = Q exactly. Without shear coupling each direction is
 * the beam formula τxz = −(Qx/D*) ∫ Q̄11 (ζ − e) dζ with e = B11/A11 and D* = D11 − B11²/A11. Source: textbook beam
 * theory applied to the laminate (Batoz and Dhatt, <i>Modélisation des structures par éléments finis</i>, vol. 2,
 * from memory, for one direction and B = 0); the coupling of the two directions follows from the same equilibrium.
 * Valid away from edges and point loads; it neglects that twist changes along the plate.
 */
public final class EquilibriumShear {
    private final double[] heights;
    private final List<Matrix2> stiffness;
    /** Gradients of strain and curvature per unit shear force: column x for Qx, column y for Qy. */
    private final Matrix2 strain;

    private final Matrix2 curvature;

    /**
     * ∫ P (e + ζ k) dζ from the mould face to the lower side of each ply, and from its upper side to the inner face.
     */
    private final List<Matrix2> below = new ArrayList<>();

    private final List<Matrix2> above = new ArrayList<>();

    private EquilibriumShear(Laminate laminate) {
        heights = laminate.interfaces();
        stiffness = laminate.plies().stream()
                .map(Ply::stiffness)
                .map(q -> new Matrix2(q.Q11(), q.Q26(), q.Q16(), q.Q22()))
                .toList();
        Matrix2 a = of(laminate.membrane()).inverse();
        Matrix2 b = of(laminate.coupling());
        curvature = of(laminate.bending()).minus(b.times(a).times(b)).inverse();
        strain = a.times(b).times(curvature).times(-1);
        Matrix2 up = Matrix2.ZERO;
        Matrix2 down = Matrix2.ZERO;
        int last = stiffness.size() - 1;
        for (int i = 0; i <= last; i++) {
            below.add(up);
            above.add(0, down);
            up = up.plus(flow(i, heights[i], heights[i + 1]));
            down = down.plus(flow(last - i, heights[last - i], heights[last - i + 1]));
        }
    }

    private static Matrix2 of(Matrix3 m) {
        return new Matrix2(m.m11(), m.m26(), m.m16(), m.m22());
    }

    /**
     * Prepares a laminate; one object serves any forces and heights.
     *
     * @param laminate the laminate
     * @return its shear stresses
     */
    public static EquilibriumShear of(Laminate laminate) {
        return new EquilibriumShear(laminate);
    }

    /**
     * Shear stress at a height.
     *
     * @param Qx shear force on the section x = const per width (N/m)
     * @param Qy shear force on the section y = const per width (N/m)
     * @param z height from mid-plane, from −h/2 to h/2 (m)
     * @return τxz, τyz (Pa)
     * @throws IllegalArgumentException if z lies outside the laminate or a force is not finite
     */
    public ShearStress at(double Qx, double Qy, double z) {
        double top = heights[heights.length - 1];
        if (!(z >= heights[0] && z <= top)) {
            throw new IllegalArgumentException("z must lie from " + heights[0] + " to " + top + " m, was " + z);
        }
        int ply = 0;
        while (ply < stiffness.size() - 1 && z > heights[ply + 1]) {
            ply++;
        }
        return times(within(ply, z), Qx, Qy);
    }

    private static ShearStress times(Matrix2 flow, double Qx, double Qy) {
        return new ShearStress(flow.m11() * Qx + flow.m12() * Qy, flow.m21() * Qx + flow.m22() * Qy);
    }

    /**
     * Stress per unit Qx (first column) and Qy (second) at a height within a ply. The integral over the whole height is
     * zero; taken from the nearer face, it is exactly so at both.
     */
    Matrix2 within(int ply, double z) {
        return z <= 0
                ? below.get(ply).plus(flow(ply, heights[ply], z)).times(-1)
                : above.get(ply).plus(flow(ply, z, heights[ply + 1]));
    }

    /** ∫ P (e + ζ k) dζ between two heights of a ply. */
    private Matrix2 flow(int ply, double from, double to) {
        Matrix2 mean = strain.plus(curvature.times((from + to) / 2));
        return stiffness.get(ply).times(mean).times(to - from);
    }

    /**
     * The shear forces' stresses through a whole laminate, at the three points of each ply.
     *
     * @param Qx shear force on the section x = const per width (N/m)
     * @param Qy shear force on the section y = const per width (N/m)
     * @return mould-face side, middle and inner side of each ply in turn
     */
    List<ShearStress> atPlies(double Qx, double Qy) {
        List<ShearStress> stresses = new ArrayList<>();
        for (int i = 0; i < stiffness.size(); i++) {
            for (PlyPoint.At at : PlyPoint.At.values()) {
                stresses.add(times(within(i, at.between(heights[i], heights[i + 1])), Qx, Qy));
            }
        }
        return stresses;
    }

    /**
     * Shear stress τxz at a height for a force along x alone.
     *
     * @param laminate the laminate
     * @param shearForce Qx per unit width (N/m)
     * @param z height from mid-plane, from −h/2 to h/2 (m)
     * @return τxz (Pa)
     * @throws IllegalArgumentException if z lies outside the laminate or the force is not finite
     */
    public static double alongX(Laminate laminate, double shearForce, double z) {
        return of(laminate).at(shearForce, 0, z).xz();
    }

    /**
     * Shear stress τyz at a height for a force along y alone.
     *
     * @param laminate the laminate
     * @param shearForce Qy per unit width (N/m)
     * @param z height from mid-plane, from −h/2 to h/2 (m)
     * @return τyz (Pa)
     * @throws IllegalArgumentException if z lies outside the laminate or the force is not finite
     */
    public static double alongY(Laminate laminate, double shearForce, double z) {
        return of(laminate).at(0, shearForce, z).yz();
    }
}
