package laminate.compare;

import java.util.List;
import java.util.Objects;
import java.util.SortedSet;

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
        return new SideBySide(options, alternatives, more);
    }

    /**
     * Every figure, of the part, its zones, load cases, panels and beams.
     *
     * @return a line for each, part first
     */
    public List<Row> rows() {
        return List.of();
    }

    /**
     * One figure of the part.
     *
     * @param measure which figure
     * @return its line
     * @throws IllegalArgumentException if it is not one of the part
     */
    public Row row(Measure measure) {
        throw new IllegalArgumentException(measure + " is not of the part");
    }

    /**
     * The cost of one part, line by line; the heads and the total after their lines. Without set-up and moulds, which are
     * in the curve.
     *
     * @return a line for each, empty where no alternative has prices
     */
    public List<CostRow> costs() {
        return List.of();
    }

    /**
     * At how many parts one alternative overtakes another.
     *
     * @return for each pair that changes places, by number of parts
     */
    public List<BreakEven> breakEvens() {
        return List.of();
    }

    /**
     * Numbers of parts to draw the curves at: 1, 2, 5, 10 and so on beyond the last that matters, the number of the part
     * file, either side of each break-even and of each new mould near them.
     *
     * @return numbers of parts, rising; empty where no alternative has a curve
     */
    public SortedSet<Integer> counts() {
        return java.util.Collections.emptySortedSet();
    }

    /**
     * Why the zones of the others are stiffer or softer in bending than those of the first.
     *
     * @return one for each zone of each other alternative that has its like in the first
     */
    public List<StiffnessSplit> splits() {
        return List.of();
    }

    /**
     * What to mind when reading the comparison.
     *
     * @return sentences
     */
    public List<String> remarks() {
        return List.of();
    }
}
