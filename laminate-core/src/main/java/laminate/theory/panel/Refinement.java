package laminate.theory.panel;

import java.util.function.Function;

/** Raises the order of the polynomials until deflection and moments settle. */
final class Refinement {
    private static final int FIRST_ORDER = 6;
    private static final int STEP = 2;

    private final PanelState state;
    private final ShearMethod shearMethod;
    private final Convergence convergence;

    private Refinement(PanelState state, ShearMethod shearMethod, Convergence convergence) {
        this.state = state;
        this.shearMethod = shearMethod;
        this.convergence = convergence;
    }

    /**
     * Solves at rising orders.
     *
     * @param lastOrder where to stop even if it has not settled
     * @param solver from an order to a state
     */
    static Refinement of(Section section, int lastOrder, Function<Integer, PanelState> solver) {
        PanelState state = solver.apply(FIRST_ORDER);
        Watch watch = new Watch(state, section);
        for (int order = FIRST_ORDER + STEP; ; order += STEP) {
            PanelState next = solver.apply(order);
            Watch nextWatch = new Watch(next, section);
            Refinement refinement = compare(next, order, watch, nextWatch);
            if (refinement.convergence.reached() || order >= lastOrder) {
                return refinement;
            }
            watch = nextWatch;
        }
    }

    /** Of the two ways to the shear force, the one that changed less is kept. */
    private static Refinement compare(PanelState state, int order, Watch before, Watch now) {
        double deflection = now.deflectionChange(before);
        double moment = now.momentChange(before);
        double byStrain = now.shearChange(before, ShearMethod.STRAIN);
        double byEquilibrium = now.shearChange(before, ShearMethod.EQUILIBRIUM);
        boolean reached = deflection <= Convergence.DEFLECTION_TOLERANCE && moment <= Convergence.MOMENT_TOLERANCE;
        ShearMethod method = byStrain <= byEquilibrium ? ShearMethod.STRAIN : ShearMethod.EQUILIBRIUM;
        Convergence convergence =
                new Convergence(order, reached, deflection, moment, Math.min(byStrain, byEquilibrium));
        return new Refinement(state, method, convergence);
    }

    PanelState state() {
        return state;
    }

    ShearMethod shearMethod() {
        return shearMethod;
    }

    Convergence convergence() {
        return convergence;
    }
}
