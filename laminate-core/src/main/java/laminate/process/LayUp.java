package laminate.process;

import java.util.Objects;
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
     * Checks that the resin wets out reinforcement and the agent cures it in that amount.
     *
     * @throws IllegalArgumentException if it does not; for the agent see {@link Dose#of}
     */
    public LayUp {
        Objects.requireNonNull(process, "process");
        if (!resin.use().isLaminating()) {
            throw new IllegalArgumentException(resin.id() + " is a "
                    + resin.use().word() + "; layers are laid with a laminating or infusion resin");
        }
        dose = Dose.of(resin, dose.agent(), dose.ratio());
    }
}
