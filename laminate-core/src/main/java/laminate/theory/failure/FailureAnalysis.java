package laminate.theory.failure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.PlyPoint;

/**
 * Reserve factors of every ply of a laminate under a load, at three points each, as long as nothing has failed.
 *
 * <p>Linear elastic: stresses are those of {@link Laminate#responseTo}. Plies without strength are not judged and are
 * listed by {@link #notJudged()}.
 */
public final class FailureAnalysis {
    private static final int POINTS = PlyPoint.At.values().length;

    private final List<LoadedPoint> points;

    FailureAnalysis(List<LoadedPoint> points) {
        this.points = points;
    }

    /**
     * An analysis in which the mechanical load grows and the residual stress of temperature and moisture stays.
     *
     * @param laminate the laminate
     * @param load the load; {@link LaminateLoad#mechanical()} of it leaves residual stress out
     * @return the analysis
     * @throws IllegalArgumentException if the laminate cannot answer the load, see {@link Laminate#responseTo}
     */
    public static FailureAnalysis of(Laminate laminate, LaminateLoad load) {
        return of(laminate, load.residual(), load.mechanical());
    }

    /**
     * An analysis of any constant load and any that grows. For the two to add up, they must hold the same strains.
     *
     * @param laminate the laminate
     * @param constant what does not grow
     * @param growing what the reserve factor multiplies
     * @return the analysis
     * @throws IllegalArgumentException if the laminate cannot answer a load
     */
    public static FailureAnalysis of(Laminate laminate, LaminateLoad constant, LaminateLoad growing) {
        return new FailureAnalysis(
                LoadedPoint.of(laminate, laminate.responseTo(constant), laminate.responseTo(growing)));
    }

    List<LoadedPoint> points() {
        return points;
    }

    /**
     * The reserve factor of one point by one criterion.
     *
     * @param ply number of the ply, 0 at the mould face
     * @param at where in the ply
     * @param criterion the criterion
     * @return the factor; empty if the criterion does not apply to the ply or is never reached
     * @throws IndexOutOfBoundsException if there is no such ply
     */
    public Optional<ReserveFactor> reserve(int ply, PlyPoint.At at, Criterion criterion) {
        LoadedPoint point = points.get(POINTS * ply + at.ordinal());
        return criterion.reserve(point.lamina(), point.path());
    }

    /**
     * The reserve factors of every point by what the chosen criterion calls in for it, see {@link Criterion#inFor}.
     *
     * @param chosen the criterion
     * @return mould face first; points without a factor are left out
     */
    public List<PlyReserve> reserves(Criterion chosen) {
        List<PlyReserve> found = new ArrayList<>();
        for (LoadedPoint point : points) {
            point.least(chosen).ifPresent(reserve -> found.add(point.with(reserve)));
        }
        return found;
    }

    /**
     * First-ply failure: the least reserve factor of all plies and points.
     *
     * @param chosen the criterion for plies with directions; mats and cores have their own
     * @return ply, place, factor and mode, of several alike the one nearest to the mould face; empty if nothing fails
     */
    public Optional<PlyReserve> firstPly(Criterion chosen) {
        return reserves(chosen).stream().min(Comparator.comparingDouble(PlyReserve::factor));
    }

    /**
     * The plies that no criterion judges because their strength is unknown.
     *
     * @return numbers of plies, 0 at the mould face
     */
    public List<Integer> notJudged() {
        return IntStream.range(0, points.size() / POINTS)
                .filter(ply -> points.get(POINTS * ply).lamina().strength().isEmpty())
                .boxed()
                .toList();
    }
}
