package laminate.part;

import java.util.Optional;
import laminate.process.LayUp;

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
}
