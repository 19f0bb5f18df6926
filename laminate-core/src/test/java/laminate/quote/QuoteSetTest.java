package laminate.quote;

import static laminate.quote.TestYard.ANY;
import static laminate.quote.TestYard.HATCH;
import static laminate.quote.TestYard.HOUR;
import static laminate.quote.TestYard.LID;
import static laminate.quote.TestYard.MOULD;
import static laminate.quote.TestYard.PLUG;
import static laminate.quote.TestYard.PRICING;
import static laminate.quote.TestYard.bought;
import static laminate.quote.TestYard.gbp;
import static laminate.quote.TestYard.made;
import static laminate.quote.TestYard.on;
import static laminate.quote.TestYard.quoting;
import static laminate.quote.TestYard.sheet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.quote.price.BuildUp;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.quote.price.Sensitivity;
import laminate.quote.price.Sensitivity.Input;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quotes of parts that share moulds and plugs: a mould costs 200 and a plug 120. */
class QuoteSetTest {

    private static final Pricing SOUND = PRICING.withRejects(0);

    /** A lid and two hatches off one mould for six pulls, off a plug for two moulds. */
    private static List<Part> lidAndHatches(OptionalInt planned) {
        Tooling shared = made(on(MOULD, PLUG, OptionalInt.of(2), ANY), OptionalInt.of(6), planned);
        return List.of(on(LID, shared), on(HATCH.withCount(2), shared));
    }

    private static SetQuote quote(Pricing pricing, List<Part> parts, int sets) {
        return quoting(pricing).quoteSet(parts, List.of(sets));
    }

    private static Quote.Offer offer(SetQuote quote, int part) {
        return quote.quotes().get(part).offers().get(0);
    }

    private static Money share(SetQuote quote, int part) {
        return offer(quote, part).price().mouldShare();
    }

    /**
     * Worked by hand: a set takes 3 pulls, so 5 sets 15; those take ⌈15/6⌉ = 3 moulds, and these ⌈3/2⌉ = 2 plugs:
     * 3·200 + 2·120 = 840. A third of the pulls are lids.
     */
    @ParameterizedTest
    @CsvSource({
        "1,  3, 1, 1,  320.00, 106.67, 213.33",
        "2,  6, 1, 1,  320.00, 106.67, 213.33",
        "4, 12, 2, 1,  520.00, 173.33, 346.67",
        "5, 15, 3, 2,  840.00, 280.00, 560.00",
        "9, 27, 5, 3, 1360.00, 453.33, 906.67"
    })
    void theMouldIsSharedByThePull(
            int sets, double pulls, int moulds, int plugs, String all, String ofLids, String ofHatches) {
        SetQuote quote = quote(SOUND, lidAndHatches(ANY), sets);

        List<SetQuote.ToolCost> tools = quote.batches().get(0).tools();
        assertThat(tools).extracting(tool -> tool.use().name()).containsExactly("lid mould", "lid plug");
        assertThat(tools).extracting(tool -> tool.use().pulls()).containsExactly(pulls, (double) moulds);
        assertThat(tools).extracting(tool -> tool.use().made()).containsExactly(moulds, plugs);
        assertThat(tools).extracting(SetQuote.ToolCost::each).containsExactly(gbp("200.00"), gbp("120.00"));
        assertThat(tools.get(0).all()).isEqualTo(gbp(all));
        assertThat(tools.get(0).shares())
                .containsExactly(
                        new SetQuote.Share("lid", sets, gbp(ofLids)),
                        new SetQuote.Share("hatch", 2 * sets, gbp(ofHatches)));
        assertThat(tools.get(1).borne())
                .isEqualTo(tools.get(1).all())
                .isEqualTo(gbp("120.00").times(plugs));
        assertThat(List.of(share(quote, 0), share(quote, 1))).containsExactly(gbp(ofLids), gbp(ofHatches));
    }

    /** For 20 pulls 4 moulds and 2 plugs are made at 1040, of which 5 sets bear three quarters. */
    @Test
    void whatIsPlannedForPullsToComeIsLeftToThem() {
        SetQuote quote = quote(SOUND, lidAndHatches(OptionalInt.of(20)), 5);

        SetQuote.ToolCost mould = quote.batches().get(0).tools().get(0);
        assertThat(mould.use().pulls()).isEqualTo(15);
        assertThat(mould.use().made()).isEqualTo(4);
        assertThat(mould.all()).isEqualTo(gbp("1040.00"));
        assertThat(mould.borne()).isEqualTo(gbp("780.00"));
        assertThat(List.of(share(quote, 0), share(quote, 1))).containsExactly(gbp("260.00"), gbp("520.00"));
    }

    /** A quarter rejected, 3 good ones ask for 4 pulls: two sets are 8 pulls of one mould for 6. */
    @Test
    void rejectsOfAllPartsArePulls() {
        SetQuote quote = quote(PRICING.withRejects(0.25), lidAndHatches(ANY), 2);

        assertThat(quote.batches().get(0).tools().get(0).use().made()).isEqualTo(2);
        assertThat(share(quote, 0).plus(share(quote, 1))).isEqualTo(gbp("520.00"));
    }

    /**
     * Worked by hand: two lid moulds at 200 and three hatch moulds at 140 (materials 40) off plugs for four: the second plug
     * is for the fifth mould. A mould bears a fifth of 240, so that the lids bear 400 + 96, the hatches 420 + 144.
     */
    @Test
    void twoMouldsShareAPlug() {
        Part lidMould = on(MOULD, PLUG, OptionalInt.of(4), ANY);
        Part hatchMould = on(sheet("hatch mould", 8), PLUG, OptionalInt.of(4), ANY);
        List<Part> parts =
                List.of(on(LID, lidMould, OptionalInt.of(5), ANY), on(HATCH, hatchMould, OptionalInt.of(4), ANY));

        SetQuote quote = quote(SOUND, parts, 10);

        assertThat(List.of(share(quote, 0), share(quote, 1))).containsExactly(gbp("496.00"), gbp("564.00"));
        SetQuote.ToolCost plug = quote.batches().get(0).tools().get(2);
        assertThat(plug.use()).isEqualTo(new ToolUse(made(PLUG, OptionalInt.of(4), ANY), 5, 2, 2));
        assertThat(plug.shares())
                .containsExactly(
                        new SetQuote.Share("lid mould", 2, gbp("96.00")),
                        new SetQuote.Share("hatch mould", 3, gbp("144.00")));
    }

    @Test
    void aBoughtMouldIsSharedByItsName() {
        Tooling named = bought("300.00", OptionalInt.of(8)).named("tray");
        SetQuote shared = quote(SOUND, List.of(on(LID, named), on(HATCH.withCount(2), named)), 3);
        Tooling own = bought("300.00", OptionalInt.of(8));
        SetQuote apart = quote(SOUND, List.of(on(LID, own), on(HATCH.withCount(2), own)), 3);

        assertThat(shared.batches().get(0).tools())
                .extracting(tool -> tool.use().name())
                .containsExactly("tray");
        assertThat(List.of(share(shared, 0), share(shared, 1))).containsExactly(gbp("200.00"), gbp("400.00"));
        assertThat(List.of(share(apart, 0), share(apart, 1))).containsExactly(gbp("300.00"), gbp("300.00"));
        assertThat(apart.batches().get(0).tools())
                .extracting(tool -> tool.use().name())
                .containsExactly("mould", "mould");
    }

    /** A mould at 300 for both, an hour at 25 and 35 for film to set it up for either. */
    @Test
    void eachPartBearsItsOwnSetUp() {
        Tooling tooling = new Tooling(
                        Optional.empty(), Optional.of(gbp("300.00")), ANY, HOUR, Optional.of(gbp("35.00")))
                .named("tray");
        SetQuote quote = quote(SOUND, List.of(on(LID, tooling), on(HATCH, tooling)), 2);

        assertThat(List.of(share(quote, 0), share(quote, 1))).containsExactly(gbp("185.00"), gbp("185.00"));
        assertThat(offer(quote, 0).price().direct().hours()).isEqualTo(5);
        assertThat(offer(quote, 1).price().direct().hours()).isEqualTo(5);
    }

    @Test
    void aPartByItselfIsASetOfOne() {
        Part lid = lidAndHatches(OptionalInt.of(20)).get(0);

        assertThat(quoting(PRICING).quote(lid, List.of(1, 7)).offers())
                .isEqualTo(quoting(PRICING)
                        .quoteSet(List.of(lid), List.of(1, 7))
                        .quotes()
                        .get(0)
                        .offers());
    }

    @Test
    void aPartIsOfferedInItsNumberForEachNumberOfSets() {
        SetQuote quote = quoting(PRICING).quoteSet(lidAndHatches(ANY), List.of(5, 1));

        assertThat(quote.batches()).extracting(SetQuote.Batch::sets).containsExactly(5, 1);
        assertThat(quote.quotes().get(1).part().count()).isEqualTo(2);
        assertThat(quote.quotes().get(1).offers())
                .extracting(offer -> offer.price().direct().count())
                .containsExactly(10, 2);
    }

    /** Against the set quoted with every number of lids beside ten hatches, all moulds paid off at once. */
    @ParameterizedTest
    @CsvSource({"5, 60", "15, 20", "3, 40"})
    void breaksEvenWithTheOtherPartsAsOffered(int count, int planned) {
        Quote.Offer offer = lidsBesideTenHatches(count, OptionalInt.of(planned));
        OptionalInt expected = IntStream.rangeClosed(1, Math.max(count, planned))
                .filter(sold -> covers(offer.price().unitNet(), sold))
                .findFirst();

        assertThat(offer.breakEven()).isEqualTo(expected).isPresent();
        assertThat(offer.breakEven().getAsInt()).isGreaterThan(1);
    }

    private static boolean covers(Money each, int sold) {
        Money cost = lidsBesideTenHatches(sold, ANY).price().cost();
        return each.times(sold).amount().compareTo(cost.amount()) >= 0;
    }

    private static Quote.Offer lidsBesideTenHatches(int lids, OptionalInt planned) {
        Tooling shared = new Tooling(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(9),
                6 * HOUR,
                Optional.empty(),
                planned,
                Optional.of(on(MOULD, PLUG, ANY, ANY)));
        List<Part> parts = List.of(on(LID.withCount(lids), shared), on(HATCH.withCount(10), shared));
        return offer(quote(PRICING.withProfit(new Profit.MarkUp(0.3)), parts, 1), 0);
    }

    /**
     * Half the lids rejected, two good ones are 4 pulls beside the 2 of the hatches: a mould at 300 for 6 bears all. With rejects
     * of 55 % they are 4.44, and a second mould is needed, of whose cost of 600 the lids bear 4.44/6.44.
     */
    @Test
    void whatMovesOnePriceLeavesThePullsOfOthers() {
        Tooling tray = bought("300.00", OptionalInt.of(6)).named("tray");
        List<Part> parts = List.of(on(LID.withCount(2), tray), on(HATCH, tray));
        BuildUp build =
                offer(quote(Pricing.AT_COST.withRejects(0.5), parts, 1), 0).build();

        assertThat(build.price().mouldShare()).isEqualTo(gbp("200.00"));
        double pulls = 2 / 0.45;
        Money moved = gbp("600.00").times(pulls / (2 + pulls));
        Money direct = gbp("200.00").plus(gbp("200.00").times(0.55 / 0.45));
        assertThat(Sensitivity.swing(build, Input.REJECTS, 0.1).higher())
                .isEqualTo(direct.plus(moved).times(0.5));
    }

    @Test
    void everyPartIsOfferedForEveryNumberOfSets() {
        SetQuote quote = quoting(PRICING).quoteSet(lidAndHatches(ANY), List.of(5, 1));

        assertThatThrownBy(() -> new SetQuote(quote.quotes(), quote.batches().subList(0, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("lid has 2 offers for 1 numbers of sets");
    }

    @Test
    void aSetIsOfSomething() {
        assertThatThrownBy(() -> quote(SOUND, List.of(), 1)).hasMessage("a set has one part or more");
        assertThatThrownBy(() -> quote(SOUND, List.of(LID), 0)).hasMessage("a batch is of one or more, not 0");
        assertThatThrownBy(() -> quote(SOUND, List.of(LID.withCount(3)), 1_000_000_000))
                .hasMessage("lid: 1000000000 sets of 3 are more than can be counted");
    }
}
