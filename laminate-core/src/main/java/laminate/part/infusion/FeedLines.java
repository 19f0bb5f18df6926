package laminate.part.infusion;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.flow.Hose;

/**
 * What leads the resin to the laminate and away from it, and stays full.
 *
 * @param hose from the bucket to the feed
 * @param spiral the spiral tube that feeds, as a whole
 * @param catchPot resin that runs over into the pot (kg), empty where not stated
 */
public record FeedLines(Optional<Hose> hose, Optional<Hose> spiral, OptionalDouble catchPot) {

    /** Nothing stated. */
    public static final FeedLines NOT_STATED =
            new FeedLines(Optional.empty(), Optional.empty(), OptionalDouble.empty());

    /**
     * Checks the lines.
     *
     * @throws IllegalArgumentException if the pot holds less than nothing
     */
    public FeedLines {
        Objects.requireNonNull(hose, "hose");
        Objects.requireNonNull(spiral, "spiral");
        if (catchPot.isPresent() && !(catchPot.getAsDouble() >= 0 && Double.isFinite(catchPot.getAsDouble()))) {
            throw new IllegalArgumentException(
                    "resin in the catch pot must be zero or more, not " + catchPot.getAsDouble() + " kg");
        }
    }
}
