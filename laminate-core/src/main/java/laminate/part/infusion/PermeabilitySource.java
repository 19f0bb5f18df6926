package laminate.part.infusion;

import java.util.OptionalDouble;

/**
 * Where the permeability of the laminate along the flow comes from. It has no trustworthy default: laboratories that
 * measure one fabric by one agreed method differ by tens of per cent, and those that do not agree on one by a factor.
 */
public sealed interface PermeabilitySource {

    /**
     * A value that is known.
     *
     * @param value K (m²)
     * @param measuredAt the fibre volume fraction that it was measured at, empty for that of the laminate
     */
    record Given(double value, OptionalDouble measuredAt) implements PermeabilitySource {

        /**
         * Checks the value.
         *
         * @throws IllegalArgumentException if K is not above zero or the fraction not between 0 and 1
         */
        public Given {
            Checks.positive("permeability", value, "m²");
            Checks.fraction("fibre volume fraction of a permeability", measuredAt);
        }

        /**
         * A value at the fibre content of the laminate.
         *
         * @param squareMetres K (m²)
         * @return the permeability
         * @throws IllegalArgumentException if it is not above zero
         */
        public static Given of(double squareMetres) {
            return new Given(squareMetres, OptionalDouble.empty());
        }
    }

    /**
     * To be computed from a strip test.
     *
     * @param test what was read
     */
    record Tested(StripTest test) implements PermeabilitySource {}

    /** An order of magnitude for reinforcements of the kind, from memory: known no better than by a factor of three. */
    record Typical() implements PermeabilitySource {}
}
