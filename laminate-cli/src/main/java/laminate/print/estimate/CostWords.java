package laminate.print.estimate;

import java.math.BigDecimal;
import java.util.Locale;
import laminate.estimate.Cost;
import laminate.print.Measures;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.Significant;
import laminate.unit.UnitPrice;

/** The lines of a cost in words. */
public final class CostWords {
    private static final int FEWEST_FIGURES = 3;
    private static final int MOST_FIGURES = 15;

    private CostWords() {}

    /**
     * The word of a head of the cost.
     *
     * @param category the head
     * @return for example "materials"
     */
    public static String word(Cost.Category category) {
        return category.name().toLowerCase(Locale.ROOT);
    }

    /** How much at what price: "2.33 kg at 3.20 GBP/kg". */
    static String amount(Cost.Line line) {
        return line.price()
                .map(price -> quantity(line, price) + " " + measure(line, price.basis()) + " at " + price)
                .orElseGet(() -> Measures.percent(line.quantity()) + " % of materials");
    }

    /** Three figures, or as many more as it takes for quantity times price to be the cost that stands beside them. */
    private static String quantity(Cost.Line line, UnitPrice price) {
        if (isWhole(line.quantity())) {
            return Measures.count(line.quantity());
        }
        int figures = FEWEST_FIGURES;
        String text = Significant.format(line.quantity(), figures);
        while (figures < MOST_FIGURES && !isCost(line.cost(), price, text)) {
            text = Significant.format(line.quantity(), ++figures);
        }
        return text;
    }

    private static boolean isCost(Money cost, UnitPrice price, String quantity) {
        Money product = new Money(price.amount().multiply(new BigDecimal(quantity)), price.currency());
        return product.amount().equals(cost.amount());
    }

    private static String measure(Cost.Line line, PriceBasis basis) {
        boolean counted = basis == PriceBasis.PIECE || basis == PriceBasis.ROLL;
        return counted && line.quantity() != 1 ? basis.symbol() + "s" : basis.symbol();
    }

    private static boolean isWhole(double quantity) {
        return quantity == Math.rint(quantity);
    }
}
