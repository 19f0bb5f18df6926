package laminate.check;

import java.util.Objects;

/**
 * What a finding is about.
 *
 * @param kind what it is
 * @param name its name
 * @param zone the name of its zone; of a part and a zone their own name
 */
public record Subject(Kind kind, String name, String zone) {
    /** The things that can be checked. */
    public enum Kind {
        /** The whole part. */
        PART("part"),
        /** A zone. */
        ZONE("zone"),
        /** A load case of a zone. */
        LOAD_CASE("load case"),
        /** A panel. */
        PANEL("panel"),
        /** A beam or strip. */
        BEAM("beam");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * The word in a report.
         *
         * @return for example "load case"
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks that all are there.
     *
     * @param kind what it is
     * @param name its name
     * @param zone the name of its zone
     */
    public Subject {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(zone, "zone");
    }
}
