package laminate.theory.panel;

import java.util.Arrays;
import java.util.List;
import laminate.theory.Vector3;

/** The state of least potential energy under loads, for small deflection. */
final class Ritz {
    private Ritz() {}

    static PanelState solve(Basis basis, Section section, List<PanelLoad> loads) {
        double[] load = LoadVector.of(basis, section, loads);
        Form energy = Form.strainEnergy(basis.kinematics(), section);
        if (basis.pieces() > 1) {
            return new PanelState(basis, Condensation.solve(basis, energy, load), false, initialStrain(section, loads));
        }
        double[] factors = new double[basis.size()];
        for (int[] group : basis.groups(section.isShearCoupled())) {
            double[] part = Arrays.stream(group).mapToDouble(i -> load[i]).toArray();
            if (Arrays.stream(part).anyMatch(x -> x != 0)) {
                double[] solution = energy.envelope(basis, group).solve(part);
                for (int i = 0; i < group.length; i++) {
                    factors[group[i]] = solution[i];
                }
            }
        }
        return new PanelState(basis, factors, false, initialStrain(section, loads));
    }

    /** The strain of the forces in the plane, from which the supports hold. */
    static Vector3 initialStrain(Section section, List<PanelLoad> loads) {
        return section.strainOf(PanelLoad.EdgeForces.sum(loads));
    }
}
