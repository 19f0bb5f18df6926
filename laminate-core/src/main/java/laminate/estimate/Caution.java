package laminate.estimate;

import laminate.material.Status;

/**
 * Something to mind before the work starts.
 *
 * @param kind what it is about
 * @param text what to mind
 * @param source the published source, or what stands in for one
 * @param status how the caution relates to that source
 */
public record Caution(Kind kind, String text, String source, Status status) {

    /** What a caution is about. */
    public enum Kind {
        /** The schedule itself: materials or layers that do not go together. */
        SCHEDULE,
        /** Health, fire and strength: holds whenever the work is done. */
        SAFETY
    }
}
