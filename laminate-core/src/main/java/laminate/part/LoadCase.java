package laminate.part;

import java.util.Objects;
import laminate.theory.LaminateLoad;

/**
 * A load that the laminate of a zone has to carry, the same all over it.
 *
 * @param name the name
 * @param load resultants, given deformations, temperature and moisture
 */
public record LoadCase(String name, LaminateLoad load) {

    /**
     * Checks the load case.
     *
     * @throws IllegalArgumentException if the name is blank or there is no load
     */
    public LoadCase {
        Objects.requireNonNull(load, "load");
        if (name.isBlank()) {
            throw new IllegalArgumentException("a load case needs a name");
        }
        if (load.isNone()) {
            throw new IllegalArgumentException(name + ": a load case needs a load");
        }
    }
}
