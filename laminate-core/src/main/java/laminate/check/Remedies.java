package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import laminate.check.Remedy.Lever;
import laminate.part.ReserveKind;

/** Finds the changes by which a missed limit would just be met, each by making it and checking again. */
final class Remedies {
    /** No remedy asks for more than this; another structure is wanted then. */
    static final double MOST = 10;
    /** By this share, as a logarithm, a mended limit may be better than asked. */
    private static final double BAND = 1e-3;
    /** And by this it is aimed to be, so that a limit is met when it is judged anew. */
    private static final double AIM = 0.4 * BAND;

    private static final int MOST_STEPS = 40;
    private static final int MOST_PROOFS = 8;

    private Remedies() {}

    /**
     * The remedies of a miss.
     *
     * @param levers what may be changed
     * @param asLaid margin of the limit as it is
     * @param quick margin of the limit in a changed make-up about, see {@link LimitCheck#margin()}
     * @param exact the same by a check anew
     */
    static List<Remedy> of(
            MakeUp makeUp,
            List<Lever> levers,
            double asLaid,
            ToDoubleFunction<MakeUp> quick,
            ToDoubleFunction<MakeUp> exact) {
        List<Remedy> found = new ArrayList<>();
        for (Lever lever : levers) {
            factor(
                            asLaid,
                            x -> quick.applyAsDouble(Levers.pull(makeUp, lever, x)),
                            x -> exact.applyAsDouble(Levers.pull(makeUp, lever, x)))
                    .ifPresent(factor -> found.add(remedy(makeUp, lever, factor)));
        }
        return found;
    }

    private static Remedy remedy(MakeUp makeUp, Lever lever, double factor) {
        return switch (lever) {
            case LAMINATE_THICKNESS ->
                Remedy.of(lever, factor, makeUp.laminate().thickness());
            case FACE_THICKNESS -> Remedy.of(lever, factor, makeUp.thickness(false));
            case CORE_THICKNESS -> Remedy.of(lever, factor, makeUp.thickness(true));
            default -> Remedy.of(lever, factor);
        };
    }

    static List<Lever> ofDeflection(MakeUp makeUp) {
        return makeUp.isSandwich()
                ? List.of(Lever.CORE_THICKNESS, Lever.FACE_THICKNESS, Lever.LAYER_STIFFNESS, Lever.CORE_SHEAR_STIFFNESS)
                : List.of(Lever.LAMINATE_THICKNESS, Lever.LAYER_STIFFNESS);
    }

    static List<Lever> ofReserve(ReserveKind kind, MakeUp makeUp) {
        boolean sandwich = makeUp.isSandwich();
        return switch (kind) {
            case FIRST_PLY, LAST_PLY -> ofPlies(kind, sandwich);
            case CORE_SHEAR -> List.of(Lever.CORE_THICKNESS, Lever.CORE_SHEAR_STRENGTH);
            case CRUSHING -> List.of(Lever.CORE_COMPRESSIVE_STRENGTH);
            case WRINKLING -> List.of(Lever.CORE_STIFFNESS, Lever.CORE_THICKNESS, Lever.FACE_THICKNESS);
            case DIMPLING -> List.of(Lever.FACE_THICKNESS, Lever.CORE_THICKNESS);
            case SHEAR_CRIMPING -> List.of(Lever.CORE_SHEAR_STIFFNESS, Lever.CORE_THICKNESS);
            case INDENTATION -> List.of(Lever.FACE_THICKNESS, Lever.CORE_COMPRESSIVE_STRENGTH);
            case BUCKLING -> ofDeflection(makeUp);
        };
    }

    /** The failure of a core may be the last. */
    private static List<Lever> ofPlies(ReserveKind kind, boolean sandwich) {
        if (!sandwich) {
            return List.of(Lever.LAMINATE_THICKNESS, Lever.PLY_STRENGTH);
        }
        List<Lever> levers = new ArrayList<>(List.of(Lever.CORE_THICKNESS, Lever.FACE_THICKNESS, Lever.PLY_STRENGTH));
        if (kind == ReserveKind.LAST_PLY) {
            levers.addAll(List.of(Lever.CORE_SHEAR_STRENGTH, Lever.CORE_COMPRESSIVE_STRENGTH));
        }
        return levers;
    }

    /**
     * A factor above 1 at which a margin reaches 1, and no more than {@value #BAND} beyond; empty if it would exceed
     * {@value #MOST}.
     *
     * @param asLaid margin of the limit at 1
     * @param quick margin of the limit by the factor, about
     * @param exact the same exactly, asked for only about the end
     */
    static OptionalDouble factor(double asLaid, DoubleUnaryOperator quick, DoubleUnaryOperator exact) {
        double lacking = logarithm(asLaid);
        OptionalDouble about = crossing(lacking, x -> logarithm(quick.applyAsDouble(Math.exp(x))));
        return about.isEmpty()
                ? about
                : proven(lacking, about.getAsDouble(), x -> logarithm(exact.applyAsDouble(Math.exp(x))));
    }

    private static double logarithm(double margin) {
        return Math.log(Math.max(margin, Double.MIN_NORMAL));
    }

    /**
     * Where a surplus reaches what is aimed at, both in logarithms, in which a power law is a line: along the secant until
     * it is enclosed, then by false position, in which the end that stays counts half (Illinois).
     */
    private static OptionalDouble crossing(double lacking, DoubleUnaryOperator surplus) {
        double low = 0;
        double below = lacking - AIM;
        double x = Math.min(-below, Math.log(MOST));
        double y = surplus.applyAsDouble(x) - AIM;
        while (y < -AIM / 2) {
            if (x >= Math.log(MOST)) {
                return OptionalDouble.empty();
            }
            double slope = (y - below) / (x - low);
            low = x;
            below = y;
            x = slope > 0 ? Math.min(x + 1.02 * -y / slope, Math.log(MOST)) : Math.log(MOST);
            y = surplus.applyAsDouble(x) - AIM;
        }
        return OptionalDouble.of(between(surplus, low, below, x, y));
    }

    private static double between(DoubleUnaryOperator surplus, double from, double lacking, double to, double enough) {
        double low = from;
        double below = lacking;
        double high = to;
        double above = enough;
        double end = enough;
        for (int i = 0; i < MOST_STEPS && end > AIM / 2 && high - low > BAND / 100; i++) {
            double x = i % 4 == 3 ? (low + high) / 2 : low - below * (high - low) / (above - below);
            double y = surplus.applyAsDouble(x) - AIM;
            if (y < -AIM / 2) {
                low = x;
                below = y;
                above /= 2;
            } else {
                high = x;
                above = y;
                end = y;
                below /= 2;
            }
        }
        return high;
    }

    /** Steps on until the exact surplus is there, and not more of it than need be if that can be had. */
    private static OptionalDouble proven(double lacking, double about, DoubleUnaryOperator surplus) {
        double met = Double.POSITIVE_INFINITY;
        double low = 0;
        double below = lacking;
        double x = about;
        for (int i = 0; i < MOST_PROOFS && x <= Math.log(MOST); i++) {
            double y = surplus.applyAsDouble(x);
            if (y >= 0) {
                met = Math.min(met, x);
            }
            if (y >= 0 && y <= BAND) {
                break;
            }
            double slope = x == low ? 0 : (y - below) / (x - low);
            low = x;
            below = y;
            x += slope > 0 ? Math.max((AIM - y) / slope, -x / 2) : BAND;
        }
        return Double.isFinite(met) ? OptionalDouble.of(Math.exp(met)) : OptionalDouble.empty();
    }
}
