package laminate.theory;

/**
 * The combinations of an orthotropic stiffness from which every rotated stiffness is made (Tsai and Pagano 1968; Jones
 * 1999, ch. 2):
 *
 * <pre>
 *   Q̄11 = U1 + U2 cos 2θ + U3 cos 4θ     Q̄12 = U4 − U3 cos 4θ     Q̄16 = ½ U2 sin 2θ + U3 sin 4θ
 *   Q̄22 = U1 − U2 cos 2θ + U3 cos 4θ     Q̄66 = U5 − U3 cos 4θ     Q̄26 = ½ U2 sin 2θ − U3 sin 4θ
 * </pre>
 *
 * <p>The average over all angles is U1, U4, U5; and U5 = (U1 − U4)/2.
 *
 * @param U1 mean of Q̄11 over all angles (Pa)
 * @param U2 amplitude with 2θ (Pa)
 * @param U3 amplitude with 4θ (Pa)
 * @param U4 mean of Q̄12 over all angles (Pa)
 * @param U5 mean of Q̄66 over all angles (Pa)
 */
public record Invariants(double U1, double U2, double U3, double U4, double U5) {
    /**
     * The invariants of a stiffness in its own axes.
     *
     * @param q the stiffness (Pa)
     * @return U1 … U5
     */
    public static Invariants of(ReducedStiffness q) {
        double sum = q.Q11() + q.Q22();
        return new Invariants(
                (3 * sum + 2 * q.Q12() + 4 * q.Q66()) / 8,
                (q.Q11() - q.Q22()) / 2,
                (sum - 2 * q.Q12() - 4 * q.Q66()) / 8,
                (sum + 6 * q.Q12() - 4 * q.Q66()) / 8,
                (sum - 2 * q.Q12() + 4 * q.Q66()) / 8);
    }
}
