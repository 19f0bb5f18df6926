package laminate.order;

import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.withoutLosses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import laminate.estimate.Estimator;
import laminate.estimate.PackPrice;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.estimate.Supply;
import laminate.order.cut.Cuts;
import laminate.order.packs.PackCount;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.CuttingPlanner;
import laminate.order.pieces.CuttingRules;
import laminate.order.pieces.MaterialCut;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.Outline;
import laminate.part.Zone;
import laminate.unit.Amount;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is ordered is enough to cut every pull from one roll, in a workshop that loses nothing else. */
class RollOrderTest {
    private static final String TAPE = "unidirectional-300";
    private static final double WIDTH = 1.25;
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** A pack of a roll or sheet, "name, length, price". */
    private static PackPrice pack(String text, double width) {
        String[] words = text.split(", ");
        double length = Double.parseDouble(words[1]);
        return new PackPrice(
                words[0],
                Amount.of(width * length, PriceBasis.M2),
                Money.parse(words[2] + " GBP"),
                OptionalDouble.of(width),
                OptionalDouble.of(length),
                NONE);
    }

    private static Optional<PriceList> sold(String material, double width, List<String> packs) {
        Supply supply =
                new Supply(packs.stream().map(text -> pack(text, width)).toList(), Optional.empty(), NONE, NONE);
        Price price = new Price(material, UnitPrice.parse("3 GBP/m²"), Optional.empty(), supply);
        return Optional.of(new PriceList("GBP", Optional.empty(), List.of(price)));
    }

    private static PartEstimate strips(double length, double width, int count, Layer layer) {
        Zone zone = Zone.of("strip", length * width, List.of(layer)).withOutline(new Outline(length, width, 1));
        return new Estimator(withoutLosses(), Optional.empty()).estimate(times(count, part(zone)));
    }

    private static List<StockItem> stock(String material, double... areas) {
        List<StockItem> items = new ArrayList<>();
        for (double area : areas) {
            items.add(new StockItem(material, Amount.of(area, PriceBasis.M2), NONE, Optional.empty()));
        }
        return items;
    }

    private static OrderLine order(
            Optional<PriceList> prices, List<StockItem> stock, CuttingRules rules, PartEstimate... parts) {
        Cutting cutting = new CuttingPlanner(prices, rules).plan(List.of(parts));
        Order order = new Ordering(prices, stock, Optional.empty()).order(List.of(parts), cutting);
        String material = cutting.materials().get(0).material();
        return order.lines().stream()
                .filter(line -> line.material().equals(material))
                .findFirst()
                .orElseThrow();
    }

    private static String bought(OrderLine line) {
        return line.packs().stream()
                .map(count -> count.count() + " " + count.pack().name())
                .collect(Collectors.joining(" + "));
    }

    /**
     * By hand: strips of 8 m by 1.2 m lie one behind the other. Three come off 30 m, and 6 m are left; seven take 56 m, which
     * two rolls of 30 m have by their area alone.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 | roll, 30, 100 | 2 roll",
                "7 | roll, 30, 100 | 3 roll",
                "7 | roll, 30, 100; end, 10, 40 | 2 roll + 1 end",
                "7 | roll, 30, 100; end, 10, 110 | 3 roll",
                "7 | long roll, 60, 290; roll, 30, 100 | 1 long roll",
                "7 | long roll, 60, 310; roll, 30, 100 | 3 roll",
                "7 | roll, 30, 100; bit, 7, 1 | 3 roll",
            })
    void pullsAreNotPartedOverTwoRolls(int count, String packs, String expected) {
        OrderLine line = order(
                sold(TAPE, WIDTH, List.of(packs.split("; "))),
                List.of(),
                CuttingRules.USUAL,
                strips(8, 1.2, count, hand(unidirectional(0.3))));
        assertThat(bought(line)).isEqualTo(expected);
    }

    /** Three rolls of 30 m: two ends of 6 m are lost, what is left of the third is not. */
    @Test
    void theEndsThatAreLostAreNeeded() {
        OrderLine line = order(
                sold(TAPE, WIDTH, List.of("roll, 30, 100")),
                List.of(),
                CuttingRules.USUAL,
                strips(8, 1.2, 7, hand(unidirectional(0.3))));
        assertThat(line.amount()).isCloseTo((30 + 30 + 8) * WIDTH, within(1e-6));
        assertThat(line.surplus()).isCloseTo(22 * WIDTH, within(1e-6));
        assertThat(line.surplusValue()).contains(Money.parse("73.33 GBP"));
        assertThat(line.rolls()).extracting(TakenRoll::name).containsOnly("roll");
        assertThat(line.rolls()).extracting(roll -> roll.pulls().size()).containsExactly(3, 3, 1);
    }

    /** A strip of 8 m leaves 22 m of a roll of 30 m; with a second roll that is enough for 40 m that nothing is planned of. */
    @Test
    void anEndThatAnotherPullFitsOnIsNotLost() {
        PartEstimate unplanned = new Estimator(withoutLosses(), Optional.empty())
                .estimate(part(Zone.of("no outline", 40 * WIDTH, List.of(hand(unidirectional(0.3))))));
        OrderLine line = order(
                sold(TAPE, WIDTH, List.of("roll, 30, 100")),
                List.of(),
                CuttingRules.USUAL,
                strips(8, 1.2, 1, hand(unidirectional(0.3))),
                unplanned);
        assertThat(bought(line)).isEqualTo("2 roll");
        assertThat(line.amount()).isCloseTo((8 + 40) * WIDTH, within(1e-6));
    }

    /** Ends of 5 m in stock are of no use for 8 m, however many; one of 10 m is. */
    @Test
    void anEndInStockServesOnlyIfItIsLongEnough() {
        Optional<PriceList> prices = sold(TAPE, WIDTH, List.of("roll, 30, 100"));
        PartEstimate four = strips(8, 1.2, 4, hand(unidirectional(0.3)));
        OrderLine shortEnds = order(prices, stock(TAPE, 5 * WIDTH, 5 * WIDTH), CuttingRules.USUAL, four);
        assertThat(bought(shortEnds)).isEqualTo("2 roll");
        OrderLine longEnd = order(prices, stock(TAPE, 10 * WIDTH), CuttingRules.USUAL, four);
        assertThat(bought(longEnd)).isEqualTo("1 roll");
        assertThat(longEnd.rolls()).extracting(TakenRoll::name).containsExactly("in stock", "roll");
    }

    /** Two ends of 5 m have the area of 8 m and more, and are of no use; 10 m in one are enough. */
    @Test
    void nothingIsBoughtOnlyIfTheStockCanBeCut() {
        Optional<PriceList> prices = sold(TAPE, WIDTH, List.of("roll, 30, 100"));
        PartEstimate one = strips(8, 1.2, 1, hand(unidirectional(0.3)));
        assertThat(bought(order(prices, stock(TAPE, 5 * WIDTH, 5 * WIDTH), CuttingRules.USUAL, one)))
                .isEqualTo("1 roll");
        OrderLine enough = order(prices, stock(TAPE, 10 * WIDTH), CuttingRules.USUAL, one);
        assertThat(enough.packs()).isEmpty();
        assertThat(enough.rolls()).extracting(TakenRoll::name).containsExactly("in stock");
    }

    /** Strips 0.6 m wide: two lie side by side in a pull. Without a pack, rolls of the planned length are reckoned with. */
    @Test
    void whatIsMeasuredOutComesInTheLengthsOfRolls() {
        Price.Roll roll = new Price.Roll(WIDTH, OptionalDouble.of(30), NONE);
        Price price = new Price(TAPE, UnitPrice.parse("3 GBP/m²"), Optional.of(roll));
        PriceList rolls = new PriceList("GBP", Optional.empty(), List.of(price));
        PartEstimate parts = strips(8, 0.6, 14, hand(unidirectional(0.3)));
        Cutting cutting =
                new CuttingPlanner(Optional.of(rolls), CuttingRules.USUAL.withCuts(Cuts.ACROSS)).plan(List.of(parts));
        Order unpriced = new Ordering(Optional.empty(), List.of(), Optional.empty()).order(List.of(parts), cutting);
        OrderLine line = unpriced.lines().get(0);
        assertThat(line.rolls()).extracting(taken -> taken.pulls().size()).containsExactly(3, 3, 1);
        assertThat(line.need().quantity().area().orElseThrow()).isCloseTo(68 * WIDTH, within(1e-6));
    }

    /** Three lids of 0.9 m by 0.9 m take three sheets of 1 m by 1.2 m; two ends of 0.7 m² make none of them. */
    @Test
    void endsOfSheetsInStockDoNotMakeASheet() {
        Optional<PriceList> prices = sold("pvc-80", 1, List.of("sheet, 1.2, 30"));
        PartEstimate lids = strips(0.9, 0.9, 3, CoreLayer.of(PVC, 0.010, HAND));
        assertThat(bought(order(prices, stock("pvc-80", 0.7, 0.7), CuttingRules.USUAL, lids)))
                .isEqualTo("3 sheet");
        assertThat(bought(order(prices, stock("pvc-80", 1.4), CuttingRules.USUAL, lids)))
                .isEqualTo("2 sheet");
    }

    /** Six hundred pulls, three kinds of roll at nearly the same price: what would try the search most. */
    @Test
    void greatOrdersTakeNoTime() {
        Optional<PriceList> prices =
                sold(TAPE, WIDTH, List.of("roll a, 41.3, 100", "roll b, 33.1, 80.2", "roll c, 26.7, 64.9"));
        PartEstimate[] many = IntStream.range(0, 6)
                .mapToObj(i -> strips(5.03 + i * 1.37, 1.2, 100, hand(unidirectional(0.3))))
                .toArray(PartEstimate[]::new);
        OrderLine line = Assertions.assertTimeout(
                Duration.ofSeconds(10), () -> order(prices, List.of(), CuttingRules.USUAL.withCuts(Cuts.ACROSS), many));
        assertThat(line.surplus() / line.bought()).isLessThan(0.05);
    }

    /** Two thousand pulls of 30 m, of which a roll of 50 m yields one: what is sold by the roll, and what has no price. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aRollForEachPullTakesNoTime(boolean priced) {
        Optional<PriceList> prices = sold(TAPE, WIDTH, List.of("roll, 50, 100"));
        PartEstimate[] many = {strips(30, 1.2, 2000, hand(unidirectional(0.3)))};
        Cutting cutting = new CuttingPlanner(prices, CuttingRules.USUAL.withCuts(Cuts.ACROSS)).plan(List.of(many));
        Ordering ordering = new Ordering(priced ? prices : Optional.empty(), List.of(), Optional.empty());
        Order order = Assertions.assertTimeout(Duration.ofSeconds(10), () -> ordering.order(List.of(many), cutting));
        assertThat(order.lines().get(0).rolls()).hasSize(2000);
    }

    /** Whatever is cut, sold and in stock: every pull lies on a roll that is there, and no cheaper purchase serves. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void theOrderIsEnoughToCutAndTheCheapest(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 5; round++) {
            List<String> packs = new ArrayList<>();
            for (int i = 0; i < 1 + random.nextInt(3); i++) {
                packs.add("pack " + i + ", " + (i == 0 ? 9 : 3 + random.nextInt(7)) + "." + random.nextInt(10) + ", "
                        + (20 + random.nextInt(80)));
            }
            double[] areas = random.doubles(random.nextInt(3), 2, 12).toArray();
            CuttingRules rules = CuttingRules.USUAL.withCuts(random.nextBoolean() ? Cuts.ACROSS : Cuts.FREE);
            PartEstimate first = strips(length(random), 1.2, 1 + random.nextInt(3), hand(unidirectional(0.3)));
            PartEstimate second = strips(length(random), 0.9, 1 + random.nextInt(3), hand(unidirectional(0.3)));
            Optional<PriceList> prices = sold(TAPE, WIDTH, packs);
            MaterialCut cut = new CuttingPlanner(prices, rules)
                    .plan(List.of(first, second))
                    .materials()
                    .get(0);
            OrderLine line = order(prices, stock(TAPE, areas), rules, first, second);
            assertIsEnough(line, cut);
            assertNothingCheaperServes(line, cut, packs, areas);
        }
    }

    private static double length(Random random) {
        return 1 + random.nextInt(75) / 10.0;
    }

    private static void assertIsEnough(OrderLine line, MaterialCut cut) {
        List<Integer> all = new ArrayList<>();
        for (TakenRoll roll : line.rolls()) {
            double taken = roll.pulls().stream()
                    .mapToDouble(pull -> cut.lengths().get(pull - 1))
                    .sum();
            assertThat(taken).isLessThanOrEqualTo(roll.length() * (1 + 1e-6));
            all.addAll(roll.pulls());
        }
        assertThat(all)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, cut.lengths().size()).boxed().toList());
        for (PackCount count : line.packs()) {
            assertThat(line.rolls())
                    .filteredOn(roll -> roll.name().equals(count.pack().name()))
                    .hasSizeLessThanOrEqualTo(count.count());
        }
        assertThat(line.inStock() + line.bought()).isGreaterThanOrEqualTo(line.amount() * (1 - 1e-9));
        assertThat(line.amount()).isGreaterThanOrEqualTo(cut.area() * (1 - 1e-9));
    }

    private static void assertNothingCheaperServes(
            OrderLine line, MaterialCut cut, List<String> packs, double[] areas) {
        double cost = line.cost().orElseThrow().amount().doubleValue();
        List<Double> rolls = new ArrayList<>();
        for (double area : areas) {
            rolls.add(area / WIDTH);
        }
        assertThat(cheapest(new ArrayList<>(cut.lengths()), rolls, packs, 0, cost))
                .as("%s of %s, stock %s, pulls %s", bought(line), packs, rolls, cut.lengths())
                .isEqualTo(cost);
    }

    /** The least cost below a known one at which all lengths can be laid, tried out roll by roll. */
    private static double cheapest(
            List<Double> wanted, List<Double> rolls, List<String> packs, double cost, double known) {
        if (cost >= known) {
            return known;
        }
        if (canBeLaid(wanted, rolls)) {
            return cost;
        }
        double best = known;
        for (int i = 0; i < packs.size(); i++) {
            List<Double> more = new ArrayList<>(rolls);
            more.add(Double.parseDouble(packs.get(i).split(", ")[1]));
            double price = Double.parseDouble(packs.get(i).split(", ")[2]);
            best = Math.min(best, cheapest(wanted, more, packs.subList(i, packs.size()), cost + price, best));
        }
        return best;
    }

    private static boolean canBeLaid(List<Double> wanted, List<Double> rolls) {
        if (wanted.isEmpty()) {
            return true;
        }
        double length = Collections.max(wanted);
        List<Double> rest = new ArrayList<>(wanted);
        rest.remove(length);
        for (int i = 0; i < rolls.size(); i++) {
            if (rolls.get(i) >= length * (1 - 1e-9)) {
                List<Double> left = new ArrayList<>(rolls);
                left.set(i, rolls.get(i) - length);
                if (canBeLaid(rest, left)) {
                    return true;
                }
            }
        }
        return false;
    }
}
