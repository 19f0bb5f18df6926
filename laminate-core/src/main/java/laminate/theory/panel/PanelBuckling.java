package laminate.theory.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.theory.TransverseShearStiffness;

/**
 * Buckling of a panel under uniform forces in its plane: the smallest factor on the forces at which the flat panel can
 * also rest bent, and the shape it bends to (G. H. Bryan, Proc. London Math. Soc. 22 (1890) 54; for laminates J. M.
 * Whitney 1987, from memory).
 *
 * <p>By the Ritz method with first-order shear theory, the order rising until the factor settles. Before buckling the
 * forces are taken as uniform. An unsymmetric laminate bends from the first load on unless its edges hold it flat; for
 * it the factor is that of the flat state.
 */
public final class PanelBuckling {
    /** The factor may change by this share in the last step of the order. */
    public static final double TOLERANCE = 2e-4;

    private static final int FIRST_ORDER = 6;
    private static final int STEP = 2;
    private static final int LAST_ORDER = 18;

    private final OptionalDouble factor;
    private final Optional<PanelState> mode;
    private final int order;
    private final double change;

    private PanelBuckling(Optional<BucklingMode> found, int order, double change) {
        factor = found.map(m -> OptionalDouble.of(m.factor())).orElse(OptionalDouble.empty());
        mode = found.map(BucklingMode::state);
        this.order = order;
        this.change = change;
    }

    /**
     * Solves a panel with the shear stiffness from the equilibrium shear stress.
     *
     * @param panel the panel
     * @param forces the forces to be multiplied, tension positive
     * @return the solution
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public static PanelBuckling of(Panel panel, PanelLoad.EdgeForces forces) {
        return of(panel, forces, TransverseShearStiffness.of(panel.laminate()));
    }

    /**
     * Solves a panel with a shear stiffness of one's own.
     *
     * @param panel the panel
     * @param forces the forces to be multiplied, tension positive
     * @param shear the shear stiffness
     * @return the solution
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public static PanelBuckling of(Panel panel, PanelLoad.EdgeForces forces, TransverseShearStiffness shear) {
        Section section = new Section(panel.laminate(), shear);
        Optional<BucklingMode> last = lowest(panel, forces, section, FIRST_ORDER);
        for (int order = FIRST_ORDER + STEP; ; order += STEP) {
            Optional<BucklingMode> next = lowest(panel, forces, section, order);
            double change = last.isPresent() && next.isPresent()
                    ? Math.abs(last.get().factor() / next.get().factor() - 1)
                    : last.isPresent() || next.isPresent() ? 1 : 0;
            if (change <= TOLERANCE || order >= LAST_ORDER) {
                return new PanelBuckling(next, order, change);
            }
            last = next;
        }
    }

    private static Optional<BucklingMode> lowest(Panel panel, PanelLoad.EdgeForces forces, Section section, int order) {
        Basis basis = Basis.of(panel, Kinematics.FIRST_ORDER, Orders.of(order, panel), section.isCoupled());
        List<BucklingMode> modes = new ArrayList<>();
        for (int[] group : basis.groups(section.isShearCoupled() || forces.Nxy() != 0)) {
            BucklingMode.lowest(basis, group, section, forces).ifPresent(modes::add);
        }
        return modes.stream().min(Comparator.comparingDouble(BucklingMode::factor));
    }

    /**
     * The factor on the forces at which the panel buckles.
     *
     * @return the factor, positive; empty if no factor buckles it, as in pure tension
     */
    public OptionalDouble factor() {
        return factor;
    }

    /**
     * The shape of the buckled panel.
     *
     * @param x place along the length (m)
     * @param y place along the width (m)
     * @return deflection as a share of the largest one, from −1 to 1; empty if nothing buckles
     */
    public OptionalDouble mode(double x, double y) {
        return mode.map(m -> OptionalDouble.of(m.deflection(x, y))).orElse(OptionalDouble.empty());
    }

    /**
     * Power of the polynomials along the shorter side.
     *
     * @return the order
     */
    public int order() {
        return order;
    }

    /**
     * Change of the factor between the last two orders, as a share.
     *
     * @return at most {@link #TOLERANCE} if it has settled
     */
    public double change() {
        return change;
    }
}
