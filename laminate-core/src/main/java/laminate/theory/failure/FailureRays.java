package laminate.theory.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateResponse;

/** First-ply failure along rays in the plane of two terms, from three answers of the laminate for all rays. */
final class FailureRays {
    private final List<LoadedPoint> alongX;
    private final List<LoadedPoint> alongY;
    private final List<LoadedPoint> alongBoth;
    private final Criterion chosen;

    FailureRays(
            Laminate laminate,
            LaminateLoad still,
            LaminateLoad x,
            LaminateLoad y,
            LaminateLoad both,
            Criterion chosen) {
        LaminateResponse constant = laminate.responseTo(still);
        alongX = LoadedPoint.of(laminate, constant, laminate.responseTo(x));
        alongY = LoadedPoint.of(laminate, constant, laminate.responseTo(y));
        alongBoth = LoadedPoint.of(laminate, constant, laminate.responseTo(both));
        this.chosen = chosen;
    }

    /** The first failure when the terms grow as c and s times their units. */
    Optional<PlyReserve> first(double c, double s) {
        List<LoadedPoint> points = new ArrayList<>(alongX.size());
        for (int i = 0; i < alongX.size(); i++) {
            points.add(alongX.get(i)
                    .along(alongX.get(i)
                            .path()
                            .combined(
                                    c, alongY.get(i).path(), s, alongBoth.get(i).path())));
        }
        return new FailureAnalysis(points).firstPly(chosen);
    }
}
