package laminate.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What would make mixes fit that do not; found by planning again with it.
 *
 * @param dose another dose of the same agent (kg/kg), empty if the dose stays
 * @param crew another number of hands, empty if the crew stays
 * @param mixes how many mixes the resin then takes in this stage
 */
public record Suggestion(OptionalDouble dose, OptionalInt crew, int mixes) {

    /**
     * Checks that something is changed; both are where neither alone is enough.
     *
     * @throws IllegalArgumentException if nothing is, or no mix is left
     */
    public Suggestion {
        if (dose.isEmpty() && crew.isEmpty() || mixes < 1) {
            throw new IllegalArgumentException("a suggestion is a dose, a crew or both, and one mix or more, not "
                    + dose + ", " + crew + ", " + mixes);
        }
    }
}
