package laminate.theory.panel;

import java.util.List;
import java.util.Optional;
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
        return find(section, steps, watched, order -> Optional.of(solver.apply(order)))
                .orElseThrow();
    }

    /**
     * Solves at rising orders as far as there is a solution.
     *
     * @param solver from an order to a state; empty if none is found
     * @return empty if none is found at the first two orders
     */
    static Optional<Refinement> find(
            Section section, Steps steps, List<double[]> watched, Function<Integer, Optional<PanelState>> solver) {
        Optional<Refinement> found = Optional.empty();
        Optional<Watch> watch = Optional.empty();
        for (int order = steps.first(); order <= steps.last(); order += steps.step()) {
            Optional<PanelState> state = solver.apply(order);
            if (state.isEmpty()) {
                return found;
            }
            Watch now = new Watch(state.get(), section, watched);
            int reached = order;
            found = watch.map(before -> compare(state.get(), reached, before, now));
            if (found.isPresent() && found.get().convergence.reached()) {
                return found;
            }
            watch = Optional.of(now);
        }
        return found;
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
