package laminate.estimate;

import java.util.Objects;
import java.util.Optional;
import laminate.material.Status;

/**
 * Where the strength of a laid ply comes from, or why it has none: what is missing is told and never made up.
 *
 * @param text the figures and formulas with their sources; for a ply without strength, what is missing
 * @param status the standing of the weakest of them; empty for a ply without strength
 */
public record StrengthOrigin(String text, Optional<Status> status) {

    /**
     * Checks the origin.
     *
     * @throws IllegalArgumentException if the text is blank
     */
    public StrengthOrigin {
        Objects.requireNonNull(status, "status");
        if (text.isBlank()) {
            throw new IllegalArgumentException("the origin of a strength must be told");
        }
    }

    /**
     * The origin of a known strength.
     *
     * @param text the figures and formulas with their sources
     * @param status the standing of the weakest of them
     * @return the origin
     */
    public static StrengthOrigin known(String text, Status status) {
        return new StrengthOrigin(text, Optional.of(status));
    }

    /**
     * Of a ply without strength.
     *
     * @param text what is missing
     * @return the origin
     */
    public static StrengthOrigin missing(String text) {
        return new StrengthOrigin(text, Optional.empty());
    }

    /**
     * Whether the ply has a strength.
     *
     * @return false if something is missing
     */
    public boolean isKnown() {
        return status.isPresent();
    }
}
