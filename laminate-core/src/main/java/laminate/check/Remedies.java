package laminate.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import laminate.check.Remedy.Lever;
import laminate.part.ReserveKind;

/** Finds the changes by which a missed limit would just be met, each by making it and checking again. */
final class Remedies {
    /** No remedy asks for more than this; another structure is wanted then. */
    private static final double MOST = 64;
    /** A factor is found to this share. */
    private static final double PRECISION = 1e-4;

    private static final int MOST_STEPS = 60;

    private Remedies() {}

    /**
     * The remedies of a miss.
     *
     * @param levers what may be changed
     * @param asLaid margin of the limit as it is
     * @param margin of the limit in a changed make-up, see {@link LimitCheck#margin()}
     */
    static List<Remedy> of(MakeUp makeUp, List<Lever> levers, double asLaid, Function<MakeUp, Double> margin) {
        List<Remedy> found = new ArrayList<>();
        for (Lever lever : levers) {
            factor(asLaid, x -> margin.apply(Levers.pull(makeUp, lever, x)))
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
     * The first factor on the way up from 1 at which a margin reaches 1, and no more than {@value #PRECISION} beyond.
     *
     * @param asLaid margin of the limit at 1
     * @param margin margin of the limit by the factor
     */
    static OptionalDouble factor(double asLaid, DoubleUnaryOperator margin) {
        DoubleUnaryOperator surplus = x -> logarithm(margin.applyAsDouble(Math.exp(x)));
        double low = 0;
        double lacking = logarithm(asLaid);
        double high = low;
        double enough = lacking;
        while (enough < 0) {
            if (high >= Math.log(MOST)) {
                return OptionalDouble.empty();
            }
            low = high;
            lacking = enough;
            high += Math.log(2);
            enough = surplus.applyAsDouble(high);
        }
        return OptionalDouble.of(Math.exp(between(surplus, low, lacking, high, enough)));
    }

    private static double logarithm(double margin) {
        return Math.log(Math.max(margin, Double.MIN_NORMAL));
    }

    /**
     * False position in logarithms, in which a power law is a line; the end that stays counts half (Illinois). Aims
     * at the middle of what is precise enough, so as to end on the side where the limit is met.
     */
    private static double between(DoubleUnaryOperator surplus, double from, double lacking, double to, double enough) {
        double aim = PRECISION / 2;
        double low = from;
        double high = to;
        double met = high;
        double below = lacking - aim;
        double above = enough - aim;
        for (int i = 0; i < MOST_STEPS && high - low > PRECISION / 10; i++) {
            boolean halve = i % 4 == 3 || !(above > 0) || below < -10;
            double x = halve ? (low + high) / 2 : low - below * (high - low) / (above - below);
            double y = surplus.applyAsDouble(x) - aim;
            if (y >= -aim) {
                met = Math.min(met, x);
            }
            if (Math.abs(y) <= aim) {
                break;
            }
            if (y < 0) {
                low = x;
                below = y;
                above /= 2;
            } else {
                high = x;
                above = y;
                below /= 2;
            }
        }
        return met;
    }
}
