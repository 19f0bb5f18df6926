package laminate.quote.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import laminate.unit.Money;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BuildUpTest {

    private static final Overhead WHOLE_LABOUR = new Overhead(1, Overhead.Base.LABOUR);

    private static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    private static DirectCost direct(int count, String materials, String consumables, String items, double hours) {
        return new DirectCost(
                count, gbp(materials), gbp(consumables), gbp(items), hours * 3600, UnitPrice.parse("25.00 GBP/h"));
    }

    private static BatchPrice price(DirectCost direct, Pricing pricing, Mould... moulds) {
        return new BuildUp(direct, List.of(moulds), pricing).price();
    }

    private static Pricing withRejectsAndOverhead() {
        return Pricing.AT_COST.withRejects(0.05).withOverhead(WHOLE_LABOUR);
    }

    @Test
    void rejectsAndOverheadAreWorkedByHand() {
        BatchPrice price = price(direct(1, "50.00", "0.00", "0.00", 2), withRejectsAndOverhead());

        assertThat(price.rejects()).isEqualTo(gbp("5.26"));
        assertThat(price.overhead()).isEqualTo(gbp("52.63"));
        assertThat(price.cost()).isEqualTo(gbp("157.89"));
        assertThat(price.net()).isEqualTo(gbp("157.89"));
    }

    @Test
    void everyLineIsWorkedByHand() {
        Pricing pricing = new Pricing(
                0.2,
                new Overhead(0.5, Overhead.Base.DIRECT_COST),
                0.1,
                new Profit.Margin(0.25),
                0.1,
                Optional.of(new Tax("VAT", 0.2)));
        Mould mould = new Mould("lid mould", gbp("600.00"), OptionalInt.of(2), OptionalInt.of(10));

        // 4 good ones are 5 pulls; 5 moulds for 10 pulls cost 3000, of which 5 pulls bear half.
        BatchPrice price = price(direct(4, "100.00", "20.00", "30.00", 6), pricing, mould);

        assertThat(price.direct().labour()).isEqualTo(gbp("150.00"));
        assertThat(price.rejects()).isEqualTo(gbp("75.00"));
        assertThat(price.overhead()).isEqualTo(gbp("187.50"));
        assertThat(price.mouldShare()).isEqualTo(gbp("1500.00"));
        assertThat(price.contingency()).isEqualTo(gbp("206.25"));
        assertThat(price.margin()).isEqualTo(gbp("756.25"));
        assertThat(price.discount()).isEqualTo(gbp("302.50"));
        assertThat(price.net()).isEqualTo(gbp("2722.50"));
        assertThat(price.tax()).isEqualTo(gbp("544.50"));
        assertThat(price.gross()).isEqualTo(gbp("3267.00"));
        assertThat(price.unitNet()).isEqualTo(gbp("680.63"));
        assertThat(price.marginAfterDiscount()).isCloseTo((2722.50 - 2268.75) / 2722.50, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.25, 0.333333333333333", "0.5, 1", "0.2, 0.25", "0, 0"})
    void marginAndMarkUpAreTwoWordsForOneProfit(double margin, double markUp) {
        assertThat(new Profit.Margin(margin).markUp()).isCloseTo(markUp, within(1e-12));
        assertThat(new Profit.MarkUp(markUp).margin()).isCloseTo(margin, within(1e-12));

        DirectCost direct = direct(1, "300.00", "0.00", "0.00", 0);
        assertThat(price(direct, Pricing.AT_COST.withProfit(new Profit.Margin(margin))))
                .isEqualTo(price(direct, Pricing.AT_COST.withProfit(new Profit.MarkUp(markUp))));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theLinesSumToNetAndGross(long seed) {
        Random random = new Random(seed);
        Pricing pricing = new Pricing(
                random.nextDouble() / 2,
                new Overhead(random.nextDouble() * 2, Overhead.Base.values()[random.nextInt(2)]),
                random.nextDouble() / 5,
                new Profit.Margin(random.nextDouble() / 2),
                random.nextDouble() / 4,
                Optional.of(new Tax("VAT", random.nextDouble() / 4)));
        BatchPrice price = price(
                direct(1 + random.nextInt(20), "312.47", "18.03", "41.99", random.nextDouble() * 30),
                pricing,
                new Mould("mould", gbp("913.77"), OptionalInt.of(7), OptionalInt.empty()));

        BigDecimal sum = BigDecimal.ZERO;
        for (Money line : List.of(
                price.direct().materials(),
                price.direct().consumables(),
                price.direct().items(),
                price.direct().labour(),
                price.rejects(),
                price.overhead(),
                price.mouldShare(),
                price.contingency(),
                price.margin())) {
            sum = sum.add(line.amount());
        }
        assertThat(price.net().amount())
                .isEqualByComparingTo(sum.subtract(price.discount().amount()));
        assertThat(price.gross()).isEqualTo(price.net().plus(price.tax()));
    }

    @Test
    void theInputThatMovesThePriceMostStandsFirst() {
        BuildUp build = new BuildUp(
                direct(1, "200.00", "10.00", "0.00", 4),
                List.of(new Mould("mould", gbp("50.00"), OptionalInt.empty(), OptionalInt.empty())),
                withRejectsAndOverhead().withContingency(0.05).withProfit(new Profit.Margin(0.2)));

        List<Sensitivity.Swing> swings = Sensitivity.of(build, 0.1);

        List<BigDecimal> sizes = new ArrayList<>();
        swings.forEach(swing -> sizes.add(swing.size().amount()));
        assertThat(sizes).isSortedAccordingTo((one, other) -> other.compareTo(one));
        assertThat(swings.get(0).input()).isEqualTo(Sensitivity.Input.MATERIALS);
        assertThat(swings).noneMatch(swing -> swing.input() == Sensitivity.Input.ITEMS);
        for (Sensitivity.Swing swing : swings) {
            assertThat(swing.higher().amount()).isGreaterThan(swing.lower().amount());
        }
    }

    @Test
    void materialsMoveThePriceByTheirShareOfIt() {
        BuildUp build = new BuildUp(direct(1, "100.00", "0.00", "0.00", 2), List.of(), Pricing.AT_COST);

        Sensitivity.Swing swing = Sensitivity.swing(build, Sensitivity.Input.MATERIALS, 0.1);

        assertThat(swing.lower()).isEqualTo(gbp("140.00"));
        assertThat(swing.higher()).isEqualTo(gbp("160.00"));
    }

    /** Of a cost of 100 with a mark-up of 50 % or a margin of 50 %: 145 and 155, or 100/0.55 and 100/0.45. */
    @Test
    void aProfitIsMovedAsItIsStated() {
        BuildUp markedUp = atProfit(new Profit.MarkUp(0.5));
        BuildUp withMargin = atProfit(new Profit.Margin(0.5));

        assertThat(Sensitivity.swing(markedUp, Sensitivity.Input.MARK_UP, 0.1))
                .isEqualTo(new Sensitivity.Swing(Sensitivity.Input.MARK_UP, 0.1, gbp("145.00"), gbp("155.00")));
        assertThat(Sensitivity.swing(withMargin, Sensitivity.Input.MARGIN, 0.1))
                .isEqualTo(new Sensitivity.Swing(Sensitivity.Input.MARGIN, 0.1, gbp("181.82"), gbp("222.22")));
        assertThat(words(markedUp)).contains("mark-up").doesNotContain("margin");
        assertThat(words(withMargin)).contains("margin").doesNotContain("mark-up");
    }

    /** An input that moves the price as another does would push one off the list that says more. */
    @Test
    void noTwoInputsAreTheSameByConstruction() {
        BuildUp build = new BuildUp(
                direct(3, "211.00", "17.00", "29.00", 5),
                List.of(new Mould("mould", gbp("53.00"), OptionalInt.empty(), OptionalInt.empty())),
                withRejectsAndOverhead().withContingency(0.07).withProfit(new Profit.Margin(0.19)));

        assertThat(Sensitivity.of(build, 0.5))
                .hasSize(9)
                .extracting(Sensitivity.Swing::lower)
                .doesNotHaveDuplicates();
    }

    private static BuildUp atProfit(Profit profit) {
        return new BuildUp(direct(1, "50.00", "0.00", "0.00", 2), List.of(), Pricing.AT_COST.withProfit(profit));
    }

    private static List<String> words(BuildUp build) {
        return Sensitivity.of(build, 0.1).stream()
                .map(swing -> swing.input().word())
                .toList();
    }

    @Test
    void anHourEarnsItsRateWhereThePriceIsTheCost() {
        Pricing pricing = Pricing.AT_COST.withRejects(0.2);
        Mould mould = new Mould("mould", gbp("70.00"), OptionalInt.empty(), OptionalInt.empty());
        BatchPrice price = price(direct(2, "100.00", "20.00", "40.00", 8), pricing, mould);

        assertThat(Returns.byHour(price, pricing)).isEqualTo(gbp("25.00"));
    }

    @Test
    void breakEvenIsTheFirstNumberThatCoversItsCost() {
        assertThat(Returns.breakEven(
                        gbp("30.00"), n -> gbp("100.00").plus(gbp("10.00").times(n)), 100))
                .hasValue(5);
        assertThat(Returns.breakEven(
                        gbp("10.00"), n -> gbp("100.00").plus(gbp("10.00").times(n)), 100))
                .isEmpty();
    }
}
