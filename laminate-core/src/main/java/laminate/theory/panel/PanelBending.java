package laminate.theory.panel;

import java.util.List;
import laminate.theory.Laminate;
import laminate.theory.TransverseShearStiffness;

/**
 * Bending of a panel as long as the deflection is small, by first-order shear theory.
 *
 * <p>The state of least potential energy among sums of polynomials (W. Ritz, J. reine angew. Math. 135 (1909) 1) whose
 * order rises until the deflection settles to 2·10⁻⁴ and the moments to 5·10⁻³; see {@link Convergence}. Any laminate:
 * unsymmetric, and such as twist when bent.
 *
 * <p>Under patches the polynomials are piecewise, divided at the sides of each {@link PanelLoad.Patch} and between it
 * and the edges: for patches of 30 to 120 mm on panels of 400 to 1200 mm, deflection within 0.1 % of the double sine
 * series, moments and shear forces under the patch within 1 %.
 *
 * <p>The shear part of the deflection is what the panel would lose if it were rigid in shear: the deflection less that
 * of thin-plate theory under the same load and supports, solved on its own with smooth polynomials over the
 * whole panel; under a patch of a fortieth of the side the split is half a percent off, the sum is not.
 *
 * <p>Measured errors of the theory, as deflection of the middle against exact three-dimensional elasticity (N. J.
 * Pagano) under a sinusoidal pressure, for span to thickness 4, 10, 20, 50 and 100: strongly directed cross-ply
 * [0/90/90/0] with E1 = 25 E2 +7.9, +1.05, +0.17, +0.02, +0.00 %; sandwich with faces of a tenth of the thickness and
 * a core a six-hundredth as stiff +3.2, +0.48, +0.08, +0.01, +0.00 %. Against brick finite elements of a foam sandwich
 * 600 mm by 400 mm by 18.6 mm: +0.5 % simply supported, +2.8 % clamped (the faces of a clamped sandwich bend on their
 * own near the edge, which stiffens it). On the stated errors comes that of {@link Convergence}. Thick and clamped
 * soft-cored panels are therefore shown somewhat softer than they are.
 *
 * <p>Range: deflection up to about half the thickness, beyond it see {@link LargeDeflection}; material stays elastic.
 * Forces in the plane strain the panel but do not stiffen or soften it here; the large-deflection solution has that
 * too.
 */
public final class PanelBending {
    private static final Refinement.Steps OVER_THE_PANEL = new Refinement.Steps(6, 2, 18);
    private static final Refinement.Steps WITHIN_PIECES = new Refinement.Steps(4, 1, 8);

    private final Panel panel;
    private final List<PanelLoad> loads;
    private final Refinement refinement;
    private final PanelResponse response;
    private final double bendingDeflection;

    private PanelBending(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        Section section = new Section(panel.laminate(), shear);
        this.panel = panel;
        this.loads = loads;
        refinement = refine(panel, loads, section, Kinematics.FIRST_ORDER);
        response = new PanelResponse(refinement, section);
        PanelState thin = refine(panel, loads, section, Kinematics.THIN).state();
        PanelPoint most = response.mostDeflected();
        bendingDeflection = thin.deflection(most.x(), most.y());
    }

    /**
     * Solves a panel with the shear stiffness from the equilibrium shear stress.
     *
     * @param panel the panel
     * @param loads what acts on it, together
     * @return the solution
     * @throws IllegalArgumentException if a patch lies outside the panel, or the stiffness is singular to working
     *     precision
     */
    public static PanelBending of(Panel panel, List<PanelLoad> loads) {
        return of(panel, loads, TransverseShearStiffness.of(panel.laminate()));
    }

    /**
     * Solves a panel with a shear stiffness of one's own, as to reproduce a published table.
     *
     * @param panel the panel
     * @param loads what acts on it, together
     * @param shear the shear stiffness
     * @return the solution
     * @throws IllegalArgumentException if a patch lies outside the panel, or the stiffness is singular to working
     *     precision
     */
    public static PanelBending of(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        return new PanelBending(panel, List.copyOf(loads), shear);
    }

    static Refinement refine(Panel panel, List<PanelLoad> loads, Section section, Kinematics kinematics) {
        Mesh mesh = Mesh.of(panel, loads);
        boolean divided = kinematics == Kinematics.FIRST_ORDER && mesh.isDivided();
        return Refinement.of(
                section,
                divided ? WITHIN_PIECES : OVER_THE_PANEL,
                divided ? mesh.watched() : List.of(),
                order -> divided
                        ? divided(order, panel, mesh, loads, section)
                        : undivided(order, panel, loads, section, kinematics));
    }

    private static PanelState divided(int order, Panel panel, Mesh mesh, List<PanelLoad> loads, Section section) {
        return Ritz.solve(Basis.of(panel, mesh, order, section.isCoupled()), section, loads);
    }

    /** The state by polynomials over the whole panel. */
    static PanelState undivided(int order, Panel panel, List<PanelLoad> loads, Section section, Kinematics kinematics) {
        Basis basis = Basis.of(panel, kinematics, Orders.of(order, panel), section.isCoupled());
        return Ritz.solve(basis, section, loads);
    }

    /**
     * The state that another laminate takes in the place of this panel's, by the order of polynomials at which this
     * solution settled: a quick answer for a search among laminates of one kind, to be confirmed by a solution of its
     * own.
     *
     * @param other the laminate, whose shear stiffness is that from the equilibrium shear stress
     * @return its state; the {@link Convergence} is that of this solution
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public PanelResponse responseOf(Laminate other) {
        Section section = new Section(other, TransverseShearStiffness.of(other));
        int order = refinement.convergence().order();
        Panel changed = panel.with(other);
        Mesh mesh = Mesh.of(changed, loads);
        PanelState state = mesh.isDivided()
                ? divided(order, changed, mesh, loads, section)
                : undivided(order, changed, loads, section, Kinematics.FIRST_ORDER);
        return new PanelResponse(refinement.like(state), section);
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
     * The part of {@link #deflection()} from bending, by thin-plate theory at the same point.
     *
     * @return w, positive towards +z (m)
     */
    public double bendingDeflection() {
        return bendingDeflection;
    }

    /**
     * The part of {@link #deflection()} from shear across the thickness.
     *
     * @return w, positive towards +z (m)
     */
    public double shearDeflection() {
        return deflection() - bendingDeflection;
    }
}
