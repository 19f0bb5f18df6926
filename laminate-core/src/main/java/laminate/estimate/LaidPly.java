package laminate.estimate;

import java.util.List;
import laminate.theory.Ply;

/** A ply with the origin of its strength. */
record LaidPly(Ply ply, StrengthOrigin strength) {

    static List<Ply> plies(List<LaidPly> laid) {
        return laid.stream().map(LaidPly::ply).toList();
    }

    static List<StrengthOrigin> strengths(List<LaidPly> laid) {
        return laid.stream().map(LaidPly::strength).toList();
    }
}
