package laminate.theory.panel;

import java.util.List;
import laminate.theory.TransverseShearStiffness;

/**
 * Bending of a panel as long as the deflection is small, by first-order shear theory.
 *
 * <p>The state of least potential energy among sums of polynomials (W. Ritz, J. reine angew. Math. 135 (1909) 1) whose
 * order rises until the deflection settles to 2·10⁻⁴ and the moments to 5·10⁻³; see {@link Convergence}. Any laminate:
 * unsymmetric, and such as twist when bent.
 *
 * <p>The shear part of the deflection is what the panel would lose if it were rigid in shear: the deflection less that
 * of thin-plate theory under the same load and supports, solved on its own with smooth polynomials.
 *
 * <p>Range: deflection up to about half the thickness, beyond it see {@link LargeDeflection}; material stays elastic.
 * Forces in the plane stretch the panel but do not stiffen or soften it here; the large-deflection solution has that
 * too.
 */
public final class PanelBending {
    /** Where the order stops rising even if the result has not settled, which {@link Convergence#reached()} tells. */
    static final int LAST_ORDER = 18;

    private final PanelResponse response;
    private final double bendingDeflection;

    private PanelBending(Panel panel, List<PanelLoad> loads, TransverseShearStiffness shear) {
        Section section = new Section(panel.laminate(), shear);
        response = new PanelResponse(refine(panel, loads, section, Kinematics.FIRST_ORDER), section);
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
        boolean membrane = section.isCoupled() || loads.stream().anyMatch(PanelLoad.EdgeForces.class::isInstance);
        return Refinement.of(
                section,
                LAST_ORDER,
                order -> Ritz.solve(
                        Basis.of(panel, kinematics, Orders.of(order, panel), membrane), section, loads));
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
