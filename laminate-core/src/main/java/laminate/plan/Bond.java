package laminate.plan;

import java.util.OptionalDouble;
import laminate.material.Status;

/**
 * What a stage is laid on, and whether it comes in time to bond without grinding.
 *
 * @param onto the id of the resin it is laid on
 * @param gap longest time from the end of what lies under it to its start (s)
 * @param verdict whether the gap is within the window
 * @param ideal the gap that is best not exceeded (s)
 * @param most the gap beyond which the surface is prepared first (s); empty where it always is
 * @param text what to do
 * @param source the source of the window
 * @param status how the window relates to it
 */
public record Bond(
        String onto,
        double gap,
        Verdict verdict,
        double ideal,
        OptionalDouble most,
        String text,
        String source,
        Status status) {

    /** How the gap stands to the window. */
    public enum Verdict {
        /** Within the best time: nothing to prepare. */
        KEPT,
        /** After the best time but within the window. */
        LATE,
        /** The surface is ground, or washed and abraded, before the stage is laid. */
        PREPARE
    }
}
