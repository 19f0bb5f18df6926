package laminate.compare;

import static laminate.compare.TestWays.PAID;
import static laminate.compare.TestWays.PRICES;
import static laminate.compare.TestWays.lid;
import static laminate.compare.TestWays.sheet;
import static laminate.compare.TestWays.sheets;
import static laminate.compare.TestWays.solid;
import static laminate.compare.TestWays.way;
import static laminate.testing.TestParts.times;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import laminate.estimate.Cost.Category;
import laminate.estimate.Estimator;
import laminate.estimate.PriceList;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Consumables;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.quote.LearningCurve;
import laminate.quote.Quoting;
import laminate.quote.Terms;
import laminate.quote.price.Mould;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What each way costs, line by line and against the number of parts. */
class ComparedCostTest {
    private static final List<Tooling> MOULDS = List.of(
            new Tooling(Optional.empty(), Optional.of(gbp("450.00")), OptionalInt.of(10), 3600, Optional.empty()),
            new Tooling(
                    Optional.of(Process.INFUSION),
                    Optional.of(gbp("1400.00")),
                    OptionalInt.of(300),
                    6 * 3600,
                    Optional.of(gbp("80.00"))));

    private static final SideBySide THREE = compare(PAID, PRICES);

    private static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    private static SideBySide compare(Workshop workshop, PriceList prices) {
        return SideBySide.of(
                Arrays.stream(Process.values())
                        .map(process -> new Candidate(
                                process.word(), lid(solid(process)).withTooling(MOULDS), workshop, Optional.of(prices)))
                        .toList(),
                CompareOptions.USUAL);
    }

    private static PriceList without(String... materials) {
        return new PriceList(
                "GBP",
                Optional.empty(),
                PRICES.prices().stream()
                        .filter(price -> !List.of(materials).contains(price.material()))
                        .toList());
    }

    private static CostRow row(SideBySide ways, Category head, String name) {
        return ways.costs().stream()
                .filter(row -> row.head().equals(Optional.ofNullable(head))
                        && row.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static CostRow total(SideBySide ways) {
        return ways.costs().get(ways.costs().size() - 1);
    }

    /** The lines make the heads, the heads the total, the total that of the estimate, to the penny, in every column. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void linesSumToHeadsAndHeadsToTheTotal(int column) {
        Money sum = Money.zero("GBP");
        for (Category head : List.of(Category.MATERIALS, Category.CONSUMABLES, Category.LABOUR)) {
            Money lines = THREE.costs().stream()
                    .filter(row ->
                            row.head().equals(Optional.of(head)) && !row.name().isEmpty())
                    .map(row -> row.each().get(column).orElseThrow())
                    .reduce(Money.zero("GBP"), Money::plus);
            assertThat(row(THREE, head, "").each().get(column)).contains(lines);
            sum = sum.plus(lines);
        }
        assertThat(total(THREE).head()).isEmpty();
        assertThat(total(THREE).each().get(column)).contains(sum);
        assertThat(THREE.alternatives()
                        .get(column)
                        .estimate()
                        .cost()
                        .orElseThrow()
                        .total())
                .contains(sum);
    }

    /** A line for what the choice costs or saves: no mesh by hand, no acetone by infusion. */
    @Test
    void everyLineTellsWhatTheChoiceCostsOrSaves() {
        CostRow mesh = row(THREE, Category.CONSUMABLES, "flow-mesh");
        assertThat(mesh.each().subList(0, 2)).containsOnly(Optional.of(gbp("0.00")));
        assertThat(mesh.extra(2)).isEqualTo(mesh.each().get(2));
        assertThat(mesh.difference(2)).isEmpty();
        CostRow acetone = row(THREE, Category.CONSUMABLES, "acetone");
        assertThat(acetone.extra(2).orElseThrow().amount())
                .isEqualTo(acetone.each().get(0).orElseThrow().amount().negate());
        assertThat(acetone.difference(2)).hasValue(-1);
        BigDecimal extras = THREE.costs().stream()
                .filter(row -> !row.name().isEmpty())
                .map(row -> row.extra(2).orElseThrow().amount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(total(THREE).extra(2).orElseThrow().amount()).isEqualByComparingTo(extras);
        assertThat(THREE.costs()).noneMatch(row -> row.head().equals(Optional.of(Category.ITEMS)));
    }

    /** Set-up: 1 h, or 6 h and 80 GBP; the running cost is the estimate's. */
    @Test
    void theCurveTakesTheMouldAndTheSetUpOfItsProcess() {
        for (int i = 0; i < 3; i++) {
            CostCurve curve = THREE.alternatives().get(i).curve().orElseThrow();
            assertThat(curve.running()).isEqualTo(total(THREE).each().get(i).orElseThrow());
            assertThat(curve.setUp()).isEqualTo(i < 2 ? gbp("28.00") : gbp("248.00"));
            assertThat(curve.mould().map(Mould::worksCost)).contains(i < 2 ? gbp("450.00") : gbp("1400.00"));
            assertThat(curve.life()).hasValue(i < 2 ? 10 : 300);
        }
    }

    /** Infusion costs more by part here, but its mould lasts: it overtakes when hand lay-up has worn out a few. */
    @Test
    void breakEvensAndCountsAreThoseOfTheCurves() {
        assertThat(THREE.breakEvens()).isNotEmpty();
        for (BreakEven even : THREE.breakEvens()) {
            Money before = cost(even.overtaken(), even.parts() - 1);
            Money beforeBy = cost(even.overtaking(), even.parts() - 1);
            assertThat(beforeBy.amount()).isGreaterThanOrEqualTo(before.amount());
            assertThat(cost(even.overtaking(), even.parts()).amount())
                    .isLessThan(cost(even.overtaken(), even.parts()).amount());
            assertThat(THREE.counts()).contains(even.parts() - 1, even.parts());
        }
        assertThat(THREE.counts()).startsWith(1, 2, 5).contains(10, 11, 20, 21, 30, 31, 300, 301);
        assertThat(THREE.counts().last()).isGreaterThan(601).isLessThanOrEqualTo(CostCurve.MOST_PARTS);
    }

    private static Money cost(String name, int parts) {
        return THREE.alternatives().stream()
                .filter(way -> way.name().equals(name))
                .findFirst()
                .flatMap(Alternative::curve)
                .orElseThrow()
                .at(parts)
                .total();
    }

    /** One price less: its line, its head, the total and the curve go; all else stays, and it is said. */
    @Test
    void aMissingPriceLeavesOutWhatItWouldSpoil() {
        SideBySide ways = compare(PAID, without("flow-mesh"));
        assertThat(ways.alternatives().get(2).missing()).containsExactly("flow-mesh");
        assertThat(ways.alternatives().get(2).curve()).isEmpty();
        assertThat(row(ways, Category.CONSUMABLES, "flow-mesh").each())
                .containsExactly(Optional.of(gbp("0.00")), Optional.of(gbp("0.00")), Optional.empty());
        assertThat(row(ways, Category.CONSUMABLES, "flow-mesh").extra(2)).isEmpty();
        assertThat(row(ways, Category.CONSUMABLES, "").each().get(2)).isEmpty();
        assertThat(total(ways).each().get(2)).isEmpty();
        assertThat(total(ways).difference(2)).isEmpty();
        for (Category kept : List.of(Category.MATERIALS, Category.LABOUR)) {
            assertThat(row(ways, kept, "")).isEqualTo(row(THREE, kept, ""));
        }
        assertThat(total(ways).each().subList(0, 2))
                .isEqualTo(total(THREE).each().subList(0, 2));
        assertThat(ways.breakEvens())
                .noneMatch(
                        even -> Stream.of(even.overtaken(), even.overtaking()).anyMatch("infusion"::equals));
        assertThat(ways.remarks())
                .contains(
                        "No price for infusion: flow-mesh; the sums it enters, the cost against the number of parts and"
                                + " the break-evens are left out.");
    }

    /** Without a rate neither work nor set-up has a price. */
    @Test
    void aMissingRateIsMissedOnceForWorkAndSetUp() {
        SideBySide ways = compare(Workshop.USUAL, PRICES);
        assertThat(ways.alternatives()).allSatisfy(way -> {
            assertThat(way.missing()).containsExactly("labour");
            assertThat(way.curve()).isEmpty();
        });
        assertThat(row(ways, Category.LABOUR, "labour").each()).containsOnly(Optional.empty());
        assertThat(ways.counts()).isEmpty();
        assertThat(row(ways, Category.MATERIALS, "")).isEqualTo(row(THREE, Category.MATERIALS, ""));
    }

    @Test
    void withoutPricesNothingIsSaidOfCost() {
        SideBySide ways = SideBySide.of(
                List.of(new Candidate("hand", lid(solid(Process.HAND_LAY_UP)), PAID, Optional.empty())),
                CompareOptions.USUAL);
        assertThat(ways.costs()).isEmpty();
        assertThat(ways.alternatives().get(0).missing()).isEmpty();
        assertThat(ways.counts()).isEmpty();
        assertThat(ways.remarks()).hasSize(1);
    }

    /** Consumables that are a share of the materials are unknown while those are. */
    @Test
    void aShareOfUnknownMaterialsIsUnknown() {
        Workshop share = PAID.withConsumables(Consumables.shareOfMaterials(0.2));
        SideBySide whole = compare(share, PRICES);
        assertThat(row(whole, Category.CONSUMABLES, "consumables").each())
                .isEqualTo(row(whole, Category.MATERIALS, "").each().stream()
                        .map(materials -> materials.map(money -> money.times(0.2)))
                        .toList());
        SideBySide lacking = compare(share, without("mat-300"));
        assertThat(row(lacking, Category.CONSUMABLES, "consumables").each()).containsOnly(Optional.empty());
        assertThat(row(lacking, Category.MATERIALS, "").each()).containsOnly(Optional.empty());
    }

    /** Items of one part, of parts estimated by the dozen too. */
    @Test
    void costsAreOfOnePart() {
        Part one = lid(solid(Process.HAND_LAY_UP));
        Part hinged = new Part(
                one.name(),
                1,
                one.zones(),
                List.of(new Item("hinge", 2, 0.12, Optional.of(gbp("9.00")))),
                one.measured());
        SideBySide ways =
                SideBySide.of(List.of(way("one", hinged), way("dozen", times(12, hinged))), CompareOptions.USUAL);
        assertThat(row(ways, Category.ITEMS, "hinge").each())
                .containsExactly(Optional.of(gbp("18.00")), Optional.of(gbp("18.00")));
        assertThat(ways.alternatives().get(1).curve().orElseThrow().mouldings()).isEqualTo(12);
        assertThat(ways.counts()).contains(12);
    }

    private static Optional<Money> firstMould(SideBySide ways) {
        return ways.alternatives().get(0).curve().orElseThrow().mould().map(mould -> mould.cost(1));
    }

    private static Tooling on(Part mould, OptionalInt life) {
        return new Tooling(
                Optional.empty(), Optional.empty(), life, 0, Optional.empty(), OptionalInt.empty(), Optional.of(mould));
    }

    private static Part named(String name, Process process) {
        return Part.of(name, lid(solid(process)).zones());
    }

    /** Moulds for two lids, plugs for three moulds: any number of parts costs what a quote says its moulds cost. */
    @Test
    void mouldsCostWhatAQuoteSays() {
        Part mould = named("mould", Process.HAND_LAY_UP)
                .withTooling(List.of(on(named("plug", Process.VACUUM_BAG), OptionalInt.of(3))));
        Part part = lid(solid(Process.HAND_LAY_UP)).withTooling(List.of(on(mould, OptionalInt.of(2))));
        Terms terms = new Terms(
                new Pricing(
                        0, new Overhead(0.4, Overhead.Base.LABOUR), 0.1, new Profit.Margin(0.25), 0, Optional.empty()),
                LearningCurve.NONE,
                1.2,
                0);
        List<Integer> counts = List.of(1, 2, 3, 6, 7, 12, 13, 40);
        SideBySide ways = SideBySide.of(
                List.of(new Candidate("one", part, PAID, Optional.of(PRICES), terms)), CompareOptions.USUAL);
        CostCurve curve = ways.alternatives().get(0).curve().orElseThrow();

        List<Money> quoted = new Quoting(new Estimator(PAID, Optional.of(PRICES)), PAID, terms)
                .quote(part, counts).offers().stream()
                        .map(offer -> offer.price().mouldShare())
                        .toList();
        assertThat(counts)
                .extracting(
                        count -> curve.at(count).total().plus(curve.running().times(-count)))
                .containsExactlyElementsOf(quoted);
        assertThat(quoted.stream().distinct()).hasSize(7);
        assertThat(ways.remarks()).anyMatch(remark -> remark.contains("one plug serves all moulds that it lasts for"));
    }

    @Test
    void aMouldThatCannotBePricedLeavesOutTheCurve() {
        Part cradled = new Part(
                "mould",
                1,
                lid(solid(Process.HAND_LAY_UP)).zones(),
                List.of(new Item("cradle", 1, 7, Optional.empty())),
                Measured.NOTHING);
        Part part = lid(solid(Process.HAND_LAY_UP)).withTooling(List.of(on(cradled, OptionalInt.of(2))));
        SideBySide ways = SideBySide.of(List.of(way("one", part)), CompareOptions.USUAL);

        assertThat(ways.alternatives().get(0).missing()).containsExactly("cradle");
        assertThat(ways.alternatives().get(0).curve()).isEmpty();
    }

    @Test
    void whereMouldingsShareAMouldEachBearsItAlone() {
        Tooling shared = on(named("mould", Process.HAND_LAY_UP), OptionalInt.of(20));
        Part hatch = named("hatch", Process.HAND_LAY_UP);
        List<Candidate> ways = List.of(
                way("lid", lid(solid(Process.HAND_LAY_UP)).withTooling(List.of(shared))),
                way("hatch", hatch.withTooling(List.of(shared))));

        assertThat(SideBySide.of(ways, CompareOptions.USUAL).remarks())
                .contains(
                        "lid, hatch are made on one mould; against the number of parts each bears it alone here, where a"
                                + " quote of the project shares it.");
        assertThat(SideBySide.of(List.of(ways.get(0), way("again", ways.get(0).part())), CompareOptions.USUAL)
                        .remarks())
                .noneMatch(remark -> remark.contains("one mould"));
    }

    /** A mould that has no price is taken to be there; so is that of a sheet, which none is laid in. */
    @Test
    void aMouldWithoutAPriceIsTakenToBeThere() {
        Tooling infusion = MOULDS.get(1);
        List<Candidate> candidates = Stream.of(Process.HAND_LAY_UP, Process.INFUSION)
                .map(process -> way(process.word(), lid(solid(process)).withTooling(List.of(infusion))))
                .toList();
        SideBySide ways = SideBySide.of(candidates, CompareOptions.USUAL);
        assertThat(firstMould(ways)).isEmpty();
        assertThat(ways.remarks())
                .contains("No price of a mould is stated for hand lay-up; it is taken to be there.")
                .noneMatch(remark -> remark.contains("stated for infusion"));
        Part plywood = sheets("sheet", sheet(9e9, 600, 0.01)).withTooling(MOULDS);
        SideBySide sheet = SideBySide.of(List.of(way("plywood", plywood)), CompareOptions.USUAL);
        assertThat(firstMould(sheet)).contains(gbp("450.00"));
    }

    /** The mould must bear what asks most of it. */
    @Test
    void aPartOfSeveralProcessesTakesTheMouldOfTheMostDemanding() {
        Part mixed = lid(Stream.concat(solid(Process.HAND_LAY_UP).stream().limit(1), solid(Process.INFUSION).stream())
                        .toList())
                .withTooling(MOULDS);
        SideBySide ways = SideBySide.of(List.of(way("mixed", mixed)), CompareOptions.USUAL);
        assertThat(firstMould(ways)).contains(gbp("1400.00"));
    }

    @Test
    void toolingInAnotherCurrencyIsRefused() {
        Tooling dear = new Tooling(
                Optional.empty(), Optional.of(Money.parse("5.00 EUR")), OptionalInt.empty(), 0, Optional.empty());
        Part part = lid(solid(Process.HAND_LAY_UP));
        SideBySide ways = SideBySide.of(
                List.of(way("here", part), way("there", part.withTooling(List.of(dear)))), CompareOptions.USUAL);
        assertThat(ways.refusals())
                .containsExactly(new Refusal("there", "tooling is priced in EUR, the price list in GBP"));
    }
}
