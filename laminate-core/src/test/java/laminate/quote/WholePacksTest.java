package laminate.quote;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.estimate.PackPrice;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.estimate.Supply;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.unit.Amount;
import laminate.unit.Money;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A lid takes 5 kg of mat, which is sold in bundles of 4 kg at 44 GBP; resin is free, and a hinge is no material. */
class WholePacksTest {
    private static final Workshop WORKSHOP = withoutLosses();
    private static final Part LID = new Part(
            "lid",
            1,
            List.of(zone(10, hand(mat(0.5)))),
            List.of(new Item("hinge", 2, 0.1, Optional.of(Money.parse("9.00 GBP")))),
            Measured.NOTHING);

    private static PriceList prices(String... free) {
        Supply bundles = new Supply(
                List.of(PackPrice.of("bundle", Amount.parse("4 kg"), Money.parse("44.00 GBP"))),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        List<Price> prices = new ArrayList<>();
        prices.add(new Price("mat-500", UnitPrice.parse("10 GBP/kg"), Optional.empty(), bundles));
        for (String material : free) {
            prices.add(new Price(material, UnitPrice.parse("0 GBP/kg"), Optional.empty()));
        }
        return new PriceList("GBP", Optional.empty(), prices);
    }

    private static PartEstimate lids(int count) {
        return new Estimator(WORKSHOP, Optional.empty()).estimate(LID.withCount(count));
    }

    @ParameterizedTest
    @CsvSource({"1, 88.00", "4, 220.00", "8, 440.00"})
    void aBatchPaysForTheBundlesItOpens(int count, String cost) {
        assertThat(new WholePacks(prices("polyester-ortho", "mekp")).apply(lids(count)))
                .isEqualTo(Money.parse(cost + " GBP"));
    }

    @Test
    void aMaterialWithoutAPriceIsNamed() {
        WholePacks packs = new WholePacks(prices("mekp"));
        assertThatThrownBy(() -> packs.apply(lids(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lid: polyester-ortho");
    }
}
