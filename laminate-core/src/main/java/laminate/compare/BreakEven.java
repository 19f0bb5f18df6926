package laminate.compare;

import java.util.OptionalInt;

/**
 * The number of parts at which one alternative overtakes another.
 *
 * @param overtaken the name of the one that is cheaper for few parts
 * @param overtaking the name of the one that is cheaper from then on
 * @param parts the first number of parts at which it is
 * @param forGood the number of parts from which it stays so, up to {@link CostCurve#MOST_PARTS}; more than
 *     {@code parts} where a worn-out mould gives the lead back for a while; empty where the other has the lead at last
 */
public record BreakEven(String overtaken, String overtaking, int parts, OptionalInt forGood) {
    /**
     * Checks the numbers.
     *
     * @param overtaken the name of the one that is cheaper for few parts
     * @param overtaking the name of the one that is cheaper from then on
     * @param parts the first number of parts at which it is
     * @param forGood the number of parts from which it stays so
     * @throws IllegalArgumentException if no part comes before, or the last number is below the first
     */
    public BreakEven {
        if (parts < 2 || forGood.orElse(parts) < parts) {
            throw new IllegalArgumentException(
                    overtaking + " cannot overtake " + overtaken + " at " + parts + ", for good at " + forGood);
        }
    }
}
