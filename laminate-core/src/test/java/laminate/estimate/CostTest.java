package laminate.estimate;

import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Cost.Category;
import laminate.material.Figure;
import laminate.part.CoreLayer;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.process.ConsumableUse;
import laminate.process.Consumables;
import laminate.process.Labour;
import laminate.process.Workshop;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What mouldings cost: prices by every measure, what has none, sums to the penny. */
class CostTest {
    /** No losses, no labour, no consumables: 10 m² of one mat is 3 kg of mat, 7 kg of resin in the part. */
    private static final Workshop BARE = withoutLosses()
            .withLabour(new Labour(Optional.empty(), List.of()))
            .withConsumables(Consumables.listed(List.of()));

    private static final Part SHEET = part(zone(10, hand(mat(0.3))));
    private static final double EVAPORATED = 1 - (0.286 * 0.42 - 0.0529);

    @Test
    void pricesEveryMaterialByItsMeasure() {
        Cost cost = cost(
                BARE,
                SHEET,
                price("mat-300", "3.10 GBP/kg"),
                price("polyester-ortho", "4.40 GBP/l"),
                price("mekp", "9 GBP/kg"));
        double resin = 7 / EVAPORATED;
        assertThat(amounts(cost)).containsExactly("9.30", pence(resin / 1.110 * 4.40), pence(resin * 0.015 * 9));
        assertThat(cost.lines().get(0).quantity()).isCloseTo(3, within(1e-12));
        assertThat(cost.lines().get(0).price()).contains(UnitPrice.parse("3.10 GBP/kg"));
        assertThat(cost.lines()).extracting(Cost.Line::category).containsOnly(Category.MATERIALS);
        assertThat(cost.total()).contains(cost.knownTotal());
    }

    @Test
    void theMaterialsOfAZoneCostByItsArea() {
        PriceList prices = list(
                price("mat-300", "3.10 GBP/kg"), price("polyester-ortho", "4.40 GBP/kg"), price("mekp", "9 GBP/kg"));
        double resin = 7 / EVAPORATED;
        assertThat(new Estimator(BARE, Optional.of(prices))
                        .materialCostPerArea(SHEET.zones().get(0)))
                .hasValueCloseTo((9.30 + resin * 4.40 + resin * 0.015 * 9) / 10, within(0.002));
        PriceList lacking = list(price("mat-300", "3.10 GBP/kg"), price("mekp", "9 GBP/kg"));
        assertThat(new Estimator(BARE, Optional.of(lacking))
                        .materialCostPerArea(SHEET.zones().get(0)))
                .isEmpty();
        assertThat(new Estimator(BARE).materialCostPerArea(SHEET.zones().get(0)))
                .isEmpty();
    }

    /** 10 m² off a roll of 1.25 m is 8 m, off one of 1 m it is 10 m; a roll of 1.27 m by 35 kg holds 11.67 times 3 kg. */
    @ParameterizedTest
    @CsvSource({
        "2.00 GBP/m², , , , 20.00",
        "2.00 GBP/m, , , , 16.00",
        "2.00 GBP/m, 1.00, , , 20.00",
        "2.00 GBP/kg, , , , 6.00",
        "2.00 GBP/lb, , , , 13.23",
        "2.00 GBP/yd², , , , 23.92",
        "2.00 GBP/ft², , , , 215.28",
        "2.00 GBP/yd, , , , 17.50",
        "2.00 GBP/yd, 0.9144, , , 23.92",
        "2.00 GBP/ft, , , , 52.49",
        "70.00 GBP/roll, 1.27, , 35, 6.00",
        "70.00 GBP/roll, 1.25, 40, , 14.00"
    })
    void pricesReinforcementByAreaLengthMassAndRoll(
            String price, Double width, Double length, Double mass, String expected) {
        Optional<Price.Roll> roll =
                Optional.ofNullable(width).map(w -> new Price.Roll(w, optional(length), optional(mass)));
        Cost cost = cost(BARE, SHEET, new Price("mat-300", UnitPrice.parse(price), roll));
        assertThat(amounts(cost)).containsExactly(expected);
        assertThat(cost.missing()).containsExactly("polyester-ortho", "mekp");
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** A roll is shared by the mass it holds where that is known, before its length. */
    @Test
    void aRollOfKnownMassIsSharedByMass() {
        Price.Roll roll = new Price.Roll(1.25, OptionalDouble.of(1), OptionalDouble.of(30));
        Cost cost = cost(BARE, SHEET, new Price("mat-300", UnitPrice.parse("70 GBP/roll"), Optional.of(roll)));
        assertThat(amounts(cost)).containsExactly("7.00");
    }

    @Test
    void nothingIsPricedByWhatItIsNotMeasuredBy() {
        Cost cost = cost(
                BARE,
                SHEET,
                price("mat-300", "1 GBP/piece"),
                price("polyester-ortho", "1 GBP/m²"),
                new Price(
                        "mekp",
                        UnitPrice.parse("1 GBP/roll"),
                        Optional.of(new Price.Roll(1, OptionalDouble.of(1), OptionalDouble.empty()))));
        assertThat(cost.lines()).isEmpty();
        assertThat(cost.missing())
                .containsExactly(
                        "mat-300 (its price is by piece, which it is not measured by)",
                        "polyester-ortho (its price is by m², which it is not measured by)",
                        "mekp (its price is by roll, which it is not measured by)");
        assertThat(cost.total()).isEmpty();
        assertThat(cost.knownTotal()).isEqualTo(Money.zero("GBP"));
    }

    @Test
    void aMissingPriceIsNamedOnceAndLeavesNoTotal() {
        Part cored = part(
                zone(1, CoreLayer.of(PVC, 0.010, HAND)),
                zone(1, CoreLayer.of(PVC, 0.020, HAND)),
                zone(1, hand(mat(0.3))));
        Cost cost = cost(
                BARE,
                cored,
                price("mat-300", "1 GBP/kg"),
                price("polyester-ortho", "1 GBP/kg"),
                price("mekp", "1 GBP/kg"));
        assertThat(cost.missing()).containsExactly("pvc-80");
        assertThat(cost.total()).isEmpty();
        assertThat(cost.knownTotal().amount()).isPositive();
        // Sheets of two thicknesses are two lines of the list to buy.
        Cost priced = cost(BARE, cored, price("pvc-80", "10 GBP/m²"));
        assertThat(amounts(priced)).containsExactly("10.00", "10.00");
    }

    @Test
    void itemsArePricedByTheMoulding() {
        Part part = new Part(
                "lid",
                3,
                SHEET.zones(),
                List.of(
                        new Item("hinge", 2, 0.1, Optional.of(Money.parse("9.05 GBP"))),
                        new Item("latch", 1, 0.2, Optional.empty())),
                Measured.NOTHING);
        Cost cost = cost(BARE, part);
        assertThat(cost.of(Category.ITEMS)).isEqualTo(Money.parse("54.30 GBP"));
        assertThat(cost.lines().get(0).quantity()).isEqualTo(6);
        assertThat(cost.lines().get(0).price()).contains(UnitPrice.parse("9.05 GBP/piece"));
        assertThat(cost.missing()).contains("latch");
    }

    @Test
    void labourIsPricedByTheHour() {
        Workshop workshop = BARE.withLabour(Labour.USUAL.at(UnitPrice.parse("28 GBP/h")));
        PartEstimate estimate = estimate(workshop, SHEET);
        Cost cost = estimate.cost().orElseThrow();
        // 10 m²: 0.1 h/m² of preparation, 0.22 h/m² of laying.
        assertThat(estimate.time()).isCloseTo(3.2 * 3600, within(1e-9));
        assertThat(cost.of(Category.LABOUR)).isEqualTo(Money.parse("89.60 GBP"));
        assertThat(cost.lines().get(0).quantity()).isCloseTo(3.2, within(1e-12));
        assertThat(cost.lines().get(0).price()).contains(UnitPrice.parse("28 GBP/h"));
        assertThat(cost(BARE.withLabour(Labour.USUAL), SHEET).missing()).contains("labour");
        assertThat(cost(BARE, SHEET).missing()).doesNotContain("labour");
    }

    @Test
    void consumablesArePricedByTheirMeasureOrAsAShare() {
        List<ConsumableUse> uses = List.of(
                use("tape", PriceBasis.M, ConsumableUse.Basis.AREA, 2),
                use("brush", PriceBasis.PIECE, ConsumableUse.Basis.MOULDING, 3),
                use("acetone", PriceBasis.LITRE, ConsumableUse.Basis.MOULDING, 0.5),
                use("rag", PriceBasis.KG, ConsumableUse.Basis.MOULDING, 0.25),
                use("film", PriceBasis.M2, ConsumableUse.Basis.AREA, 1.5));
        Price[] prices = {
            price("mat-300", "10 GBP/kg"),
            price("tape", "0.10 GBP/m"),
            price("brush", "1.50 GBP/piece"),
            price("acetone", "4 GBP/l"),
            price("rag", "2 GBP/kg"),
            price("film", "0.30 GBP/m²")
        };
        Cost listed = cost(BARE.withConsumables(Consumables.listed(uses)), SHEET, prices);
        assertThat(amounts(listed)).containsExactly("30.00", "2.00", "4.50", "2.00", "0.50", "4.50");
        assertThat(listed.of(Category.CONSUMABLES)).isEqualTo(Money.parse("13.50 GBP"));
        Cost share = cost(BARE.withConsumables(Consumables.shareOfMaterials(0.07)), SHEET, prices);
        assertThat(amounts(share)).containsExactly("30.00", "2.10");
        assertThat(share.lines().get(1).quantity()).isEqualTo(0.07);
        assertThat(share.lines().get(1).price()).isEmpty();
    }

    private static ConsumableUse use(String id, PriceBasis measure, ConsumableUse.Basis basis, double amount) {
        return new ConsumableUse(id, Figure.stated(amount), measure, basis);
    }

    @ParameterizedTest
    @MethodSource("laminate.estimate.ConservationTest#parts")
    void linesSumToHeadsAndTotalToThePenny(Part part) {
        List<Price> prices = new ArrayList<>();
        PartEstimate bare = new Estimator(RandomParts.WORKSHOP).estimate(part);
        bare.quantities().materials().stream()
                .map(MaterialQuantity::material)
                .distinct()
                .forEach(id -> prices.add(price(id, "7.137 GBP/kg")));
        bare.consumables().forEach(used -> prices.add(price(used.material(), "0.333 GBP/" + measure(used))));
        Workshop workshop = RandomParts.WORKSHOP.withLabour(Labour.USUAL.at(UnitPrice.parse("28.35 GBP/h")));
        Part priced = new Part(
                part.name(),
                part.count(),
                part.zones(),
                List.of(new Item("hinge", 2, 0.1, Optional.of(Money.parse("1.99 GBP")))),
                part.measured());
        Cost cost = cost(workshop, priced, prices.toArray(Price[]::new));
        assertThat(cost.missing()).isEmpty();
        BigDecimal lines =
                cost.lines().stream().map(line -> line.cost().amount()).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal heads = Arrays.stream(Category.values())
                .map(head -> cost.of(head).amount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(cost.total().orElseThrow().amount())
                .isEqualByComparingTo(lines)
                .isEqualByComparingTo(heads);
        assertThat(cost.lines())
                .allSatisfy(line -> assertThat(line.cost().amount().scale()).isEqualTo(2));
        assertThat(cost.lines()).extracting(Cost.Line::category).isSorted();
    }

    private static String measure(MaterialQuantity used) {
        return Arrays.stream(PriceBasis.values())
                .filter(basis -> used.amount(basis).isPresent())
                .findFirst()
                .orElseThrow()
                .symbol();
    }

    @Test
    void currenciesAreNotMixed() {
        assertThatThrownBy(() -> list(price("mat-300", "1 EUR/kg")))
                .hasMessage("the price of mat-300 is in EUR, the list is in GBP");
        Workshop euros = BARE.withLabour(Labour.USUAL.at(UnitPrice.parse("28 EUR/h")));
        assertThatThrownBy(() -> cost(euros, SHEET)).hasMessage("labour is priced in EUR, the price list in GBP");
        Part item = new Part(
                "lid",
                1,
                SHEET.zones(),
                List.of(new Item("hinge", 1, 0, Optional.of(Money.parse("1 EUR")))),
                Measured.NOTHING);
        assertThatThrownBy(() -> cost(BARE, item)).hasMessage("hinge is priced in EUR, the price list in GBP");
    }

    @Test
    void aPriceListNamesEachMaterialOnce() {
        assertThatThrownBy(() -> list(price("mat-300", "1 GBP/kg"), price("mat-300", "2 GBP/kg")))
                .hasMessage("mat-300 is priced twice");
        assertThat(list(price("mat-300", "1 GBP/kg")).find("mat-450")).isEmpty();
    }

    @Test
    void aPriceMustSayHowMuchOfIt() {
        assertThatThrownBy(() -> price("mat-300", "1 GBP/h")).hasMessage("mat-300 cannot be priced by the hour");
        assertThatThrownBy(() -> price("mat-300", "1 GBP/roll"))
                .hasMessageContaining("give the roll's width and its length or mass");
        Price.Roll unknown = new Price.Roll(1.25, OptionalDouble.empty(), OptionalDouble.empty());
        assertThatThrownBy(() -> new Price("mat-300", UnitPrice.parse("1 GBP/roll"), Optional.of(unknown)))
                .hasMessageContaining("its length or mass");
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "1, 0, 1", "1, 1, -1", "NaN, 1, 1", "Infinity, 1, 1"})
    void aRollHasDimensionsAboveZero(double width, double length, double mass) {
        assertThatThrownBy(() -> new Price.Roll(width, OptionalDouble.of(length), OptionalDouble.of(mass)))
                .hasMessageContaining("must be above zero");
    }

    @Test
    void noPricesNoCost() {
        assertThat(new Estimator(BARE).estimate(SHEET).cost()).isEmpty();
    }

    @Test
    void theDateOfThePricesIsKept() {
        PriceList dated = new PriceList("GBP", Optional.of(LocalDate.of(2026, 1, 15)), List.of());
        assertThat(new Estimator(BARE, Optional.of(dated))
                        .estimate(SHEET)
                        .cost()
                        .orElseThrow()
                        .date())
                .contains(LocalDate.of(2026, 1, 15));
    }

    @Test
    void threeMouldingsTakeThreeTimesTheMaterial() {
        Part bagged = part(zone(10, ReinforcementLayer.of(roving(0.6), BAG)));
        Cost one = cost(BARE, bagged, price("roving-600", "10 GBP/kg"));
        Cost three = cost(BARE, times(3, bagged), price("roving-600", "10 GBP/kg"));
        assertThat(amounts(one)).containsExactly("60.00");
        assertThat(amounts(three)).containsExactly("180.00");
    }

    private static List<String> amounts(Cost cost) {
        return cost.lines().stream()
                .map(line -> line.cost().amount().toPlainString())
                .toList();
    }

    private static String pence(double amount) {
        return new Money(BigDecimal.valueOf(amount), "GBP").amount().toPlainString();
    }

    private static Cost cost(Workshop workshop, Part part, Price... prices) {
        return estimate(workshop, part, prices).cost().orElseThrow();
    }

    private static PartEstimate estimate(Workshop workshop, Part part, Price... prices) {
        return new Estimator(workshop, Optional.of(list(prices))).estimate(part);
    }

    private static PriceList list(Price... prices) {
        return new PriceList("GBP", Optional.empty(), List.of(prices));
    }

    private static Price price(String material, String price) {
        return new Price(material, UnitPrice.parse(price), Optional.empty());
    }
}
