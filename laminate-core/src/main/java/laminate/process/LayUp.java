package laminate.process;

import laminate.material.Resin;

/**
 * How a layer is laid: the process, the resin and its dose.
 *
 * @param process the process
 * @param resin the laminating resin
 * @param dose its agent and amount
 */
public record LayUp(Process process, Resin resin, Dose dose) {

    /**
     * Checks that the agent cures the resin in that amount.
     *
     * @throws IllegalArgumentException if it does not, see {@link Dose#of}
     */
    public LayUp {
        dose = Dose.of(resin, dose.agent(), dose.ratio());
    }
}
