package laminate.order;

import java.util.List;
import laminate.theory.Require;

/**
 * A roll, or sheet, that a plan of cutting takes from, in stock or bought.
 *
 * @param name what it is called: the pack, or that it lies in stock
 * @param width its width (m)
 * @param length its length (m), infinite if it is not known
 * @param pulls the numbers of the plan's pulls, or sheets, that come off it, from 1
 */
public record TakenRoll(String name, double width, double length, List<Integer> pulls) {
    /**
     * Checks the sizes.
     *
     * @throws IllegalArgumentException if the width is not above zero and finite, or the length not above zero
     */
    public TakenRoll {
        Require.positive("width of " + name, width);
        if (!(length > 0)) {
            throw new IllegalArgumentException("the length of " + name + " must be above zero, not " + length + " m");
        }
        pulls = List.copyOf(pulls);
    }
}
