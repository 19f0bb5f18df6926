package laminate.theory.panel;

import java.util.List;
import java.util.function.Function;

/** Raises the order of the polynomials until deflection and moments settle. */
final class Refinement {
    private final PanelState state;
    private final ShearMethod shearMethod;
    private final Convergence convergence;

    private Refinement(PanelState state, ShearMethod shearMethod, Convergence convergence) {
        this.state = state;
        this.shearMethod = shearMethod;
        this.convergence = convergence;
    }

    /** The orders tried; the last one stands even if the result has not settled. */
    record Steps(int first, int step, int last) {}

    /**
     * Solves at rising orders.
     *
     * @param watched places where the solution must settle besides the usual ones (m)
     * @param solver from an order to a state
     */
    static Refinement of(Section section, Steps steps, List<double[]> watched, Function<Integer, PanelState> solver) {
        PanelState state = solver.apply(steps.first());
        Watch watch = new Watch(state, section, watched);
        for (int order = steps.first() + steps.step(); ; order += steps.step()) {
            PanelState next = solver.apply(order);
            Watch nextWatch = new Watch(next, section, watched);
            Refinement refinement = compare(next, order, watch, nextWatch);
            if (refinement.convergence.reached() || order >= steps.last()) {
                return refinement;
            }
            watch = nextWatch;
        }
    }

    /** Another state at an order at which this one settled: as far settled, without a second order to tell. */
    Refinement like(PanelState other) {
        return new Refinement(other, shearMethod, convergence);
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
