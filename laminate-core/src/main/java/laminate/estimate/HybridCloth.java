package laminate.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import laminate.material.Form;
import laminate.material.Reinforcement;
import laminate.theory.Deformation;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.theory.Ply;
import laminate.theory.ReducedStiffness;

/**
 * A cloth woven of two fibres is one ply: its yarns lie side by side, not one fibre over the other. Its make-up lists them
 * as plies, so they are joined to one ply of their mean stiffness, or of the stiffness as measured; left apart they would
 * couple stretching and bending. Its strength is known only if measured: yarns of the stiffer fibre break first and load the
 * others.
 */
final class HybridCloth {

    private static final String NO_STRENGTH =
            "a cloth of two fibres breaks as neither of them; it wants measured strengths";

    private HybridCloth() {}

    static List<LaidPly> joined(Reinforcement reinforcement, List<LaidPly> laid) {
        List<Ply> plies = LaidPly.plies(laid);
        double angle = plies.get(0).angleDegrees();
        if (plies.size() == 1 || !isWoven(reinforcement) || !liesAt(angle, plies)) {
            return laid;
        }
        return List.of(
                reinforcement.measured().isPresent()
                        ? new LaidPly(
                                new Ply(plies.get(0).lamina(), thickness(plies), angle),
                                laid.get(0).strength())
                        : new LaidPly(join(plies, angle), StrengthOrigin.missing(NO_STRENGTH)));
    }

    private static boolean isWoven(Reinforcement reinforcement) {
        return reinforcement.plies().stream().allMatch(ply -> ply.form().architecture() == Form.Architecture.WOVEN);
    }

    private static boolean liesAt(double angle, List<Ply> plies) {
        return plies.stream().allMatch(ply -> ply.angleDegrees() == angle);
    }

    private static double thickness(List<Ply> plies) {
        return plies.stream().mapToDouble(Ply::thickness).sum();
    }

    /** The mean over the volume is the membrane stiffness of the plies laid symmetrically. */
    private static Ply join(List<Ply> plies, double angle) {
        List<Ply> symmetric = new ArrayList<>();
        plies.forEach(ply -> symmetric.add(new Ply(ply.lamina(), ply.thickness(), 0)));
        List<Ply> mirrored = new ArrayList<>(symmetric);
        Collections.reverse(mirrored);
        symmetric.addAll(mirrored);
        Laminate laminate = Laminate.of(symmetric);
        Matrix3 mean = laminate.membrane().times(1 / laminate.thickness());
        Lamina lamina =
                Lamina.from(new ReducedStiffness(mean.get(0, 0), mean.get(0, 1), mean.get(1, 1), 0, 0, mean.get(2, 2)));
        Lamina joint = laminate.thermalExpansion()
                .map(Deformation::strain)
                .map(alpha -> lamina.withExpansion(alpha.x(), alpha.y()))
                .orElse(lamina);
        return new Ply(joint, laminate.thickness() / 2, angle);
    }
}
