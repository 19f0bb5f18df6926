package laminate.quote.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How mouldings bear the cost of moulds, and moulds that of plugs. */
class MouldTest {

    private static final OptionalInt ANY = OptionalInt.empty();
    private static final Mould PLUG = new Mould("plug", gbp("300.00"), OptionalInt.of(3), ANY);

    private static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    private static Mould onPlug(OptionalInt life, OptionalInt planned) {
        return new Mould("mould", gbp("100.00"), life, planned, List.of(PLUG), OtherPulls.NONE);
    }

    @Test
    void asManyMouldsAreMadeAsTheirLifeDemands() {
        Mould mould = new Mould("mould", gbp("100.00"), OptionalInt.of(50), ANY);

        assertThat(List.of(mould.number(1), mould.number(50), mould.number(50.5), mould.number(101)))
                .containsExactly(1, 1, 2, 3);
        assertThat(mould.number(0.1 * 3 / 0.3 * 50)).isEqualTo(1);
        assertThat(mould.share(101)).isEqualTo(gbp("300.00"));
        assertThat(new Mould("mould", gbp("100.00"), ANY, ANY).share(5000)).isEqualTo(gbp("100.00"));
    }

    /** A mould lasts 50 pulls, a plug 3 moulds: 150 pulls take one plug, 151 take four moulds off two. */
    @ParameterizedTest
    @CsvSource({"1, 400.00", "50, 400.00", "51, 500.00", "150, 600.00", "151, 1000.00", "301, 1600.00"})
    void onePlugServesAllMouldsThatItLastsFor(double pulls, String share) {
        assertThat(onPlug(OptionalInt.of(50), ANY).share(pulls)).isEqualTo(gbp(share));
    }

    /** For 200 pulls four moulds and two plugs are made, at 1000 together: 5 a pull. Past the plan the batch bears all. */
    @ParameterizedTest
    @CsvSource({"1, 5.00", "30, 150.00", "200, 1000.00", "201, 1100.00"})
    void plannedPullsPayOffMouldAndPlug(double pulls, String share) {
        assertThat(onPlug(OptionalInt.of(50), OptionalInt.of(200)).share(pulls)).isEqualTo(gbp(share));
    }

    @Test
    void theSharesOfAPlanAreTheWhole() {
        Mould mould = onPlug(OptionalInt.of(7), OptionalInt.of(25));
        Money sum = gbp("0.00");
        for (int batch = 0; batch < 5; batch++) {
            sum = sum.plus(mould.share(5));
        }
        assertThat(sum).isEqualTo(mould.share(25)).isEqualTo(mould.cost(4));
    }

    @Test
    void aFactorReachesThePlugAndAnUnplannedMouldIsPaidOffAtOnce() {
        Mould mould = new Mould(
                "mould",
                gbp("100.00"),
                OptionalInt.of(50),
                OptionalInt.of(50),
                List.of(new Mould("plug", gbp("300.00"), ANY, OptionalInt.of(3))),
                OtherPulls.NONE);

        assertThat(mould.share(10)).isEqualTo(gbp("40.00"));
        assertThat(mould.times(1.1).share(10)).isEqualTo(gbp("44.00"));
        assertThat(mould.unplanned().share(10)).isEqualTo(gbp("400.00"));
    }

    /** Three pulls in their turn off a mould at 100: 33.33 and 66.67 are the sums on the way. */
    @Test
    void everyOneBearsFromTheSumBeforeToTheSumAfter() {
        Mould mould = new Mould("mould", gbp("100.00"), ANY, ANY);

        assertThat(mould.among(others(0, 2)).share(1)).isEqualTo(gbp("33.33"));
        assertThat(mould.among(others(1, 1)).share(1)).isEqualTo(gbp("33.34"));
        assertThat(mould.among(others(2, 0)).share(1)).isEqualTo(gbp("33.33"));
        assertThat(mould.among(others(1, 1)).times(2).share(1)).isEqualTo(gbp("66.66"));
        assertThat(mould.among(others(1, 1)).unplanned().share(1)).isEqualTo(gbp("33.34"));
    }

    @Test
    void pullsCannotBeTakenBack() {
        assertThatThrownBy(() -> others(0, -2))
                .hasMessage("pulls of others are zero or more, not 0 before and -2 after");
        assertThatThrownBy(() -> PLUG.share(0)).hasMessage("plug: pulls must be above 0, not 0.0");
    }

    private static OtherPulls others(int before, int after) {
        return new OtherPulls(BigDecimal.valueOf(before), BigDecimal.valueOf(after));
    }

    @Test
    void lifeAndPlanAreOfOnePullOrMore() {
        assertThatThrownBy(() -> new Mould("mould", gbp("1.00"), OptionalInt.of(0), ANY))
                .hasMessageContaining("must be one or more, not 0, 1");
        assertThatThrownBy(() -> new Mould("mould", gbp("1.00"), ANY, OptionalInt.of(-2)))
                .hasMessageContaining("must be one or more, not 1, -2");
    }
}
