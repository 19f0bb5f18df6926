package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.BeamPlan;
import laminate.part.ReserveKind;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.PointLoad;
import laminate.theory.beam.Supports;
import laminate.theory.failure.FailureAnalysis;
import laminate.theory.failure.PlyReserve;
import laminate.theory.sandwich.Face;
import laminate.theory.sandwich.LocalCheck;
import laminate.theory.sandwich.LocalChecks;
import laminate.theory.sandwich.LocalMode;
import laminate.theory.sandwich.Sandwich;

/**
 * Indentation of a sandwich beam under its point loads and over its supports.
 *
 * <p>A force over a bearing length a is carried by the core under it, σc a per width, and by what a line load is carried
 * by on either side of it, where the face lies as flat as under a line load.
 */
final class BeamIndentation {
    private final BeamPlan plan;
    private final MakeUp makeUp;
    private final CheckOptions options;

    BeamIndentation(BeamPlan plan, MakeUp makeUp, CheckOptions options) {
        this.plan = plan;
        this.makeUp = makeUp;
        this.options = options;
    }

    List<Reserve> reserves(BeamResponse response) {
        List<Reserve> found = new ArrayList<>();
        List<Sandwich> sandwiches = makeUp.sandwiches();
        if (sandwiches.isEmpty()) {
            return found;
        }
        for (PointLoad load : plan.load().points()) {
            press(found, sandwiches, load.force(), load.position());
        }
        if (plan.supports() == Supports.SIMPLY_SUPPORTED) {
            press(found, sandwiches, -response.startReaction(), 0);
            press(found, sandwiches, -response.endReaction(), plan.span());
        }
        return found;
    }

    /** A force towards +z presses on the mould face of the outermost core, one towards −z on the inner face. */
    private void press(List<Reserve> found, List<Sandwich> sandwiches, double force, double x) {
        boolean mould = force > 0;
        Sandwich sandwich = sandwiches.get(mould ? 0 : sandwiches.size() - 1);
        Face face = mould ? Face.MOULD_FACE : Face.INNER_FACE;
        OptionalDouble strength = bendingStrength(sandwich, face);
        if (strength.isEmpty()) {
            return;
        }
        LocalChecks checks = makeUp.localChecks(sandwich);
        checks.indentation(face, force / plan.width(), strength.getAsDouble())
                .map(line -> spread(line, checks.core().compressiveStrength()))
                .ifPresent(check ->
                        found.add(Reserve.of(ReserveKind.INDENTATION, check).at(x)));
    }

    private LocalCheck spread(LocalCheck line, OptionalDouble coreStrength) {
        double under = plan.bearingLength().orElse(0) * coreStrength.orElse(0);
        double capacity = line.capacity() + under;
        return new LocalCheck(LocalMode.INDENTATION, line.face(), line.demand(), capacity, capacity / line.demand());
    }

    /**
     * 6 M/t² at the moment of first-ply failure of the face bent by itself with tension on its core side (Pa).
     *
     * @return the strength; empty if a ply of the face has none
     */
    private OptionalDouble bendingStrength(Sandwich sandwich, Face face) {
        var laminate = sandwich.face(face);
        double sense = face == Face.MOULD_FACE ? 1 : -1;
        FailureAnalysis analysis = FailureAnalysis.of(laminate, LaminateLoad.NONE.with(Term.MX, sense));
        Optional<PlyReserve> first =
                analysis.notJudged().isEmpty() ? analysis.firstPly(options.criterion()) : Optional.empty();
        double t = laminate.thickness();
        return first.stream().mapToDouble(ply -> 6 * ply.factor() / (t * t)).findFirst();
    }
}
