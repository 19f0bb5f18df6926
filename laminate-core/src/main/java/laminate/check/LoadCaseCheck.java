package laminate.check;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.part.LoadCase;
import laminate.theory.failure.FailureSurface;
import laminate.theory.failure.ProgressiveFailure;

/**
 * A load case of a zone, reckoned.
 *
 * @param loadCase the load case
 * @param laminate what the plies carry
 * @param reserves the least reserve factor of each kind that arises, least first
 * @param progressive which plies fail one after the other, and at which load
 * @param surface the failure surface, if it was wanted; what is not of its two terms stays as in the load case
 * @param limits the limits on its reserve factors, worst first
 */
public record LoadCaseCheck(
        LoadCase loadCase,
        LaminateCheck laminate,
        List<Reserve> reserves,
        ProgressiveFailure progressive,
        Optional<FailureSurface> surface,
        List<LimitCheck> limits) {
    /**
     * Keeps copies.
     *
     * @param loadCase the load case
     * @param laminate what the plies carry
     * @param reserves the least reserve factor of each kind
     * @param progressive which plies fail one after the other
     * @param surface the failure surface, if it was wanted
     * @param limits the limits on its reserve factors
     */
    public LoadCaseCheck {
        Objects.requireNonNull(loadCase, "loadCase");
        Objects.requireNonNull(laminate, "laminate");
        Objects.requireNonNull(progressive, "progressive");
        Objects.requireNonNull(surface, "surface");
        reserves = List.copyOf(reserves);
        limits = List.copyOf(limits);
    }
}
