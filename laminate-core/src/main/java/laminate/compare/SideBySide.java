package laminate.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.estimate.LaidLayer;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;

/**
 * A part made in several ways, side by side; differences are to the first.
 *
 * <pre>{@code
 * SideBySide ways = SideBySide.of(List.of(byHand, infused), CompareOptions.USUAL.with(Basis.SAME_STIFFNESS));
 * double heavier = ways.row(Measure.MASS).difference(1).getAsDouble();
 * }</pre>
 *
 * @param options what the comparison goes by
 * @param alternatives the ways that can be, in the order given; at least one
 * @param refusals the ways that cannot, in the order given
 */
public record SideBySide(CompareOptions options, List<Alternative> alternatives, List<Refusal> refusals) {
    /**
     * Keeps copies.
     *
     * @param options what the comparison goes by
     * @param alternatives the ways that can be
     * @param refusals the ways that cannot
     * @throws IllegalArgumentException if no way can be, or two are called alike
     */
    public SideBySide {
        Objects.requireNonNull(options, "options");
        alternatives = List.copyOf(alternatives);
        refusals = List.copyOf(refusals);
        if (alternatives.isEmpty()) {
            throw new IllegalArgumentException(
                    "there is no way to compare" + (refusals.isEmpty() ? "" : "; " + reasons(refusals)));
        }
        checkDistinct(alternatives, refusals);
    }

    private static String reasons(List<Refusal> refusals) {
        return refusals.stream()
                .map(refusal -> refusal.name() + ": " + refusal.reason())
                .collect(Collectors.joining("; "));
    }

    private static void checkDistinct(List<Alternative> alternatives, List<Refusal> refusals) {
        Set<String> names = new HashSet<>();
        Stream.concat(
                        alternatives.stream().map(Alternative::name),
                        refusals.stream().map(Refusal::name))
                .forEach(name -> {
                    if (!names.add(name)) {
                        throw new IllegalArgumentException("two ways to make a part are called " + name);
                    }
                });
    }

    /**
     * Estimates, changes and checks every way to make a part. One that cannot be stands with its reason; the first that can
     * is what the others are compared with.
     *
     * @param candidates the ways, the first is what the others are compared with
     * @param options what to go by
     * @return the comparison
     * @throws IllegalArgumentException if no way can be, or two are called alike
     */
    public static SideBySide of(List<Candidate> candidates, CompareOptions options) {
        return new Comparing(options).compare(candidates);
    }

    /**
     * This comparison with ways that were found impossible before they could be estimated, by reading their file.
     *
     * @param more the ways that cannot be
     * @return the copy
     */
    public SideBySide withRefusals(List<Refusal> more) {
        return new SideBySide(
                options,
                alternatives,
                Stream.concat(refusals.stream(), more.stream()).toList());
    }

    /**
     * Every figure, of the part, its zones, load cases, panels and beams.
     *
     * @return a line for each, part first
     */
    public List<Row> rows() {
        return Rows.of(alternatives);
    }

    /**
     * One figure of the part.
     *
     * @param measure which figure
     * @return its line
     * @throws IllegalArgumentException if it is not one of the part
     */
    public Row row(Measure measure) {
        return Rows.ofParts(alternatives).stream()
                .filter(row -> row.measure() == measure)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(measure.words() + " is not told of a part"));
    }

    /**
     * The cost of one part, line by line; the heads and the total after their lines. Without set-up and moulds, which are
     * in the curve.
     *
     * @return a line for each, empty where no alternative has prices
     */
    public List<CostRow> costs() {
        return CostRows.of(alternatives);
    }

    /**
     * At how many parts one alternative overtakes another.
     *
     * @return for each pair that changes places, by number of parts
     */
    public List<BreakEven> breakEvens() {
        List<BreakEven> found = new ArrayList<>();
        for (int i = 0; i < alternatives.size(); i++) {
            for (int j = i + 1; j < alternatives.size(); j++) {
                between(alternatives.get(i), alternatives.get(j)).ifPresent(found::add);
            }
        }
        found.sort(Comparator.comparingInt(BreakEven::parts));
        return List.copyOf(found);
    }

    /**
     * Numbers of parts to draw the curves at: 1, 2, 5, 10 and so on beyond the last that matters, the number of the part
     * file, either side of each break-even and of each new mould near them.
     *
     * @return numbers of parts, rising; empty where no alternative has a curve
     */
    public SortedSet<Integer> counts() {
        return Collections.unmodifiableSortedSet(Counts.of(alternatives, breakEvens()));
    }

    /**
     * Why the zones of the others are stiffer or softer in bending than those of the first.
     *
     * @return one for each zone of each other alternative that has its like in the first
     */
    public List<StiffnessSplit> splits() {
        return alternatives.stream().skip(1).flatMap(this::splits).toList();
    }

    /**
     * Whether every way lays the same materials at the same areal weights in the same zones, so that only the way they are
     * made, or their resin, differs.
     *
     * @return false where schedules, parts or what was made equal differ
     */
    public boolean isOneLayUp() {
        return alternatives.stream()
                        .map(way -> layUp(way.estimate()))
                        .distinct()
                        .count()
                == 1;
    }

    private static List<List<Object>> layUp(PartEstimate estimate) {
        List<List<Object>> layers = new ArrayList<>();
        for (ZoneEstimate zone : estimate.zones()) {
            layers.add(List.of(zone.zone().name(), zone.zone().area()));
            for (LaidLayer laid : zone.layers()) {
                layers.add(List.of(laid.layer().material(), laid.fibreMass(), laid.coreMass(), laid.givenMass()));
            }
        }
        return layers;
    }

    /**
     * What to mind when reading the comparison.
     *
     * @return sentences
     */
    public List<String> remarks() {
        return Remarks.of(this);
    }

    private static Optional<BreakEven> between(Alternative one, Alternative other) {
        return one.curve()
                .flatMap(ofOne ->
                        other.curve().flatMap(ofOther -> Overtaking.between(one.name(), ofOne, other.name(), ofOther)));
    }

    private Stream<StiffnessSplit> splits(Alternative way) {
        PartEstimate first = alternatives.get(0).estimate();
        return IntStream.range(0, way.estimate().zones().size())
                .boxed()
                .flatMap(i -> ZoneMatch.of(first, way.estimate(), i)
                        .map(like ->
                                split(way.name(), like, way.estimate().zones().get(i)))
                        .stream());
    }

    private StiffnessSplit split(String name, ZoneEstimate first, ZoneEstimate zone) {
        return new StiffnessSplit(
                name,
                zone.zone().name(),
                zone.laminate().thickness() / first.laminate().thickness(),
                Rows.bendingModulus(zone, options.along()) / Rows.bendingModulus(first, options.along()));
    }
}
