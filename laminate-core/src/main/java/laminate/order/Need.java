package laminate.order;

import java.util.Optional;
import laminate.estimate.MaterialQuantity;
import laminate.unit.Money;

/**
 * What all parts together need of a material, and where it goes.
 *
 * @param group the group of the order
 * @param quantity how much is needed, with all that is lost of it, by every measure known of the material
 * @param inParts the share of it that lies in the finished parts, seams not counted; 0 for what the work uses up
 * @param laps the share that lies in laps at seams; of liquids they are counted among the parts
 * @param trimmed the share that is trimmed off with the margin; of liquids it is counted among the losses
 * @param each the price of one, of an item that has one
 */
public record Need(
        Group group, MaterialQuantity quantity, double inParts, double laps, double trimmed, Optional<Money> each) {
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the shares.
     *
     * @throws IllegalArgumentException if a share is below 0, or they come to more than 1
     */
    public Need {
        if (!(inParts >= 0 && laps >= -ROUNDING && trimmed >= 0 && inParts + laps + trimmed <= 1 + ROUNDING)) {
            throw new IllegalArgumentException("shares of what is needed of " + quantity.material()
                    + " are from 0 to 1 and 1 in all, not " + inParts + ", " + laps + " and " + trimmed);
        }
    }

    /**
     * The name of what is needed.
     *
     * @return the id of a material, or the name of an item
     */
    public String material() {
        return quantity.material();
    }

    /**
     * The share that is lost: cut away, left in pots and lines, gone to the air; all of what the work uses up.
     *
     * @return the share, from 0
     */
    public double wasted() {
        return Math.max(0, 1 - inParts - laps - trimmed);
    }

    /** How many times another need of the material this is. */
    double factorOf(Need other) {
        double all = other.quantity().area().orElse(0);
        return all > 0 ? quantity.area().orElse(all) / all : 1;
    }

    /**
     * The same if cutting takes more than the usual waste allows for.
     *
     * @param area what the plan takes for the layers that it covers (m²)
     * @param covered what those layers lie on, laps and margin included (m²)
     * @return this if the usual waste is enough; else more of it, by what is short, as waste
     */
    Need atLeast(double area, double covered) {
        double laid = inParts + laps + trimmed;
        double all = quantity.area().orElse(0);
        if (laid <= 0 || area <= covered / laid * (1 + ROUNDING)) {
            return this;
        }
        double factor = 1 + (area - covered / laid) / all;
        return new Need(group, quantity.toBuyTimes(factor), inParts / factor, laps / factor, trimmed / factor, each);
    }
}
