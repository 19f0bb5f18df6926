package laminate.theory.panel;

import java.util.List;
import laminate.theory.TransverseShearStiffness;
import laminate.theory.Vector3;

/**
 * Bending of a panel with the stretching that its slopes bring about (T. von Kármán, Encyklopädie der mathematischen
 * Wissenschaften IV/4, 1910): εx = u,x + ½ w,x², εy = v,y + ½ w,y², γxy = u,y + v,x + w,x w,y, the rest as in
 * {@link PanelBending}.
 *
 * <p>Where the deflection exceeds about half the thickness a supported panel is stiffer than small-deflection theory
 * says, the more so if its edges are {@link InPlane#HELD} in the plane. Edges free to pull in stay where they are along
 * themselves, and carry no force across. Forces in the plane stiffen or soften the panel.
 *
 * <p>Range: slopes small against 1 (deflection up to about a tenth of the span), material elastic.
 */
public final class LargeDeflection {
    private static final Refinement.Steps ORDERS = new Refinement.Steps(6, 2, 14);

    private final PanelBending linear;
    private final PanelResponse response;
    private boolean stable;

    private LargeDeflection(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        linear = PanelBending.of(panel, loads, shear);
        Section section = new Section(panel.laminate(), shear);
        PanelState[] last = {start(panel)};
        Refinement refinement = Refinement.of(section, ORDERS, List.of(), order -> {
            Basis basis = Basis.of(panel, Kinematics.FIRST_ORDER, Orders.of(order, panel), true);
            VonKarman vonKarman = new VonKarman(basis, section, loads);
            last[0] = vonKarman.solve(last[0]);
            stable = vonKarman.isStable();
            return last[0];
        });
        response = new PanelResponse(refinement, section);
    }

    /** The linear state, shrunk as one with a cubic spring would be: s + ½ (w/h)² s³ = 1. */
    private PanelState start(Panel panel) {
        double ratio = Math.abs(linear.deflection()) / panel.laminate().thickness();
        double share = 1 / Math.max(1, Math.cbrt(ratio * ratio / 2));
        PanelState state = linear.response().state();
        double[] factors = state.factors().clone();
        for (int i = 0; i < factors.length; i++) {
            factors[i] *= share;
        }
        return new PanelState(state.basis(), factors, true, Vector3.ZERO);
    }

    /**
     * Solves a panel with the shear stiffness from the equilibrium shear stress.
     *
     * @param panel the panel
     * @param loads what acts on it, together
     * @return the solution
     * @throws IllegalArgumentException if a patch lies outside the panel, or no solution is found
     */
    public static LargeDeflection of(Panel panel, List<PanelLoad> loads) {
        return of(panel, loads, TransverseShearStiffness.of(panel.laminate()));
    }

    /**
     * Solves a panel with a shear stiffness of one's own.
     *
     * @param panel the panel
     * @param loads what acts on it, together
     * @param shear the shear stiffness
     * @return the solution
     * @throws IllegalArgumentException if a patch lies outside the panel, or no solution is found
     */
    public static LargeDeflection of(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        return new LargeDeflection(panel, List.copyOf(loads), shear);
    }

    /**
     * The same panel by small-deflection theory.
     *
     * @return the linear solution
     */
    public PanelBending linear() {
        return linear;
    }

    /**
     * The state of the panel.
     *
     * @return deflection, strain, moments and shear forces
     */
    public PanelResponse response() {
        return response;
    }

    /**
     * Deflection of the point that moves most.
     *
     * @return w, positive towards +z (m)
     */
    public double deflection() {
        return response.mostDeflected().deflection();
    }

    /**
     * Whether the state stays when nudged. A flat panel pressed in its plane beyond buckling does not.
     *
     * @return true if the energy rises to all sides
     */
    public boolean isStable() {
        return stable;
    }
}
