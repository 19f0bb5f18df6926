package laminate.file;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.process.Process;

/**
 * What a user asks for instead of what the part file states.
 *
 * @param process the process of every layer, whatever the file says: the question "what if it were infused"
 * @param workshop the workshop file in place of the part's own
 * @param prices the price file in place of the part's own
 * @param materials material files laid over those that the part names; of two materials of one id the later wins
 */
public record Overrides(
        Optional<Process> process, Optional<Path> workshop, Optional<Path> prices, List<Path> materials) {

    /** Everything as the part file states it. */
    public static final Overrides NONE = new Overrides(Optional.empty(), Optional.empty(), Optional.empty(), List.of());

    /** Checks that nothing is missing. */
    public Overrides {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        materials = List.copyOf(materials);
    }
}
