package laminate.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/**
 * What all mouldings cost. Every line is rounded half up to the currency's smallest coin, and the sums are of the rounded
 * lines, so that a reader can add them up.
 *
 * @param currency ISO 4217 code
 * @param date the day the prices are of
 * @param lines the lines, in the order of {@link Category}
 * @param missing what has no price; while anything is missing there is no total
 */
public record Cost(String currency, Optional<LocalDate> date, List<Line> lines, List<String> missing) {

    /** The name of the line of work, and of its rate where that is missing. */
    public static final String LABOUR = "labour";

    /** The heads of a cost. */
    public enum Category {
        /** What is bought to go into the part. */
        MATERIALS,
        /** What the process uses up. */
        CONSUMABLES,
        /** Bought-in items. */
        ITEMS,
        /** Work. */
        LABOUR
    }

    /**
     * A line of the cost.
     *
     * @param category its head
     * @param name what it is for
     * @param quantity how much or how many, in the measure of the price; a share of the materials where there is no price
     * @param price the price of one, empty for a share of the materials
     * @param cost quantity times price, rounded once
     */
    public record Line(Category category, String name, double quantity, Optional<UnitPrice> price, Money cost) {

        /** What an amount costs at a price. */
        static Line of(Category category, String name, double quantity, UnitPrice price) {
            return new Line(category, name, quantity, Optional.of(price), price.cost(quantity));
        }
    }

    /** Copies the lists. */
    public Cost {
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
    }

    /**
     * The sum of a head.
     *
     * @param category the head
     * @return the sum of its known lines
     */
    public Money of(Category category) {
        Money sum = Money.zero(currency);
        for (Line line : lines) {
            sum = line.category() == category ? sum.plus(line.cost()) : sum;
        }
        return sum;
    }

    /**
     * The sum of all that has a price.
     *
     * @return the known total
     */
    public Money knownTotal() {
        Money sum = Money.zero(currency);
        for (Line line : lines) {
            sum = sum.plus(line.cost());
        }
        return sum;
    }

    /**
     * The total, if everything has a price.
     *
     * @return the total, empty while a price is missing
     */
    public Optional<Money> total() {
        return missing.isEmpty() ? Optional.of(knownTotal()) : Optional.empty();
    }
}
