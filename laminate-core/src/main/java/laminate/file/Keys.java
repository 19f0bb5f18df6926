package laminate.file;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The keys that each kind of mapping may hold: the vocabulary of the files in one place. The names of the constants are
 * those of the definitions in the JSON Schema, in capitals.
 */
enum Keys {
    PART(
            "part file",
            "part count workshop prices materials process resin catalyst hardener schedules zones items measured"),
    ZONE("zone", "name area count process resin catalyst hardener trim mirror coatings layers"),
    TRIM("trim", "edge width"),
    AGENT("agent", "id amount"),
    REINFORCEMENT_LAYER(
            "reinforcement layer",
            "reinforcement angle turned times fibre-mass-fraction fibre-volume-fraction resin-ratio thickness"
                    + " process resin catalyst hardener"),
    CORE_LAYER("core layer", "core thickness finish bed bed-thickness");

    private final String kind;
    private final Set<String> names;

    Keys(String kind, String names) {
        this.kind = kind;
        this.names = Collections.unmodifiableSet(new LinkedHashSet<>(List.of(names.split(" "))));
    }

    /** What such a mapping is called in a message, without an article: "zone". */
    String kind() {
        return kind;
    }

    /** The accepted keys in the order in which they are best written. */
    Set<String> names() {
        return names;
    }

    /** The key that such a mapping usually begins with. */
    String first() {
        return names.iterator().next();
    }

    /** The kind with its article: "a zone", "an item". */
    String aKind() {
        return ("aeiou".indexOf(kind.charAt(0)) < 0 ? "a " : "an ") + kind;
    }
}
