package laminate.order.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import laminate.unit.Money;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PacksTest {
    private static final Packs RESIN =
            Packs.of(List.of(pack("can", "5", "30.00"), pack("drum", "25", "110.00"), pack("barrel", "225", "900.00")));

    private static Pack pack(String name, String amount, String price) {
        return Pack.of(name, new BigDecimal(amount), Money.parse(price + " GBP"));
    }

    private static BigDecimal decimal(String text) {
        return new BigDecimal(text);
    }

    @ParameterizedTest
    @CsvSource({
        // need, cans, drums, barrels, cost: worked by hand.
        "0.1, 1, 0, 0, 30.00",
        "5, 1, 0, 0, 30.00",
        "15, 3, 0, 0, 90.00",
        // Four cans would do for 120.
        "16, 0, 1, 0, 110.00",
        "30, 1, 1, 0, 140.00",
        // A barrel at 900 is less than eight drums and a can, 910.
        "201, 0, 0, 1, 900.00",
        "200, 0, 8, 0, 880.00",
        "230, 1, 0, 1, 930.00"
    })
    void theCheapestPacksAreTaken(String need, int cans, int drums, int barrels, String cost) {
        PackChoice choice = RESIN.cheapest(decimal(need));
        assertThat(count(choice, "can")).isEqualTo(cans);
        assertThat(count(choice, "drum")).isEqualTo(drums);
        assertThat(count(choice, "barrel")).isEqualTo(barrels);
        assertThat(choice.cost()).isEqualTo(Money.parse(cost + " GBP"));
    }

    private static int count(PackChoice choice, String name) {
        return choice.packs().stream()
                .filter(bought -> bought.pack().name().equals(name))
                .mapToInt(PackCount::count)
                .sum();
    }

    @Test
    void theSurplusIsToldWithWhatItHasCost() {
        PackChoice choice = RESIN.cheapest(decimal("20"));
        assertThat(choice.bought()).isEqualByComparingTo("25");
        assertThat(choice.surplus()).isEqualByComparingTo("5");
        assertThat(choice.surplusValue()).isEqualTo(Money.parse("22.00 GBP"));
    }

    @Test
    void ofEqualCostTheLargerAmountAndThenTheFewerPacksAreTaken() {
        Packs larger = Packs.of(List.of(pack("old can", "4", "30.00"), pack("new can", "5", "30.00")));
        assertThat(count(larger.cheapest(decimal("3")), "new can")).isEqualTo(1);
        Packs alike = Packs.of(List.of(pack("bag", "1", "2.00"), pack("sack", "4", "8.00")));
        assertThat(alike.cheapest(decimal("8")).packs()).hasSize(1).allMatch(p -> p.count() == 2);
    }

    @Test
    void aLimitedPackIsUsedUpAndThenLeft() {
        Pack rest = new Pack("end of roll", decimal("12.5"), Money.parse("10.00 GBP"), OptionalInt.of(2), 1);
        Packs packs = Packs.of(List.of(rest, pack("roll", "50", "100.00")));
        PackChoice choice = packs.cheapest(decimal("60"));
        assertThat(count(choice, "end of roll")).isEqualTo(1);
        assertThat(count(choice, "roll")).isEqualTo(1);
        assertThat(count(packs.cheapest(decimal("100")), "end of roll")).isEqualTo(0);
        assertThat(count(packs.cheapest(decimal("75")), "end of roll")).isEqualTo(2);
    }

    @Test
    void aMinimumOrderIsBoughtButOnlyIfSomethingIs() {
        Packs packs = new Packs(RESIN.packs(), decimal("20"));
        assertThat(packs.cheapest(decimal("1")).cost()).isEqualTo(Money.parse("110.00 GBP"));
        assertThat(packs.cheapest(decimal("1")).surplus()).isEqualByComparingTo("24");
        PackChoice nothing = packs.cheapest(BigDecimal.ZERO);
        assertThat(nothing.packs()).isEmpty();
        assertThat(nothing.cost()).isEqualTo(Money.zero("GBP"));
        assertThat(nothing.surplusValue()).isEqualTo(Money.zero("GBP"));
    }

    /** By hand: drums come in pairs, so 30 kg cost six cans or two drums; from 36 kg on the drums are cheaper. */
    @ParameterizedTest
    @CsvSource({"20, 4, 0, 120.00", "30, 6, 0, 180.00", "36, 0, 2, 220.00", "51, 1, 2, 250.00", "75, 0, 3, 330.00"})
    void aPackMaySellInALeastNumber(String need, int cans, int drums, String cost) {
        Packs pairs = Packs.of(
                List.of(pack("can", "5", "30.00"), pack("drum", "25", "110.00").withMinimum(2)));
        PackChoice choice = pairs.cheapest(decimal(need));
        assertThat(count(choice, "can")).isEqualTo(cans);
        assertThat(count(choice, "drum")).isEqualTo(drums);
        assertThat(choice.cost()).isEqualTo(Money.parse(cost + " GBP"));
    }

    @Test
    void ofWhatIsSoldInALeastNumberThereMayBeTooFew() {
        Pack drum = new Pack("drum", decimal("25"), Money.parse("10.00 GBP"), OptionalInt.of(1), 2);
        Packs packs = Packs.of(List.of(drum, pack("can", "5", "30.00")));
        assertThat(count(packs.cheapest(decimal("6")), "can")).isEqualTo(2);
        assertThatIllegalArgumentException().isThrownBy(() -> new PackCount(drum, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drum.withMinimum(0))
                .withMessageContaining("not 0");
    }

    /** Ten times 0.1 is a hair below 1 in doubles and three times 0.1 one above 0.3; neither buys a can. */
    @Test
    void theRoundingOfASumBuysNoCan() {
        Packs packs = Packs.of(List.of(pack("can", "0.3", "3.00")));
        assertThat(count(packs.cheapest(0.1 + 0.1 + 0.1), "can")).isEqualTo(1);
        assertThat(count(packs.cheapest(0.3001), "can")).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void theCheapestOfAllChoicesIsFound(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 100; round++) {
            Packs packs = randomPacks(random);
            BigDecimal need = BigDecimal.valueOf(1 + random.nextInt(400), 1);
            Tried tried = Tried.best(packs.packs(), need.max(packs.minimum()));
            if (tried.equals(Tried.IMPOSSIBLE)) {
                assertThatIllegalArgumentException().isThrownBy(() -> packs.cheapest(need));
            } else {
                PackChoice choice = packs.cheapest(need);
                assertThat(choice.cost().amount()).as("%s of %s", need, packs).isEqualByComparingTo(tried.cost);
                assertThat(choice.bought()).as("%s of %s", need, packs).isEqualByComparingTo(tried.amount);
                assertThat(choice.packs().stream().mapToInt(PackCount::count).sum())
                        .as("%s of %s", need, packs)
                        .isEqualTo(tried.count);
            }
        }
    }

    private static Packs randomPacks(Random random) {
        List<Pack> packs = new ArrayList<>();
        int kinds = 1 + random.nextInt(4);
        for (int i = 0; i < kinds; i++) {
            BigDecimal amount = BigDecimal.valueOf(30 + random.nextInt(random.nextBoolean() ? 200 : 20), 1);
            BigDecimal price = random.nextBoolean()
                    ? amount.multiply(BigDecimal.valueOf(2))
                    : BigDecimal.valueOf(100 + random.nextInt(3000), 2);
            OptionalInt available = random.nextInt(3) == 0 ? OptionalInt.of(random.nextInt(4)) : OptionalInt.empty();
            int minimum = random.nextInt(3) == 0 ? 1 + random.nextInt(5) : 1;
            packs.add(new Pack("pack " + i, amount, new Money(price, "GBP"), available, minimum));
        }
        return new Packs(packs, random.nextInt(4) == 0 ? BigDecimal.TEN : BigDecimal.ZERO);
    }

    /** Every number of every pack, tried out. */
    private record Tried(BigDecimal cost, BigDecimal amount, int count) {
        static final Tried IMPOSSIBLE = new Tried(BigDecimal.valueOf(Long.MAX_VALUE), BigDecimal.ZERO, 0);

        static Tried best(List<Pack> packs, BigDecimal need) {
            return best(packs, need, new Tried(BigDecimal.ZERO, BigDecimal.ZERO, 0));
        }

        private static Tried best(List<Pack> packs, BigDecimal need, Tried sofar) {
            if (packs.isEmpty() || sofar.amount.compareTo(need) >= 0) {
                return sofar.amount.compareTo(need) >= 0 ? sofar : IMPOSSIBLE;
            }
            Pack pack = packs.get(0);
            Tried best = IMPOSSIBLE;
            Tried with = sofar;
            for (int i = 0; i <= pack.available().orElse(Integer.MAX_VALUE); i++) {
                boolean isSold = i == 0 || i >= pack.minimum();
                best = isSold ? better(best, best(packs.subList(1, packs.size()), need, with)) : best;
                if (isSold && with.amount.compareTo(need) >= 0) {
                    break;
                }
                with = new Tried(with.cost.add(pack.price().amount()), with.amount.add(pack.amount()), with.count + 1);
            }
            return best;
        }

        private static Tried better(Tried one, Tried other) {
            int order = one.cost.compareTo(other.cost);
            order = order == 0 ? other.amount.compareTo(one.amount) : order;
            order = order == 0 ? Integer.compare(one.count, other.count) : order;
            return order <= 0 ? one : other;
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void buyingMoreNeverCostsLessAndTheOrderOfPacksDoesNotCount(long seed) {
        Random random = new Random(seed);
        Packs packs = new Packs(
                randomPacks(random).packs().stream()
                        .map(p -> Pack.of(p.name(), p.amount(), p.price()).withMinimum(p.minimum()))
                        .toList(),
                decimal("7"));
        List<Pack> shuffled = new ArrayList<>(packs.packs());
        Collections.shuffle(shuffled, random);
        BigDecimal last = BigDecimal.ZERO;
        for (int need = 0; need < 1500; need += 7) {
            PackChoice choice = packs.cheapest(BigDecimal.valueOf(need, 1));
            assertThat(choice.cost().amount()).isGreaterThanOrEqualTo(last);
            assertThat(choice.surplus()).isNotNegative();
            assertThat(new Packs(shuffled, packs.minimum()).cheapest(choice.need()))
                    .isEqualTo(choice);
            last = choice.cost().amount();
        }
    }

    /** Nearly equal prices, odd amounts and a great need: what would try the search most. */
    @Test
    void greatNeedsTakeNoTime() {
        assertTimeless(1);
    }

    @Test
    void greatNeedsOfPacksInLeastNumbersTakeNoTime() {
        assertTimeless(7);
        assertTimeless(70);
    }

    private static void assertTimeless(int minimum) {
        Packs packs = Packs.of(List.of(
                pack("roll a", "63.55", "190.65").withMinimum(minimum),
                pack("roll b", "47.813", "143.44").withMinimum(minimum),
                pack("roll c", "31.749", "95.25").withMinimum(minimum),
                pack("box", "1", "3.01")));
        PackChoice choice = Assertions.assertTimeout(Duration.ofSeconds(5), () -> packs.cheapest(decimal("98765.432")));
        assertThat(choice.surplus()).isBetween(BigDecimal.ZERO, decimal("63.55"));
    }

    /** Rolls of which each serves for one pull: their number goes by the pulls, far above the amount, and is found by halving. */
    @ParameterizedTest
    @ValueSource(ints = {1, 299, 300, 301, 1302, 4999, 5000})
    void asManyAreBoughtAsServe(int wanted) {
        AtomicInteger asked = new AtomicInteger();
        Packs rolls = Packs.of(List.of(pack("roll", "1", "3.00")));
        PackChoice choice = rolls.cheapest(1.0, packs -> {
            asked.incrementAndGet();
            return packs.get(0).count() >= wanted;
        });
        assertThat(count(choice, "roll")).isEqualTo(wanted);
        assertThat(asked.get()).isLessThan(330);
    }

    /** Three packs of 0.1 hold a sum of three tenths in doubles, though that is a hair more than 0.3. */
    @Test
    void packsThatAreChosenMayMissTheRoundingOfASum() {
        Packs tins = Packs.of(List.of(pack("tin", "0.1", "2.00")));
        List<PackCount> three = List.of(new PackCount(tins.packs().get(0), 3));
        assertThat(tins.choice(0.1 + 0.1 + 0.1, three).need()).isEqualByComparingTo("0.3");
        assertThat(tins.choice(0.25, three).surplus()).isEqualByComparingTo("0.05");
        for (double no : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> tins.choice(no, three))
                    .withMessageContaining(Double.toString(no));
        }
    }

    @Test
    void packsThatServeInNoNumberAreRefused() {
        Packs rolls = Packs.of(List.of(pack("short roll", "1", "3.00")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rolls.cheapest(1.0, packs -> false))
                .withMessage("no number of these packs serves: short roll");
    }

    @Test
    void whatCannotBeBoughtIsRefused() {
        Pack last = new Pack("roll", decimal("50"), Money.parse("100.00 GBP"), OptionalInt.of(2), 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Packs.of(List.of(last)).cheapest(decimal("120")))
                .withMessage("all packs that can be had hold 100, of 120 to be bought");
        assertThatIllegalArgumentException().isThrownBy(() -> Packs.of(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RESIN.cheapest(decimal("-1")))
                .withMessageContaining("-1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RESIN.cheapest(Double.NaN))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pack("can", "0", "1.00"))
                .withMessageContaining("can holds 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> pack("can", "1", "0.00"))
                .withMessageContaining("can costs 0.00");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Packs.of(
                        List.of(pack("can", "1", "1.00"), Pack.of("tin", decimal("1"), Money.parse("1.00 EUR")))))
                .withMessageContaining("one currency");
        assertThatIllegalArgumentException().isThrownBy(() -> new PackCount(last, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PackChoice(decimal("51"), List.of(new PackCount(last, 1)), last.price()))
                .withMessageContaining("short");
    }
}
