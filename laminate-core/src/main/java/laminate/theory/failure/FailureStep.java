package laminate.theory.failure;

import java.util.List;
import laminate.theory.Require;

/**
 * One step of a progressive failure: the plies that go together, and the load then.
 *
 * @param loadFactor factor on the mechanical load that has been reached, never less than at the step before
 * @param failed one entry a ply, mould face first: its worst point, mode, and the factor at which it fails in the
 *     laminate as it then is; where that is below {@code loadFactor}, the step before took it along at the same load
 */
public record FailureStep(double loadFactor, List<PlyReserve> failed) {
    /**
     * Checks the factor and keeps a copy.
     *
     * @param loadFactor factor on the mechanical load that has been reached
     * @param failed one entry a ply
     * @throws IllegalArgumentException if the factor is negative or not finite
     */
    public FailureStep {
        Require.notNegative("load factor", loadFactor);
        failed = List.copyOf(failed);
    }
}
