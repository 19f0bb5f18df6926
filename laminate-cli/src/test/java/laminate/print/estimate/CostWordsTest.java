package laminate.print.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import laminate.estimate.Cost;
import laminate.estimate.Cost.Category;
import laminate.unit.Money;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CostWordsTest {
    private static final long SEED = 20260115;

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource({
        "2.3313024, 3.20 GBP/kg, 2.33 kg at 3.20 GBP/kg",
        "16.7369354, 4.10 GBP/kg, 16.737 kg at 4.10 GBP/kg",
        "10.2528, 28 GBP/h, 10.253 h at 28 GBP/h",
        "18, 0.35 GBP/piece, 18 pieces at 0.35 GBP/piece",
        "1, 6.50 GBP/piece, 1 piece at 6.50 GBP/piece",
        "0.0686, 112 GBP/roll, 0.0686 rolls at 112 GBP/roll",
        "3, 2.10 GBP/m², 3 m² at 2.10 GBP/m²",
    })
    void saysHowMuchAtWhatPrice(double quantity, String price, String words) {
        assertThat(CostWords.amount(line(quantity, UnitPrice.parse(price)))).isEqualTo(words);
    }

    @Test
    void aShareOfTheMaterialsHasNoPrice() {
        Cost.Line line =
                new Cost.Line(Category.CONSUMABLES, "consumables", 0.05, Optional.empty(), Money.parse("4.00 GBP"));
        assertThat(CostWords.amount(line)).isEqualTo("5.00 % of materials");
    }

    /** Whoever multiplies what is printed gets the cost that is printed beside it. */
    @Test
    void theProductOfWhatIsPrintedIsTheCost() {
        Random random = new Random(SEED);
        for (int i = 0; i < 1000; i++) {
            UnitPrice price = UnitPrice.parse(BigDecimal.valueOf(random.nextInt(5000), 2) + " GBP/kg");
            Cost.Line line = line(random.nextDouble() * Math.pow(10, random.nextInt(5) - 1), price);

            String quantity = CostWords.amount(line).split(" ")[0];

            assertThat(new Money(price.amount().multiply(new BigDecimal(quantity)), "GBP"))
                    .isEqualTo(line.cost());
        }
    }

    private static Cost.Line line(double quantity, UnitPrice price) {
        return new Cost.Line(Category.MATERIALS, "mat-300", quantity, Optional.of(price), price.cost(quantity));
    }
}
