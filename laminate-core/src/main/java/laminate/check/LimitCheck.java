package laminate.check;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.ReserveKind;
import laminate.theory.Require;

/**
 * One limit against what was found.
 *
 * @param where what the limit is asked of
 * @param kind what is limited
 * @param reserveKind of a reserve factor, against which failure
 * @param asked the limit: a deflection or thickness (m), a mass (kg), a reserve factor (1)
 * @param found what was found, of a deflection its magnitude; empty where nothing fails in this way, or nothing could be
 *     judged
 * @param verdict whether the limit is met
 * @param remedies what would mend a miss, any one of them; empty where the limit is met or no one change by up to ten times mends it
 */
public record LimitCheck(
        Subject where,
        Kind kind,
        Optional<ReserveKind> reserveKind,
        double asked,
        OptionalDouble found,
        Verdict verdict,
        List<Remedy> remedies) {
    /** What is limited. */
    public enum Kind {
        /** The deflection of a panel or beam, at most (m). */
        DEFLECTION("deflection"),
        /** A reserve factor, at least (1). */
        RESERVE_FACTOR("reserve factor"),
        /** The thickness of the laminate, at least (m). */
        THICKNESS("thickness"),
        /** The mass, at most (kg). */
        MASS("mass");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * The word in files and reports.
         *
         * @return for example "reserve factor"
         */
        public String word() {
            return word;
        }

        private boolean isAtMost() {
            return this == DEFLECTION || this == MASS;
        }
    }

    /** Whether a limit is met. */
    public enum Verdict {
        /** It is not. */
        NOT_MET,
        /** Plies without strength, or a solution that has not settled, leave it open; it does not count as met. */
        NOT_JUDGED,
        /** It is. */
        MET
    }

    /** A limit that is met to this share counts as met: rounding of decimal input must not decide. */
    static final double ROUNDING = 1e-9;

    /** Worst first: what is missed by most, what could not be judged, what is met by least. */
    public static final Comparator<LimitCheck> WORST_FIRST =
            Comparator.comparing(LimitCheck::verdict).thenComparing(Comparator.comparingDouble(LimitCheck::margin));

    /**
     * Checks the limit.
     *
     * @param where what the limit is asked of
     * @param kind what is limited
     * @param reserveKind of a reserve factor, against which failure
     * @param asked the limit
     * @param found what was found
     * @param verdict whether the limit is met
     * @param remedies what would mend a miss
     * @throws IllegalArgumentException if the limit is not positive, or the kind of a reserve factor is missing
     */
    public LimitCheck {
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(verdict, "verdict");
        Require.positive("limit", asked);
        remedies = List.copyOf(remedies);
        if (reserveKind.isPresent() != (kind == Kind.RESERVE_FACTOR)) {
            throw new IllegalArgumentException(
                    "a limit of a reserve factor, and no other, is against a kind of failure, was " + kind + " against "
                            + reserveKind);
        }
    }

    /**
     * Whether the limit is met.
     *
     * @return true if it is known to be
     */
    public boolean isMet() {
        return verdict == Verdict.MET;
    }

    /**
     * How well the limit is kept: found by asked for what must be reached, asked by found for what must not be exceeded.
     *
     * @return below 1 for a miss; the largest double where nothing was found
     */
    public double margin() {
        return found.isEmpty() ? Double.MAX_VALUE : margin(kind, asked, found.getAsDouble());
    }

    static double margin(Kind kind, double asked, double found) {
        double margin = kind.isAtMost() ? asked / found : found / asked;
        return Math.min(margin, Double.MAX_VALUE);
    }

    static boolean isKept(Kind kind, double asked, double found) {
        return margin(kind, asked, found) >= 1 - ROUNDING;
    }
}
