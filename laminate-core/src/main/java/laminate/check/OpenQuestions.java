package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import laminate.estimate.LaidLayer;
import laminate.estimate.StrengthOrigin;
import laminate.estimate.ZoneEstimate;
import laminate.part.ReserveKind;
import laminate.theory.Lamina;
import laminate.theory.Ply;

/** What of a zone's laminate cannot be judged, for want of a figure. */
final class OpenQuestions {
    private final ZoneEstimate zone;
    private final MakeUp makeUp;

    OpenQuestions(ZoneEstimate zone, MakeUp makeUp) {
        this.zone = zone;
        this.makeUp = makeUp;
    }

    /** Plies without strength, mould face first. */
    List<NotJudged> notJudged() {
        List<NotJudged> found = new ArrayList<>();
        int number = 0;
        for (LaidLayer layer : zone.layers()) {
            for (StrengthOrigin strength : layer.strengths()) {
                if (!strength.isKnown()) {
                    found.add(new NotJudged(number, layer.layer().material(), strength.text()));
                }
                number++;
            }
        }
        return found;
    }

    /** Plies whose shear moduli across the thickness are assumed. */
    List<Integer> assumedShear() {
        List<Ply> plies = makeUp.laminate().plies();
        return IntStream.range(0, plies.size())
                .filter(i -> plies.get(i).lamina().transverseShearAssumed())
                .boxed()
                .toList();
    }

    /** Whether a ply that might fail in this way cannot be judged. */
    boolean leaveOpen(ReserveKind kind) {
        return switch (kind) {
            case FIRST_PLY -> isAnyWithoutStrength(false);
            case LAST_PLY -> isAnyWithoutStrength(false) || isAnyWithoutStrength(true);
            case CORE_SHEAR, CRUSHING -> isAnyWithoutStrength(true);
            case INDENTATION -> makeUp.isSandwich() && !notJudged().isEmpty();
            case DIMPLING ->
                makeUp.cores().values().stream()
                        .anyMatch(core -> core.cellular() && core.cellSize().isEmpty());
            case WRINKLING, SHEAR_CRIMPING, BUCKLING -> false;
        };
    }

    private boolean isAnyWithoutStrength(boolean core) {
        List<Ply> plies = makeUp.laminate().plies();
        return IntStream.range(0, plies.size())
                .filter(i -> makeUp.isCore(i) == core)
                .mapToObj(plies::get)
                .map(Ply::lamina)
                .map(Lamina::strength)
                .anyMatch(Optional::isEmpty);
    }
}
