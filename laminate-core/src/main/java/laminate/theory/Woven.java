package laminate.theory;

import java.util.Optional;

/** Woven fabric as two crossed unidirectional plies that strain together, knocked down for the crimp of the yarns. */
public final class Woven {
    private Woven() {}

    /**
     * Lamina of a woven fabric: Q = k [s Q(0°) + (1 − s) Q(90°)], direction 1 being the warp.
     *
     * <p>Stiffness in the plane of a cross-ply without bending (Jones 1999, ch. 4), with a factor k on all
     * moduli for crimp, 0.90 to 0.95 for woven roving (from memory). Expansion from the same average
     * of Q α; it does not depend on k. G13 and G23 are averaged where they are known.
     *
     * @param lamina unidirectional lamina at the fibre content of the fabric
     * @param warpShare share s of the fibre that runs in the warp, from 0 to 1; 0.5 if balanced
     * @param crimp knock-down k on the moduli, above 0 and up to 1
     * @return the lamina of the fabric
     * @throws IllegalArgumentException if the share or the knock-down cannot be
     */
    public static Lamina crossed(Lamina lamina, double warpShare, double crimp) {
        double s = Require.share("warp share", warpShare);
        Require.positiveShare("crimp knock-down", crimp);
        ReducedStiffness q = lamina.reducedStiffness();
        ReducedStiffness both =
                new ReducedStiffness(mean(s, q.Q11(), q.Q22()), q.Q12(), mean(s, q.Q22(), q.Q11()), 0, 0, q.Q66());
        return Lamina.from(both)
                .with(
                        crossed(lamina.transverseShear(), s),
                        crossed(q, both, lamina.thermalExpansion(), s),
                        crossed(q, both, lamina.moistureExpansion(), s))
                .scaledBy(crimp);
    }

    private static Optional<Expansion> crossed(
            ReducedStiffness q, ReducedStiffness both, Optional<Expansion> expansion, double s) {
        return expansion.isPresent() ? Optional.of(crossed(q, both, expansion.get(), s)) : Optional.empty();
    }

    private static double mean(double s, double warp, double weft) {
        return s * warp + (1 - s) * weft;
    }

    private static Optional<TransverseShear> crossed(Optional<TransverseShear> shear, double s) {
        return shear.isPresent() ? Optional.of(crossed(shear.get(), s)) : Optional.empty();
    }

    private static TransverseShear crossed(TransverseShear g, double s) {
        return new TransverseShear(mean(s, g.G13(), g.G23()), mean(s, g.G23(), g.G13()));
    }

    private static Expansion crossed(ReducedStiffness q, ReducedStiffness both, Expansion expansion, double s) {
        Vector3 held = q.times(expansion.asStrain());
        Vector3 crossed = new Vector3(mean(s, held.x(), held.y()), mean(s, held.y(), held.x()), 0);
        Vector3 free = both.compliance().times(crossed);
        return new Expansion(free.x(), free.y());
    }
}
