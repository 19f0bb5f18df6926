package laminate.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What would make mixes fit that do not; found by planning again with it.
 *
 * @param dose another dose of the same agent (kg/kg), empty if it is not the dose that is changed
 * @param crew another number of hands, empty if it is not the crew that is changed
 * @param mixes how many mixes the resin then takes in this stage
 */
public record Suggestion(OptionalDouble dose, OptionalInt crew, int mixes) {

    /**
     * Checks that one thing is changed.
     *
     * @throws IllegalArgumentException if both or neither are, or no mix is left
     */
    public Suggestion {
        if (dose.isPresent() == crew.isPresent() || mixes < 1) {
            throw new IllegalArgumentException(
                    "a suggestion is a dose or a crew, and one mix or more, not " + dose + ", " + crew + ", " + mixes);
        }
    }
}
