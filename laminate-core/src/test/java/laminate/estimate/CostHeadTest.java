package laminate.estimate;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import laminate.estimate.Cost.Category;
import laminate.process.Consumables;
import laminate.process.Labour;
import laminate.process.Workshop;
import laminate.unit.Money;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;

/** A head of the cost tells its sum only if it knows all of it. */
class CostHeadTest {
    private static final Workshop BARE = withoutLosses()
            .withLabour(new Labour(Optional.empty(), List.of()))
            .withConsumables(Consumables.listed(List.of()));

    private static PartEstimate estimate(Workshop workshop, String... prices) {
        List<Price> list = Arrays.stream(prices)
                .map(text -> text.split("=", 2))
                .map(pair -> new Price(pair[0], UnitPrice.parse(pair[1]), Optional.empty()))
                .toList();
        return new Estimator(workshop, Optional.of(new PriceList("GBP", Optional.empty(), list)))
                .estimate(part(zone(10, hand(mat(0.3)))));
    }

    @Test
    void whatHasALineIsSummed() {
        PartEstimate known = estimate(BARE, "mat-300=3.10 GBP/kg", "polyester-ortho=4 GBP/kg", "mekp=9 GBP/kg");
        CostHead materials = new CostHead(known, Category.MATERIALS);
        assertThat(materials.names()).containsExactly("mat-300", "polyester-ortho", "mekp");
        assertThat(materials.of("mat-300")).contains(Money.parse("9.30 GBP"));
        assertThat(materials.of("balsa-150")).contains(Money.parse("0.00 GBP"));
        assertThat(materials.sum()).isEqualTo(known.cost().orElseThrow().total());
        for (Category none : List.of(Category.CONSUMABLES, Category.ITEMS, Category.LABOUR)) {
            assertThat(new CostHead(known, none).sum()).contains(Money.parse("0.00 GBP"));
        }
    }

    /** A price by a measure that the material is not known by is as good as none. */
    @Test
    void whatHasNoUsablePriceIsNotSummed() {
        PartEstimate known = estimate(BARE, "mat-300=3.10 GBP/kg", "polyester-ortho=4 GBP/m²", "mekp=9 GBP/kg");
        CostHead materials = new CostHead(known, Category.MATERIALS);
        assertThat(materials.of("polyester-ortho")).isEmpty();
        assertThat(materials.of("mat-300")).contains(Money.parse("9.30 GBP"));
        assertThat(materials.sum()).isEmpty();
        assertThat(new Estimator(
                                BARE,
                                Optional.of(new PriceList(
                                        "GBP",
                                        Optional.empty(),
                                        List.of(
                                                new Price("mat-300", UnitPrice.parse("3 GBP/kg"), Optional.empty()),
                                                new Price(
                                                        "polyester-ortho",
                                                        UnitPrice.parse("4 GBP/m²"),
                                                        Optional.empty()),
                                                new Price("mekp", UnitPrice.parse("9 GBP/kg"), Optional.empty())))))
                        .materialCostPerArea(zone(10, hand(mat(0.3)))))
                .isEmpty();
    }

    @Test
    void workWithoutARateIsNotSummed() {
        PartEstimate unpaid = estimate(withoutLosses(), "mat-300=3.10 GBP/kg");
        assertThat(new CostHead(unpaid, Category.LABOUR).names()).containsExactly(Cost.LABOUR);
        assertThat(new CostHead(unpaid, Category.LABOUR).sum()).isEmpty();
        PartEstimate unpriced = new Estimator(BARE).estimate(part(zone(10, hand(mat(0.3)))));
        assertThat(new CostHead(unpriced, Category.LABOUR).sum()).isEmpty();
        assertThat(new CostHead(unpriced, Category.MATERIALS).of("mat-300")).isEmpty();
    }
}
