package laminate.plan.infusion;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;

/**
 * The fill time against the gel time.
 *
 * @param verdict how they compare
 * @param gelTime of the resin at the temperature of the workshop and its dose (s), empty if not known
 * @param usableShare the share of the gel time within which it has to be full (1)
 * @param usableTime share times gel time (s), empty if the gel time is not known
 * @param reason the verdict in a sentence, or why there is none
 */
public record GelMargin(
        Verdict verdict, Optional<Figure> gelTime, Figure usableShare, OptionalDouble usableTime, String reason) {

    /** How a fill time stands to the usable time. */
    public enum Verdict {
        /** Full within the usable time, also at the lower end of the permeability's scatter. */
        IN_TIME("in time"),
        /** Full within the usable time as planned, but not at the lower end of the permeability's scatter. */
        DOUBTFUL("doubtful"),
        /** Not full within the usable time. */
        TOO_LATE("too late"),
        /** It never fills, whatever the gel time. */
        NEVER_FULL("never full"),
        /** The gel time is not known, as at a temperature or dose that the resin's gel times do not reach. */
        NOT_JUDGED("not judged");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * The word in print.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /** Checks that nothing is missing. */
    public GelMargin {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(gelTime, "gelTime");
        Objects.requireNonNull(usableShare, "usableShare");
        Objects.requireNonNull(usableTime, "usableTime");
        Objects.requireNonNull(reason, "reason");
    }

    /**
     * Whether it is full within the usable time, as planned.
     *
     * @return true if so; false also where it is not judged
     */
    public boolean isInTime() {
        return verdict == Verdict.IN_TIME || verdict == Verdict.DOUBTFUL;
    }
}
