package laminate.theory.panel;

import java.util.List;
import java.util.Optional;
import laminate.theory.Laminate;
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
 * <p>Polynomials over the whole panel, also under a patch, which {@link PanelBending} divides: under a patch of a fifth
 * of the span the deflection is about 1 % too small and moments have not settled, as {@link Convergence} tells.
 *
 * <p>Range: slopes small against 1 (deflection up to about a tenth of the span), material elastic.
 */
public final class LargeDeflection {
    private static final Refinement.Steps ORDERS = new Refinement.Steps(6, 2, 14);

    /** No more than this is spent on an answer of which a search takes many. */
    private static final int QUICK_ORDER = 10;

    private final Panel panel;
    private final List<PanelLoad> loads;
    private final PanelBending linear;
    private final Refinement refinement;
    private final PanelResponse response;
    private final boolean stable;

    private LargeDeflection(
            Panel panel,
            List<PanelLoad> loads,
            PanelBending linear,
            Refinement refinement,
            Section section,
            boolean stable) {
        this.panel = panel;
        this.loads = loads;
        this.linear = linear;
        this.refinement = refinement;
        this.response = new PanelResponse(refinement, section);
        this.stable = stable;
    }

    private static Optional<LargeDeflection> solve(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        PanelBending linear = PanelBending.of(panel, loads, shear);
        Section section = new Section(panel.laminate(), shear);
        PanelState small = PanelBending.undivided(ORDERS.first(), panel, loads, section, Kinematics.FIRST_ORDER);
        PanelState[] last = {shrunk(small, linear.deflection(), panel)};
        boolean[] stable = {false};
        Optional<Refinement> refinement = Refinement.find(section, ORDERS, List.of(), order -> {
            VonKarman vonKarman = vonKarman(order, panel, section, loads);
            Optional<PanelState> state = vonKarman.solve(last[0]);
            state.ifPresent(found -> {
                last[0] = found;
                stable[0] = vonKarman.isStable();
            });
            return state;
        });
        return refinement.map(r -> new LargeDeflection(panel, loads, linear, r, section, stable[0]));
    }

    private static VonKarman vonKarman(int order, Panel of, Section section, List<PanelLoad> loads) {
        return new VonKarman(Basis.of(of, Kinematics.FIRST_ORDER, Orders.of(order, of), true), section, loads);
    }

    /** A linear state, shrunk as one with a cubic spring would be: s + ½ (w/h)² s³ = 1. */
    private static PanelState shrunk(PanelState state, double deflection, Panel panel) {
        double ratio = Math.abs(deflection) / panel.laminate().thickness();
        double share = 1 / Math.max(1, Math.cbrt(ratio * ratio / 2));
        double[] factors = state.factors().clone();
        for (int i = 0; i < factors.length; i++) {
            factors[i] *= share;
        }
        return new PanelState(state.basis(), factors, true, Vector3.ZERO);
    }

    /**
     * The state that another laminate takes in the place of this panel's, by polynomials of the order at which this
     * solution settled but not above {@value #QUICK_ORDER}: a quick answer for a search among laminates of one kind, to be
     * confirmed by a solution of its own.
     *
     * @param other the laminate, whose shear stiffness is that from the equilibrium shear stress
     * @return its state; the {@link Convergence} is that of this solution; empty where none is found
     */
    public Optional<PanelResponse> responseOf(Laminate other) {
        Panel changed = panel.with(other);
        Section section = new Section(other, TransverseShearStiffness.of(other));
        int first = ORDERS.first();
        PanelState small = PanelBending.undivided(first, changed, loads, section, Kinematics.FIRST_ORDER);
        double most = new PanelResponse(refinement.like(small), section)
                .mostDeflected()
                .deflection();
        int order = Math.min(QUICK_ORDER, refinement.convergence().order());
        return vonKarman(first, changed, section, loads)
                .solve(shrunk(small, most, changed))
                .flatMap(rough -> vonKarman(order, changed, section, loads).solve(rough))
                .map(state -> new PanelResponse(refinement.like(state), section));
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
        return solve(panel, List.copyOf(loads), shear)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no large deflection was found at which the panel rests under " + loads));
    }

    /**
     * Solves a panel that may have no solution within reach, as one pressed in its plane far beyond buckling.
     *
     * @param panel the panel
     * @param loads what acts on it, together
     * @return the solution; empty if Newton's method came to rest nowhere, in steps of the load either
     * @throws IllegalArgumentException if a patch lies outside the panel
     */
    public static Optional<LargeDeflection> find(Panel panel, List<PanelLoad> loads) {
        return solve(panel, List.copyOf(loads), TransverseShearStiffness.of(panel.laminate()));
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
