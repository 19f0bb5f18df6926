package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.theory.Ply;

/** A ply with the origin of its strength. */
record LaidPly(Ply ply, StrengthOrigin strength) {

    static List<Ply> plies(List<LaidPly> laid) {
        List<Ply> plies = new ArrayList<>();
        for (LaidPly each : laid) {
            plies.add(each.ply());
        }
        return plies;
    }

    static List<StrengthOrigin> strengths(List<LaidPly> laid) {
        List<StrengthOrigin> strengths = new ArrayList<>();
        for (LaidPly each : laid) {
            strengths.add(each.strength());
        }
        return strengths;
    }
}
