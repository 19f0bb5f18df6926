package laminate.part;

import java.util.Optional;
import laminate.process.LayUp;
import laminate.process.Process;

/** One layer of a zone, in the order it is laid, mould face first. */
public sealed interface Layer permits ReinforcementLayer, BulkerLayer, CoreLayer, LaminaLayer {

    /**
     * The stage it is laid in.
     *
     * @return the name of the stage, empty text where the layer belongs to no named stage
     */
    String stage();

    /**
     * What it is made of, for print.
     *
     * @return the id of its material, or {@code lamina} for a ply given directly
     */
    String material();

    /**
     * How it is laid.
     *
     * @return process, resin and dose; empty for a ply given directly
     */
    Optional<LayUp> laying();

    /**
     * Whether it is laid by a process.
     *
     * @param process the process
     * @return true if it is; false also for a ply given directly, of which no process is known
     */
    default boolean isLaidBy(Process process) {
        return laying().isPresent() && laying().get().process() == process;
    }
}
