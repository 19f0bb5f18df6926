package laminate.theory;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How a candidate laminate compares with the one it may replace: what may stand for 6 mm of mat and roving.
 *
 * <p>Stiffnesses are those of the laminate free to couple, 1/a11 and 1/d11 of the 6×6 inverse and so on; that of bending
 * along x times a width is the EI of a narrow strip. Ratios are candidate by reference. Strength, cost and transverse
 * shear are not looked at; a thin sandwich of equal bending stiffness deflects more by its core's shear.
 *
 * @param reference what is to be replaced
 * @param candidate what may replace it
 */
public record Equivalence(Laminate reference, Laminate candidate) {
    /** Cores beyond this thickness are no answer (m). */
    private static final double THICKEST_CORE = 10;
    /** Where the search for a thickness begins (m). */
    private static final double THINNEST = 1e-6;

    /** What is to be made equal. */
    public enum Stiffness {
        /** Bending along x, 1/d11. */
        BENDING_X(c -> 1 / c.d().m11()),
        /** Bending along y, 1/d22. */
        BENDING_Y(c -> 1 / c.d().m22()),
        /** Twist, 1/d66. */
        TWIST(c -> 1 / c.d().m66()),
        /** Stretching along x, 1/a11. */
        STRETCHING_X(c -> 1 / c.a().m11()),
        /** Stretching along y, 1/a22. */
        STRETCHING_Y(c -> 1 / c.a().m22()),
        /** In-plane shear, 1/a66. */
        SHEAR(c -> 1 / c.a().m66());

        private final ToDoubleFunction<Compliance> stiffness;

        Stiffness(ToDoubleFunction<Compliance> stiffness) {
            this.stiffness = stiffness;
        }

        /**
         * The stiffness of a laminate, free to couple.
         *
         * @param laminate the laminate
         * @return N·m for bending and twist, N/m for stretching and shear
         * @throws IllegalArgumentException if its stiffness is singular to working precision
         */
        public double of(Laminate laminate) {
            return stiffness.applyAsDouble(laminate.compliance());
        }

        private boolean isFlexural() {
            return ordinal() < STRETCHING_X.ordinal();
        }
    }

    /**
     * The thickness of one ply that makes the candidate as stiff as the reference.
     *
     * @param thickness of the ply (m); empty if there is none, because the rest of the plies laid without it are already
     *     as stiff or no thickness up to 10 m is enough
     * @param ratioWithout stiffness of the rest laid without the ply, by reference: 1 or more means no such ply is
     *     needed
     */
    public record PlyThickness(OptionalDouble thickness, double ratioWithout) {
        /**
         * Checks the answer.
         *
         * @param thickness of the ply (m)
         * @param ratioWithout stiffness of the rest by reference
         * @throws IllegalArgumentException if a thickness is not positive or the ratio not finite
         */
        public PlyThickness {
            Objects.requireNonNull(thickness, "thickness");
            thickness.ifPresent(t -> Require.positive("thickness", t));
            Require.finite("ratio", ratioWithout);
        }
    }

    /**
     * Checks that both are there.
     *
     * @param reference what is to be replaced
     * @param candidate what may replace it
     */
    public Equivalence {
        Objects.requireNonNull(reference, "reference");
        Objects.requireNonNull(candidate, "candidate");
    }

    /**
     * One stiffness of the candidate by that of the reference.
     *
     * @param what which stiffness
     * @return the ratio; above 1 the candidate is stiffer
     * @throws IllegalArgumentException if a stiffness is singular to working precision
     */
    public double ratio(Stiffness what) {
        return what.of(candidate) / what.of(reference);
    }

    /**
     * Bending along x and y, and twist.
     *
     * @return the ratios of 1/d11, 1/d22, 1/d66
     */
    public StiffnessRatios bending() {
        return new StiffnessRatios(ratio(Stiffness.BENDING_X), ratio(Stiffness.BENDING_Y), ratio(Stiffness.TWIST));
    }

    /**
     * Stretching along x and y, and in-plane shear.
     *
     * @return the ratios of 1/a11, 1/a22, 1/a66
     */
    public StiffnessRatios membrane() {
        return new StiffnessRatios(
                ratio(Stiffness.STRETCHING_X), ratio(Stiffness.STRETCHING_Y), ratio(Stiffness.SHEAR));
    }

    /**
     * The factor on every ply of the candidate (and so on its reinforcement and weight) that makes a stiffness equal:
     * bending grows with the cube of the thickness, stretching with the thickness.
     *
     * @param what which stiffness
     * @return the factor; below 1 the candidate may be thinner
     */
    public double thicknessFactor(Stiffness what) {
        double lacking = 1 / ratio(what);
        return what.isFlexural() ? Math.cbrt(lacking) : lacking;
    }

    /**
     * Weight of the candidate by that of the reference once its thickness is scaled by {@link #thicknessFactor}.
     *
     * @param what the stiffness that is made equal
     * @param referenceMass mass per area of the reference (kg/m²)
     * @param candidateMass mass per area of the candidate as given (kg/m²)
     * @return the ratio; below 1 the candidate is lighter for the same stiffness
     * @throws IllegalArgumentException if a mass is not positive
     */
    public double massRatioAtEqual(Stiffness what, double referenceMass, double candidateMass) {
        return thicknessFactor(what) * massRatio(referenceMass, candidateMass);
    }

    /**
     * Weight of the candidate by that of the reference.
     *
     * @param referenceMass mass per area of the reference (kg/m²)
     * @param candidateMass mass per area of the candidate (kg/m²)
     * @return the ratio
     * @throws IllegalArgumentException if a mass is not positive
     */
    public static double massRatio(double referenceMass, double candidateMass) {
        return Require.finite(
                "ratio of mass",
                Require.positive("mass per area", candidateMass) / Require.positive("mass per area", referenceMass));
    }

    /**
     * The thickness of one ply of the candidate, its core, that makes a stiffness equal; the other plies stay.
     *
     * <p>Bracketed by doubling and closed by halving to the last digit: the smallest thickness on the way up.
     *
     * @param what which stiffness
     * @param ply which ply of the candidate, counted from 0
     * @return the thickness, or that there is none
     * @throws IllegalArgumentException if there is no such ply or no other
     */
    public PlyThickness thicknessOf(Stiffness what, int ply) {
        List<Ply> plies = candidate.plies();
        if (!(ply >= 0 && ply < plies.size() && plies.size() > 1)) {
            throw new IllegalArgumentException(
                    "the ply must be one of several, from 0 to " + (plies.size() - 1) + ", was " + ply);
        }
        double without = ratioWithout(what, i -> i == ply);
        double given = plies.get(ply).thickness();
        OptionalDouble factor = factor(what, i -> i == ply, without, given);
        return new PlyThickness(factor.isPresent() ? OptionalDouble.of(factor.getAsDouble() * given) : factor, without);
    }

    /**
     * The factor on the thickness of several plies of the candidate, its cores or its faces, that makes a stiffness equal;
     * the other plies stay. Of all plies it is {@link #thicknessFactor(Stiffness)}.
     *
     * <p>Bracketed by doubling and closed by halving to the last digit: the smallest factor on the way up.
     *
     * @param what which stiffness
     * @param changed which plies of the candidate, counted from 0
     * @return the factor; empty if there is none, because the other plies laid without them are already as stiff or no
     *     thickness up to 10 m is enough
     * @throws IllegalArgumentException if no ply is to be changed
     */
    public OptionalDouble thicknessFactor(Stiffness what, IntPredicate changed) {
        List<Ply> plies = plies(changed);
        if (plies.isEmpty()) {
            throw new IllegalArgumentException("no ply of the candidate is to be changed");
        }
        if (plies.size() == candidate.plies().size()) {
            return OptionalDouble.of(thicknessFactor(what));
        }
        double given = plies.stream().mapToDouble(Ply::thickness).sum();
        return factor(what, changed, ratioWithout(what, changed), given);
    }

    private OptionalDouble factor(Stiffness what, IntPredicate changed, double without, double given) {
        double wanted = what.of(reference);
        DoubleUnaryOperator ratio = factor -> what.of(thickened(changed, factor)) / wanted;
        return without < 1
                ? crossing(ratio, THINNEST / given, Math.max(THICKEST_CORE / given, 1))
                : OptionalDouble.empty();
    }

    private double ratioWithout(Stiffness what, IntPredicate changed) {
        return what.of(Laminate.of(plies(changed.negate()))) / what.of(reference);
    }

    private List<Ply> plies(IntPredicate which) {
        List<Ply> plies = candidate.plies();
        return IntStream.range(0, plies.size())
                .filter(which)
                .mapToObj(plies::get)
                .toList();
    }

    private Laminate thickened(IntPredicate changed, double factor) {
        List<Ply> plies = new ArrayList<>(candidate.plies());
        for (int i = 0; i < plies.size(); i++) {
            if (changed.test(i)) {
                plies.set(i, plies.get(i).thickerBy(factor));
            }
        }
        return Laminate.of(plies);
    }

    /** Where a ratio that starts below 1 first reaches it. */
    private static OptionalDouble crossing(DoubleUnaryOperator ratio, double least, double most) {
        double low = 0;
        double high = least;
        while (ratio.applyAsDouble(high) < 1) {
            if (high >= most) {
                return OptionalDouble.empty();
            }
            low = high;
            high = Math.min(2 * high, most);
        }
        for (double mid = (low + high) / 2; mid > low && mid < high; mid = (low + high) / 2) {
            if (ratio.applyAsDouble(mid) < 1) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return OptionalDouble.of(high);
    }
}
