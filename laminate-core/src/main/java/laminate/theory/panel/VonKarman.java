package laminate.theory.panel;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import laminate.theory.Vector3;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The state of least potential energy with the stretching by slopes, εx = u,x + ½ w,x² and so on, found by Newton's
 * method on the factors of the basis.
 *
 * <p>The Hessian is lifted by the linear stiffness while it is not positive definite, and a step is halved until the
 * energy falls, so that a minimum is reached from any start.
 */
final class VonKarman {
    private static final int MOST_STEPS = 60;
    private static final int LOAD_STEPS = 10;
    private static final double TOLERANCE = 1e-8;

    private final Basis basis;
    private final int[] active;
    private final int others;
    private final DMatrixRMaj linear;
    private final Vector3 initial;
    private final DMatrixRMaj fullLoad;
    private final Stretching stretching;
    private final Newton newton;

    VonKarman(Basis basis, Section section, List<PanelLoad> loads) {
        this.basis = basis;
        double[] vector = LoadVector.of(basis, section, loads);
        PanelLoad.EdgeForces forces = PanelLoad.EdgeForces.sum(loads);
        boolean[] characters = characters(basis, vector, section.isShearCoupled() || forces.Nxy() != 0);
        active = active(basis, characters);
        others = (int) IntStream.of(active)
                .filter(i -> basis.unknown(i).field() != Field.W)
                .count();
        Form energy = Form.strainEnergy(basis.kinematics(), section);
        DMatrixRMaj bending = energy.matrix(basis, active);
        linear = bending.copy();
        CommonOps_DDRM.addEquals(linear, Form.shortening(forces).matrix(basis, active));
        initial = Ritz.initialStrain(section, loads);
        fullLoad =
                new DMatrixRMaj(IntStream.of(active).mapToDouble(i -> vector[i]).toArray());
        stretching = new Stretching(basis, section, active, characters);
        Envelope decomposed = energy.envelope(basis, Arrays.copyOf(active, others));
        decomposed.decompose();
        newton = new Newton(others, decomposed, bending, linear);
    }

    /** The unknowns called up: deflections last, the others in the order of their powers. */
    private static int[] active(Basis basis, boolean[] characters) {
        return IntStream.range(0, basis.size())
                .filter(i -> characters[basis.unknown(i).character()])
                .boxed()
                .sorted(Comparator.<Integer, Boolean>comparing(
                                i -> basis.unknown(i).field() == Field.W)
                        .thenComparing(basis.byRank()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Which characters a load can call up: those it has, and what products of them have (sums of characters). */
    private static boolean[] characters(Basis basis, double[] load, boolean shearCoupled) {
        boolean[] reached = new boolean[4];
        reached[0] = true;
        for (int i = 0; i < load.length; i++) {
            if (load[i] != 0) {
                reached[basis.unknown(i).character()] = true;
            }
        }
        reached[basis.reversal()] |= shearCoupled;
        int count = (reached[1] ? 1 : 0) + (reached[2] ? 1 : 0) + (reached[3] ? 1 : 0);
        return count > 1 ? new boolean[] {true, true, true, true} : reached;
    }

    /**
     * Solves from a start, which may be of another order; if that leads nowhere, from the panel at rest in steps of the
     * load.
     *
     * @return the state; empty if neither comes to rest
     */
    Optional<PanelState> solve(PanelState start) {
        return fromStart(prolonged(start), 1).map(this::state).or(this::solveInSteps);
    }

    /** Solves from the panel at rest in steps of the load, each from the state before. */
    Optional<PanelState> solveInSteps() {
        Optional<DMatrixRMaj> state = Optional.of(new DMatrixRMaj(active.length, 1));
        for (int step = 1; step <= LOAD_STEPS; step++) {
            double share = (double) step / LOAD_STEPS;
            state = state.flatMap(from -> fromStart(from, share));
        }
        return state.map(this::state);
    }

    private Optional<DMatrixRMaj> fromStart(DMatrixRMaj a, double share) {
        DMatrixRMaj load = fullLoad.copy();
        CommonOps_DDRM.scale(share, load);
        boolean settled = false;
        for (int step = 0; step < MOST_STEPS && !settled; step++) {
            stretching.at(a);
            DMatrixRMaj residual = residual(a, load);
            DMatrixRMaj move = newton.step(stretching.stiffness(others), residual);
            double decrement = CommonOps_DDRM.dot(residual, move);
            double work = Math.abs(CommonOps_DDRM.dot(load, a)) + Math.abs(decrement);
            settled = decrement <= TOLERANCE * work;
            advance(a, move, decrement, load);
        }
        return settled ? Optional.of(a) : Optional.empty();
    }

    private PanelState state(DMatrixRMaj a) {
        double[] factors = new double[basis.size()];
        for (int i = 0; i < active.length; i++) {
            factors[active[i]] = a.get(i);
        }
        return new PanelState(basis, factors, true, initial);
    }

    /** Whether the last solution rests in a minimum without being held there. */
    boolean isStable() {
        return newton.isStable();
    }

    private DMatrixRMaj prolonged(PanelState start) {
        Map<Basis.Unknown, Double> known = IntStream.range(0, start.basis().size())
                .boxed()
                .collect(Collectors.toMap(i -> start.basis().unknown(i), i -> start.factors()[i]));
        return new DMatrixRMaj(IntStream.of(active)
                .mapToDouble(i -> known.getOrDefault(basis.unknown(i), 0.0))
                .toArray());
    }

    private DMatrixRMaj residual(DMatrixRMaj a, DMatrixRMaj load) {
        DMatrixRMaj residual = load.copy();
        CommonOps_DDRM.multAdd(-1, linear, a, residual);
        stretching.subtractForce(residual);
        return residual;
    }

    private void advance(DMatrixRMaj a, DMatrixRMaj move, double decrement, DMatrixRMaj load) {
        double before = energy(a, load);
        double share = 1;
        DMatrixRMaj next = a.copy();
        CommonOps_DDRM.addEquals(next, share, move);
        while (share > 1e-6 && energy(next, load) > before - 1e-4 * share * decrement + 1e-12 * Math.abs(before)) {
            share /= 2;
            CommonOps_DDRM.add(a, share, move, next);
        }
        a.setTo(next);
    }

    private double energy(DMatrixRMaj a, DMatrixRMaj load) {
        DMatrixRMaj force = new DMatrixRMaj(active.length, 1);
        CommonOps_DDRM.mult(linear, a, force);
        return CommonOps_DDRM.dot(force, a) / 2 - CommonOps_DDRM.dot(load, a) + stretching.energy(a);
    }
}
