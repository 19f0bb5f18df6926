package laminate.quote;

import static laminate.quote.TestYard.ANY;
import static laminate.quote.TestYard.HOUR;
import static laminate.quote.TestYard.LID;
import static laminate.quote.TestYard.MOULD;
import static laminate.quote.TestYard.PLUG;
import static laminate.quote.TestYard.PRICING;
import static laminate.quote.TestYard.WORKSHOP;
import static laminate.quote.TestYard.estimator;
import static laminate.quote.TestYard.gbp;
import static laminate.quote.TestYard.on;
import static laminate.quote.TestYard.quoting;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import laminate.estimate.Estimator;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Labour;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.quote.price.BatchPrice;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quotes of parts of a {@link TestYard}. */
class QuotingTest {

    private static BatchPrice price(Pricing pricing, Part part, int count) {
        return quoting(pricing).quote(part, List.of(count)).offers().get(0).price();
    }

    @Test
    void aPriceIsWorkedByHand() {
        BatchPrice price = price(PRICING, LID, 1);

        assertThat(price.direct().materials()).isEqualTo(gbp("50.00"));
        assertThat(price.direct().labour()).isEqualTo(gbp("50.00"));
        assertThat(price.rejects()).isEqualTo(gbp("5.26"));
        assertThat(price.overhead()).isEqualTo(gbp("52.63"));
        assertThat(price.net()).isEqualTo(gbp("157.89"));
    }

    @Test
    void anOfferStandsForEachNumberInTheOrderAsked() {
        Quote quote = quoting(PRICING).quote(LID.withCount(7), List.of(10, 1, 10));

        assertThat(quote.offers())
                .extracting(offer -> offer.price().direct().count())
                .containsExactly(10, 1, 10);
        assertThat(quote.offers().get(0).price().net()).isEqualTo(gbp("1578.95"));
        assertThat(quote.offers().get(0)).isEqualTo(quote.offers().get(2));
    }

    @Test
    void itemsAreBoughtForEveryMoulding() {
        Part hinged = new Part(
                "lid", 1, LID.zones(), List.of(new Item("hinge", 2, 0.1, Optional.of(gbp("9.00")))), Measured.NOTHING);

        assertThat(price(Pricing.AT_COST, hinged, 3).direct().items()).isEqualTo(gbp("54.00"));
    }

    /** A mould for two pulls: four take two moulds at 200 and one plug at 120. */
    @ParameterizedTest
    @CsvSource({"1, 320.00", "2, 320.00", "4, 520.00", "5, 720.00"})
    void mouldsAndPlugAreMadeAtWorksCost(int count, String share) {
        Part lid = on(LID, on(MOULD, PLUG, ANY, ANY), OptionalInt.of(2), ANY);
        Pricing pricing = PRICING.withRejects(0).withContingency(0.1).withProfit(new Profit.Margin(0.25));

        assertThat(price(pricing, lid, count).mouldShare()).isEqualTo(gbp(share));
        assertThat(quoting(pricing).mould(lid).orElseThrow().cost((count + 1) / 2))
                .isEqualTo(gbp(share));
    }

    /** Four good lids of five pulled: a fifth rejected, so a mould for two pulls is needed a third time. */
    @Test
    void rejectsArePullsButAMouldIsMadeGood() {
        Part lid = on(LID, MOULD, OptionalInt.of(2), ANY);

        assertThat(price(PRICING.withRejects(0.2), lid, 4).mouldShare()).isEqualTo(gbp("600.00"));
        assertThat(quoting(PRICING.withRejects(0.2)).mould(lid).orElseThrow().cost(1))
                .isEqualTo(gbp("200.00"));
        assertThat(quoting(PRICING).mould(LID)).isEmpty();
    }

    /** For ten pulls five moulds at 200 and a plug at 120, so that a pull bears 112. */
    @Test
    void plannedPullsShareTheCost() {
        Part lid = on(LID, on(MOULD, PLUG, ANY, ANY), OptionalInt.of(2), OptionalInt.of(10));

        assertThat(price(PRICING.withRejects(0), lid, 4).mouldShare()).isEqualTo(gbp("448.00"));
    }

    @Test
    void aMouldWithAPriceIsBought() {
        Part lid =
                on(LID, new Tooling(Optional.empty(), Optional.of(gbp("420.00")), ANY, 0, Optional.of(gbp("35.00"))));

        assertThat(price(PRICING, lid, 1).mouldShare()).isEqualTo(gbp("455.00"));
        assertThat(price(PRICING, lid, 9).mouldShare()).isEqualTo(gbp("455.00"));
    }

    @Test
    void theMouldForAnotherProcessIsLeftOut() {
        Part lid = on(
                LID,
                new Tooling(Optional.of(Process.INFUSION), Optional.of(gbp("900.00")), ANY, HOUR, Optional.empty()));

        assertThat(price(PRICING, lid, 1)).isEqualTo(price(PRICING, LID, 1));
    }

    /** By Wright's curve ten lids take 2 h·10^(1 + log₂ 0.8); setting up is not learnt, and all of it is paid 1.2-fold. */
    @Test
    void timeIsLearntAndPaid() {
        Terms terms = new Terms(PRICING, new LearningCurve(0.8, 1), 1.2, 16 * HOUR);
        Part lid = on(LID, new Tooling(Optional.empty(), Optional.empty(), ANY, HOUR, Optional.empty()));

        Quote.Offer offer = quoting(terms).quote(lid, List.of(10)).offers().get(0);

        double learnt = 2 * Math.pow(10, 1 + Math.log(0.8) / Math.log(2));
        assertThat(offer.price().direct().hours()).isCloseTo(1.2 * (1 + learnt), within(1e-9));
        assertThat(offer.mouldTime().setUp()).isCloseTo(1.2 * HOUR, within(1e-9));
        assertThat(offer.mouldTime().work()).isCloseTo(0.12 * learnt * HOUR, within(1e-9));
        assertThat(offer.mouldTime().pulls()).isEqualTo(11);
        assertThat(offer.mouldTime().days()).isEqualTo(11);
    }

    @Test
    void moreHandsShortenTheClockNotTheHours() {
        Workshop two = WORKSHOP.withShopFloor(WORKSHOP.shopFloor().withCrew(2));
        Terms terms = new Terms(PRICING, LearningCurve.NONE, 1, 0);
        Quote.Offer offer = new Quoting(estimator(two, "mat-500"), two, terms)
                .quote(LID, List.of(1))
                .offers()
                .get(0);

        assertThat(offer.mouldTime().work()).isEqualTo(HOUR);
        assertThat(offer.price().direct().hours()).isEqualTo(2);
    }

    @Test
    void materialsAreReckonedAsAskedButThoseOfMouldsAsUsed() {
        Quoting asBought = new Quoting(
                estimator(WORKSHOP, "mat-500"),
                WORKSHOP,
                new Terms(PRICING, LearningCurve.NONE, 1, 0),
                estimate -> gbp("200.00"));

        BatchPrice price = asBought.quote(on(LID, MOULD, ANY, ANY), List.of(2))
                .offers()
                .get(0)
                .price();

        assertThat(price.direct().materials()).isEqualTo(gbp("200.00"));
        assertThat(price.mouldShare()).isEqualTo(gbp("200.00"));
    }

    /** Against the costs of every number, each estimated and built up by itself. */
    @ParameterizedTest
    @CsvSource({"5, 20", "20, 20", "10, 40", "3, 12"})
    void breaksEvenWhereTheFirstNumberCoversItsCost(int count, int planned) {
        Part lid = on(LID, on(MOULD, PLUG, ANY, ANY), OptionalInt.of(6), OptionalInt.of(planned));
        Terms terms = new Terms(
                PRICING.withProfit(new Profit.MarkUp(0.4)).withContingency(0.05), new LearningCurve(0.85, 3), 1.1, 0);
        Quote.Offer offer = quoting(terms).quote(lid, List.of(count)).offers().get(0);

        OptionalInt expected = IntStream.rangeClosed(1, Math.max(count, planned))
                .filter(sold -> covers(offer.price().unitNet(), sold, terms))
                .findFirst();

        assertThat(offer.breakEven()).isEqualTo(expected).isPresent();
        assertThat(offer.breakEven().getAsInt()).isGreaterThan(1);
    }

    private static boolean covers(Money each, int sold, Terms terms) {
        Part allAtOnce = on(LID, on(MOULD, PLUG, ANY, ANY), OptionalInt.of(6), ANY);
        Money cost = quoting(terms)
                .quote(allAtOnce, List.of(sold))
                .offers()
                .get(0)
                .price()
                .cost();
        return each.times(sold).amount().compareTo(cost.amount()) >= 0;
    }

    @Test
    void oneOfManyCostsLessThanOneOfFew() {
        Part lid = on(LID, on(MOULD, PLUG, ANY, ANY), ANY, ANY);
        Terms terms = new Terms(PRICING, new LearningCurve(0.9, 5), 1.2, 0);
        List<Money> prices = new ArrayList<>();
        for (Quote.Offer offer :
                quoting(terms).quote(lid, List.of(1, 2, 5, 25, 100)).offers()) {
            prices.add(offer.price().unitNet());
        }
        assertThat(prices).isSortedAccordingTo((one, other) -> other.amount().compareTo(one.amount()));
        assertThat(prices).doesNotHaveDuplicates();
    }

    @Test
    void allThatHasNoPriceIsNamed() {
        Part lid = on(LID, Part.of("mould", List.of(zone(1, hand(mat(0.3))))), ANY, ANY);
        Quoting quoting = quoting(PRICING);

        assertThat(quoting.missing(LID)).isEmpty();
        assertThat(quoting.missing(lid)).containsExactly("mat-300");
        assertThatThrownBy(() -> quoting.quote(lid, List.of(1)))
                .hasMessage("mould: a quote needs a price for everything; there is none for mat-300");
    }

    @Test
    void aQuoteNeedsPricesAndARate() {
        Terms terms = new Terms(PRICING, LearningCurve.NONE, 1, 0);
        assertThatThrownBy(() -> new Quoting(new Estimator(WORKSHOP), WORKSHOP, terms).quote(LID, List.of(1)))
                .hasMessageContaining("lid has no price list")
                .hasMessageContaining("add prices:");
        Workshop idle = WORKSHOP.withLabour(new Labour(Optional.empty(), List.of()));
        Part setUp = on(LID, new Tooling(Optional.empty(), Optional.empty(), ANY, HOUR, Optional.empty()));
        Quoting unpaid = new Quoting(estimator(idle, "mat-500"), idle, terms);
        assertThatThrownBy(() -> unpaid.quote(setUp, List.of(1)))
                .hasMessage("lid: a quote needs the rate of"
                        + " labour; there is none; add labour: {rate: 28 GBP/h} to the workshop file");
        assertThat(unpaid.quote(LID, List.of(1)).offers().get(0).hourly()).isEqualTo(gbp("0.00"));
        assertThatThrownBy(() -> quoting(PRICING).quote(LID, List.of(0))).hasMessageContaining("one or more, not 0");
    }

    @Test
    void termsRefuseNonsense() {
        assertThatThrownBy(() -> new Terms(PRICING, LearningCurve.NONE, 0.9, 0)).hasMessageContaining("not 0.9 times");
        assertThatThrownBy(() -> new Terms(PRICING, LearningCurve.NONE, 1, -1)).hasMessageContaining("not -1.0 s");
    }
}
