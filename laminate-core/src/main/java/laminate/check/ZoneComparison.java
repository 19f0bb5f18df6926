package laminate.check;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import laminate.estimate.Cost;
import laminate.estimate.CostHead;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.theory.Equivalence;
import laminate.theory.Equivalence.Stiffness;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Ply;
import laminate.theory.StiffnessRatios;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.FailureAnalysis;
import laminate.theory.failure.PlyReserve;

/**
 * What may replace the laminate of one zone by that of another. Ratios are candidate by reference.
 *
 * @param reference what is to be replaced
 * @param candidate what may replace it
 * @param equivalence their stiffnesses, and the thickness that would make them equal
 * @param strength their first-ply strengths by the criterion that decides
 */
public record ZoneComparison(
        ZoneEstimate reference, ZoneEstimate candidate, Equivalence equivalence, StrengthRatios strength) {
    private static final double AREA = 1000;

    /**
     * Checks that all are there.
     *
     * @param reference what is to be replaced
     * @param candidate what may replace it
     * @param equivalence their stiffnesses
     * @param strength their first-ply strengths
     */
    public ZoneComparison {
        Objects.requireNonNull(reference, "reference");
        Objects.requireNonNull(candidate, "candidate");
        Objects.requireNonNull(equivalence, "equivalence");
        Objects.requireNonNull(strength, "strength");
    }

    /**
     * Compares two zones of a part.
     *
     * @param estimate the part as it lies
     * @param reference the name of the zone to be replaced
     * @param candidate the name of the zone that may replace it
     * @param options what to go by
     * @return the comparison
     * @throws IllegalArgumentException if none or more than one zone is called so
     */
    public static ZoneComparison of(PartEstimate estimate, String reference, String candidate, CheckOptions options) {
        return of(zone(estimate, reference), zone(estimate, candidate), options);
    }

    /**
     * Compares two zones, maybe of two parts.
     *
     * @param reference what is to be replaced
     * @param candidate what may replace it
     * @param options what to go by
     * @return the comparison
     */
    public static ZoneComparison of(ZoneEstimate reference, ZoneEstimate candidate, CheckOptions options) {
        Equivalence equivalence = new Equivalence(reference.laminate(), candidate.laminate());
        return new ZoneComparison(
                reference,
                candidate,
                equivalence,
                strength(reference.laminate(), candidate.laminate(), options.criterion()));
    }

    private static ZoneEstimate zone(PartEstimate estimate, String name) {
        Zone zone = estimate.part().zone(name);
        return estimate.zones().get(estimate.part().zones().indexOf(zone));
    }

    private static StrengthRatios strength(Laminate reference, Laminate candidate, Criterion criterion) {
        Map<Term, OptionalDouble> ratios = new EnumMap<>(Term.class);
        for (Term term : List.of(Term.MX, Term.MY, Term.NX, Term.NY)) {
            OptionalDouble of = failure(candidate, term, criterion);
            OptionalDouble by = failure(reference, term, criterion);
            ratios.put(
                    term,
                    of.isPresent() && by.isPresent()
                            ? OptionalDouble.of(of.getAsDouble() / by.getAsDouble())
                            : OptionalDouble.empty());
        }
        return new StrengthRatios(ratios.get(Term.MX), ratios.get(Term.MY), ratios.get(Term.NX), ratios.get(Term.NY));
    }

    /** The value of a term at which the first ply fails; of a moment in its weaker sense, of a force in tension. */
    private static OptionalDouble failure(Laminate laminate, Term term, Criterion criterion) {
        OptionalDouble forth = failure(laminate, LaminateLoad.NONE.with(term, 1), criterion);
        boolean moment = term == Term.MX || term == Term.MY;
        if (!moment || forth.isEmpty()) {
            return forth;
        }
        OptionalDouble back = failure(laminate, LaminateLoad.NONE.with(term, -1), criterion);
        return back.isEmpty() ? back : OptionalDouble.of(Math.min(forth.getAsDouble(), back.getAsDouble()));
    }

    private static OptionalDouble failure(Laminate laminate, LaminateLoad unit, Criterion criterion) {
        FailureAnalysis analysis = FailureAnalysis.of(laminate, unit);
        return analysis.notJudged().isEmpty()
                ? analysis.firstPly(criterion).stream()
                        .mapToDouble(PlyReserve::factor)
                        .findFirst()
                : OptionalDouble.empty();
    }

    /**
     * Bending along x and y, and twist.
     *
     * @return the ratios
     */
    public StiffnessRatios bending() {
        return equivalence.bending();
    }

    /**
     * Stretching along x and y, and in-plane shear.
     *
     * @return the ratios
     */
    public StiffnessRatios membrane() {
        return equivalence.membrane();
    }

    /**
     * Thickness without coatings.
     *
     * @return the ratio
     */
    public double thickness() {
        return ratio(zone -> zone.thickness().planned());
    }

    /**
     * Mass per area of everything, coatings included.
     *
     * @return the ratio
     */
    public double mass() {
        return ratio(zone -> zone.massPerArea().planned());
    }

    private double ratio(ToDoubleFunction<ZoneEstimate> of) {
        return of.applyAsDouble(candidate) / of.applyAsDouble(reference);
    }

    /**
     * Cost of the materials per area, without what is trimmed off.
     *
     * @param estimator the workshop and prices to reckon with
     * @return the ratio; empty without prices, or where one is missing
     */
    public OptionalDouble cost(Estimator estimator) {
        OptionalDouble of = materials(candidate.zone(), estimator);
        OptionalDouble by = materials(reference.zone(), estimator);
        return of.isPresent() && by.isPresent() && by.getAsDouble() > 0
                ? OptionalDouble.of(of.getAsDouble() / by.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Of an area so large that rounding to the smallest coin does not count. */
    private static OptionalDouble materials(Zone zone, Estimator estimator) {
        Zone large = new Zone(
                zone.name(),
                AREA,
                1,
                zone.coatings(),
                zone.layers(),
                Optional.empty(),
                zone.contents(),
                Measured.NOTHING);
        PartEstimate estimate = estimator.estimate(Part.of(zone.name(), List.of(large)));
        return new CostHead(estimate, Cost.Category.MATERIALS)
                .sum()
                .map(sum -> sum.amount().doubleValue() / AREA)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /**
     * The thickest core of the candidate, by which it may be made as stiff.
     *
     * @return number of its ply, 0 at the mould face; empty for a solid laminate
     */
    public OptionalInt core() {
        List<Ply> plies = candidate.laminate().plies();
        return IntStream.range(0, plies.size())
                .filter(i -> plies.get(i).isCore())
                .boxed()
                .max(Comparator.comparingDouble(i -> plies.get(i).thickness()))
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
    }

    /**
     * The thickness of that core at which a stiffness is equal, the faces left as they are.
     *
     * @param what which stiffness
     * @return thickness (m); empty for a solid laminate, or where the faces alone are stiff enough or no core is
     */
    public OptionalDouble coreThicknessAtEqual(Stiffness what) {
        return core().isPresent()
                ? equivalence.thicknessOf(what, core().getAsInt()).thickness()
                : OptionalDouble.empty();
    }

    /**
     * The factor on every layer of the candidate at which a stiffness is equal.
     *
     * @param what which stiffness
     * @return the factor; below 1 the candidate may be thinner
     */
    public double thicknessFactorAtEqual(Stiffness what) {
        return equivalence.thicknessFactor(what);
    }
}
