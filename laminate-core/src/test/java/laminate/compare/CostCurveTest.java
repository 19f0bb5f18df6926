package laminate.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.quote.price.Mould;
import laminate.quote.price.OtherPulls;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Cost against number of parts, and where one way overtakes another. */
class CostCurveTest {
    private static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    private static CostCurve curve(String setUp, String mould, int life, String running, int mouldings) {
        return new CostCurve(gbp(setUp), Optional.of(mould(mould, OptionalInt.of(life))), gbp(running), mouldings);
    }

    private static Mould mould(String price, OptionalInt life) {
        return new Mould("mould", gbp(price), life, OptionalInt.empty());
    }

    private static CostCurve straight(String setUp, String each) {
        return new CostCurve(gbp(setUp), Optional.empty(), gbp(each), 1);
    }

    /** 80 to set up, 900 a mould of 50 parts, 3 parts for 100: by hand. */
    @ParameterizedTest
    @CsvSource({
        "1, 1013.33, 1013.33",
        "3, 1080.00, 360.00",
        "50, 2646.67, 52.93",
        "51, 3580.00, 70.20",
        "100, 5213.33, 52.13",
        "101, 6146.67, 60.86"
    })
    void costsSetUpOnceAMouldForItsLifeAndEachPart(int parts, String total, String each) {
        assertThat(curve("80.00", "900.00", 50, "100.00", 3).at(parts))
                .isEqualTo(new CostCurve.Point(parts, gbp(total), gbp(each)));
    }

    /** 781.95 for 6 is 130.325. */
    @Test
    void roundsEachPartUpLikeEveryAmount() {
        assertThat(curve("0.00", "0.00", 1, "781.95", 6).each()).isEqualTo(gbp("130.33"));
    }

    @Test
    void withoutALifeOneMouldLastsForever() {
        CostCurve curve =
                new CostCurve(gbp("0.00"), Optional.of(mould("500.00", OptionalInt.empty())), gbp("10.00"), 1);
        assertThat(curve.moulds(CostCurve.MOST_PARTS)).isEqualTo(1);
        assertThat(curve.at(List.of(1, 100_000)))
                .extracting(CostCurve.Point::total)
                .containsExactly(gbp("510.00"), gbp("1000500.00"));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> straight("-1.00", "2.00"))
                .withMessage("a cost must not be below zero, was -1.00 GBP");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> straight("1.00", "-2.00"))
                .withMessage("a cost must not be below zero, was -2.00 GBP");
        assertThatIllegalArgumentException().isThrownBy(() -> curve("1.00", "1.00", 0, "1.00", 1));
        assertThatIllegalArgumentException().isThrownBy(() -> curve("1.00", "1.00", 1, "1.00", 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> straight("1.00", "1.00").at(0))
                .withMessage("parts must be from 1 to 100000, not 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve("1.00", "-3.00", 5, "1.00", 1))
                .withMessage("a cost must not be below zero, was -3.00 GBP");
    }

    /** Hand 60 a part; infusion 1000 to set up and 50 a part: even at 100, cheaper from 101. */
    @Test
    void theFirstNumberAtWhichTheOtherIsCheaper() {
        assertThat(Overtaking.between("hand", straight("0.00", "60.00"), "infusion", straight("1000.00", "50.00")))
                .contains(new BreakEven("hand", "infusion", 101, OptionalInt.of(101)));
        assertThat(Overtaking.between("infusion", straight("1000.00", "50.00"), "hand", straight("0.00", "60.00")))
                .contains(new BreakEven("hand", "infusion", 101, OptionalInt.of(101)));
    }

    /** A mould of 500 for every 40 gives the lead back at 41 parts. */
    @Test
    void aNewMouldGivesTheLeadBackForAWhile() {
        CostCurve hand = straight("0.00", "60.00");
        CostCurve infusion = curve("0.00", "500.00", 40, "40.00", 1);
        assertThat(Overtaking.between("hand", hand, "infusion", infusion))
                .contains(new BreakEven("hand", "infusion", 26, OptionalInt.of(51)));
        CostCurve costly = curve("0.00", "780.00", 40, "40.00", 1);
        assertThat(Overtaking.between("hand", hand, "infusion", costly))
                .contains(new BreakEven("hand", "infusion", 40, OptionalInt.of(1483)));
    }

    /**
     * 795 for every 40 is 19.875 a part against 20 saved: 50 of set-up is back once the eleventh mould is all but worn out,
     * at 20 n > 50 + 11 · 795. At 804 a mould loses by part and leads only while the other's set-up weighs more.
     */
    @Test
    void theLeadMayComeLateOrNotLast() {
        CostCurve hand = straight("20.00", "60.00");
        CostCurve late = curve("70.00", "795.00", 40, "40.00", 1);
        assertThat(Overtaking.between("hand", hand, "infusion", late)
                        .orElseThrow()
                        .parts())
                .isEqualTo(440);
        CostCurve notLast = curve("0.00", "804.00", 40, "40.00", 1);
        assertThat(Overtaking.between("hand", hand, "infusion", notLast))
                .contains(new BreakEven("hand", "infusion", 40, OptionalInt.empty()));
        CostCurve never = curve("20.00", "801.00", 40, "40.00", 1);
        assertThat(Overtaking.between("hand", hand, "infusion", never)).isEmpty();
    }

    @Test
    void nothingOvertakesItsEqualNorAnotherCurrency() {
        CostCurve one = straight("5.00", "60.00");
        assertThat(Overtaking.between("one", one, "other", one)).isEmpty();
        CostCurve euros = new CostCurve(Money.parse("0.00 EUR"), Optional.empty(), Money.parse("1.00 EUR"), 1);
        assertThat(Overtaking.between("one", one, "other", euros)).isEmpty();
    }

    static Stream<List<CostCurve>> randomPairs() {
        Random random = new Random(20261125);
        return IntStream.range(0, 120).mapToObj(i -> List.of(random(random), random(random)));
    }

    private static CostCurve random(Random random) {
        return new CostCurve(
                coins(random.nextInt(100_000)),
                random.nextInt(4) > 0 ? Optional.of(random(random, random.nextInt(2))) : Optional.empty(),
                coins(20_000 + random.nextInt(5_000)),
                1 + random.nextInt(3));
    }

    private static Mould random(Random random, int plugs) {
        return new Mould(
                "mould",
                coins(random.nextInt(300_000)),
                random.nextInt(4) > 0 ? OptionalInt.of(1 + random.nextInt(300)) : OptionalInt.empty(),
                OptionalInt.empty(),
                plugs > 0 ? List.of(random(random, plugs - 1)) : List.of(),
                OtherPulls.NONE);
    }

    private static Money coins(int coins) {
        return gbp(java.math.BigDecimal.valueOf(coins, 2).toPlainString());
    }

    /** Every number of parts counted out, in whole coins times the parts estimated. */
    @ParameterizedTest
    @MethodSource("randomPairs")
    void breakEvensAreThoseOfBruteForce(List<CostCurve> pair) {
        List<Integer> changes = new ArrayList<>();
        int leader = 0;
        int firstLeader = 0;
        for (int n = 1; n <= CostCurve.MOST_PARTS; n++) {
            int cheaper = -Long.signum(counted(pair.get(0), n) * pair.get(1).mouldings()
                    - counted(pair.get(1), n) * pair.get(0).mouldings());
            if (cheaper != 0 && leader != 0 && cheaper != leader) {
                changes.add(n);
            }
            leader = cheaper == 0 ? leader : cheaper;
            firstLeader = firstLeader == 0 ? leader : firstLeader;
        }
        Optional<BreakEven> found = Overtaking.between("one", pair.get(0), "other", pair.get(1));
        assertThat(found.isPresent()).isEqualTo(!changes.isEmpty());
        if (found.isPresent()) {
            OptionalInt forGood =
                    leader == firstLeader ? OptionalInt.empty() : OptionalInt.of(changes.get(changes.size() - 1));
            assertThat(found.get())
                    .isEqualTo(new BreakEven(
                            firstLeader > 0 ? "one" : "other",
                            firstLeader > 0 ? "other" : "one",
                            changes.get(0),
                            forGood));
        }
    }

    private static long counted(CostCurve curve, int parts) {
        long once = cents(curve.setUp()) + counted(curve.mould().stream().toList(), parts);
        return once * curve.mouldings() + parts * cents(curve.running());
    }

    /** Moulds for so many pulls, and the plugs for so many moulds. */
    private static long counted(List<Mould> moulds, long pulls) {
        long sum = 0;
        for (Mould mould : moulds) {
            int life = mould.life().orElse(Integer.MAX_VALUE);
            long made = (pulls + life - 1) / life;
            sum += made * cents(mould.worksCost()) + counted(mould.madeOn(), made);
        }
        return sum;
    }

    private static long cents(Money money) {
        return money.amount().movePointRight(2).longValueExact();
    }

    /** Twice the parts estimated for twice the money is the same curve. */
    @Test
    void theCurveDoesNotDependOnHowManyWereEstimated() {
        CostCurve one = curve("80.00", "900.00", 50, "33.30", 1);
        CostCurve many = curve("80.00", "900.00", 50, "333.00", 10);
        IntStream.of(1, 7, 50, 51, 1000).forEach(n -> assertThat(many.at(n)).isEqualTo(one.at(n)));
        assertThat(Overtaking.between("one", one, "many", many)).isEmpty();
    }
}
