package laminate.theory;

/**
 * Plane-stress stiffness of a lamina in some axes, σ = Q ε with engineering shear strain.
 *
 * @param Q11 stiffness (Pa)
 * @param Q12 stiffness (Pa)
 * @param Q22 stiffness (Pa)
 * @param Q16 shear coupling (Pa); positive for a fibre between x and y
 * @param Q26 shear coupling (Pa)
 * @param Q66 shear stiffness (Pa)
 */
public record ReducedStiffness(double Q11, double Q12, double Q22, double Q16, double Q26, double Q66) {
    /**
     * Checks the entries.
     *
     * @param Q11 stiffness (Pa)
     * @param Q12 stiffness (Pa)
     * @param Q22 stiffness (Pa)
     * @param Q16 shear coupling (Pa); positive for a fibre between x and y
     * @param Q26 shear coupling (Pa)
     * @param Q66 shear stiffness (Pa)
     * @throws IllegalArgumentException if one is not finite, or one of Q11, Q22, Q66 not positive
     */
    public ReducedStiffness {
        Require.positive("Q11", Q11);
        Require.finite("Q12", Q12);
        Require.positive("Q22", Q22);
        Require.finite("Q16", Q16);
        Require.finite("Q26", Q26);
        Require.positive("Q66", Q66);
    }

    /**
     * The stiffness of the same sheet after it is turned from x towards y, seen in the old axes.
     *
     * @param degrees the turn (°)
     * @return the stiffness Q̄ (Pa)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public ReducedStiffness rotatedBy(double degrees) {
        return rotatedBy(Angle.ofDegrees(degrees));
    }

    /**
     * The stiffness of the same sheet after it is turned, seen in the old axes: Q̄ = T⁻¹ Q T⁻ᵀ written out (Jones
     * 1999, ch. 2 with shear coupling kept), which for Q16 = Q26 = 0 has, with c = cosθ, s = sinθ,
     *
     * <pre>
     *   Q̄11 = Q11 c⁴ + 2 (Q12 + 2 Q66) s² c² + Q22 s⁴
     *   Q̄12 = (Q11 + Q22 − 4 Q66) s² c² + Q12 (s⁴ + c⁴)
     *   Q̄16 = s c [Q11 c² − Q22 s² − (Q12 + 2 Q66)(c² − s²)]
     *   Q̄66 = (Q11 + Q22 − 2 Q12) s² c² + Q66 (c² − s²)²
     * </pre>
     *
     * @param angle the turn from x towards y
     * @return the stiffness Q̄ (Pa)
     */
    public ReducedStiffness rotatedBy(Angle angle) {
        double cc = angle.cosSquared();
        double ss = angle.sinSquared();
        double sc = angle.sinCos();
        double cos2 = angle.cosDouble();
        double mixed = Q12 + 2 * Q66;
        double near = cc * cos2 - 2 * sc * sc;
        double far = ss * cos2 + 2 * sc * sc;
        return new ReducedStiffness(
                cc * cc * Q11 + ss * ss * Q22 + 2 * sc * sc * mixed - 4 * sc * (cc * Q16 + ss * Q26),
                sc * sc * (Q11 + Q22 - 4 * Q66) + (cc * cc + ss * ss) * Q12 + 2 * sc * cos2 * (Q16 - Q26),
                ss * ss * Q11 + cc * cc * Q22 + 2 * sc * sc * mixed + 4 * sc * (ss * Q16 + cc * Q26),
                sc * (cc * Q11 - ss * Q22 - cos2 * mixed) + near * Q16 + far * Q26,
                sc * (ss * Q11 - cc * Q22 + cos2 * mixed) + far * Q16 + near * Q26,
                sc * sc * (Q11 - 2 * Q12 + Q22) + cos2 * cos2 * Q66 + 2 * sc * cos2 * (Q16 - Q26));
    }

    /**
     * The invariants of this stiffness, which do not depend on its axes but for the sign and size of U2, U3.
     *
     * @return U1 … U5
     */
    public Invariants invariants() {
        return Invariants.of(this);
    }

    /**
     * The stiffness as a matrix.
     *
     * @return Q (Pa)
     */
    public Matrix3 matrix() {
        return Matrix3.symmetric(Q11, Q12, Q22, Q16, Q26, Q66);
    }

    /**
     * The compliance S = Q⁻¹, ε = S σ.
     *
     * @return S (1/Pa)
     * @throws IllegalArgumentException if the stiffness is singular
     */
    public Matrix3 compliance() {
        return matrix().inverse();
    }

    /**
     * Stress from strain, σ = Q ε.
     *
     * @param strain εx, εy, γxy
     * @return σx, σy, τxy (Pa)
     */
    public Vector3 times(Vector3 strain) {
        return new Vector3(
                Q11 * strain.x() + Q12 * strain.y() + Q16 * strain.xy(),
                Q12 * strain.x() + Q22 * strain.y() + Q26 * strain.xy(),
                Q16 * strain.x() + Q26 * strain.y() + Q66 * strain.xy());
    }
}
