package laminate.print.estimate;

import static laminate.print.StrictJson.child;
import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import laminate.estimate.PartEstimate;
import laminate.print.StrictJson;
import laminate.print.TestParts;
import org.junit.jupiter.api.Test;

/** The JSON against its contract, read back by a strict parser. */
class EstimateJsonTest {
    private static final Map<String, Object> LID = part(TestParts.lockerLid());
    private static final Map<String, Object> DECK = part(TestParts.kayakDeck());
    private static final Map<String, Object> STRIP = part(TestParts.textbookStrip());

    @Test
    void theKeysOfTheContractStandInItsOrder() {
        assertInOrder(
                LID,
                "part",
                "process",
                "mass_kg",
                "mass_as_pulled_kg",
                "zones",
                "quantities",
                "hours",
                "cost",
                "cautions");
        Map<String, Object> zone = first(LID, "zones");
        assertInOrder(
                zone,
                "name",
                "area_m2",
                "thickness_m",
                "mass_per_area_kg_m2",
                "fibre_mass_fraction",
                "fibre_volume_fraction",
                "void_fraction",
                "coatings",
                "layers",
                "stiffness");
        assertInOrder(first(zone, "coatings"), "material", "thickness_m", "mass_per_area_kg_m2");
        assertInOrder(
                first(zone, "layers"),
                "material",
                "angle_deg",
                "thickness_m",
                "fibre_kg_m2",
                "resin_kg_m2",
                "fibre_mass_fraction",
                "fibre_volume_fraction");
        assertInOrder(child(zone, "stiffness"), "A_N_m", "B_N", "D_Nm", "in_plane", "bending", "expansion");
        assertInOrder(child(child(zone, "stiffness"), "in_plane"), "Ex_Pa", "Ey_Pa", "Gxy_Pa", "nu_xy");
        assertInOrder(child(child(zone, "stiffness"), "expansion"), "alpha_x_1_K", "alpha_y_1_K", "alpha_xy_1_K");
        Map<String, Object> quantities = child(LID, "quantities");
        assertInOrder(
                quantities,
                "fibre_kg",
                "core_kg",
                "coating_kg",
                "items_kg",
                "resin_in_part_kg",
                "resin_to_mix_kg",
                "catalyst_kg",
                "catalyst_ml",
                "resins",
                "materials");
        assertInOrder(
                first(quantities, "resins"),
                "resin",
                "use",
                "in_part_kg",
                "lost_kg",
                "evaporated_kg",
                "to_mix_kg",
                "agent",
                "agent_percent",
                "agent_kg",
                "agent_ml");
        assertInOrder(
                first(quantities, "materials"),
                "material",
                "kind",
                "area_m2",
                "length_m",
                "roll_width_m",
                "in_part_kg",
                "to_buy_kg");
        assertInOrder(child(LID, "cost"), "currency", "materials", "consumables", "items", "labour", "total");
    }

    @Test
    void whatIsNotKnownIsLeftOut() {
        assertThat(DECK).doesNotContainKeys("cost", "measured");
        assertThat(STRIP)
                .doesNotContainKeys("process", "fibre_mass_fraction", "fibre_volume_fraction", "void_fraction");
        Map<String, Object> strip = first(STRIP, "zones");
        assertThat(strip).doesNotContainKeys("fibre_mass_fraction", "fibre_volume_fraction", "void_fraction");
        assertThat(child(strip, "stiffness")).doesNotContainKey("expansion").containsKey("in_plane");
        assertThat(first(strip, "layers")).doesNotContainKeys("fibre_kg_m2", "core_kg_m2", "resin_kg_m2");
        assertThat(list(first(LID, "zones"), "layers").get(2))
                .containsKeys("core_kg_m2", "resin_kg_m2")
                .doesNotContainKeys("fibre_kg_m2", "fibre_mass_fraction");
    }

    @Test
    void aMissingPriceLeavesNoTotal() {
        Map<String, Object> cost = child(part(TestParts.lockerLidMissingPrices()), "cost");
        assertThat(cost).doesNotContainKeys("total", "labour", "consumables").containsEntry("known_total", "274.10");
        assertThat(cost.get("missing_prices"))
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .contains("mekp", "labour");
    }

    @Test
    void theLinesOfTheCostSumToTheirHeadsAndTheTotal() {
        Map<String, Object> cost = child(LID, "cost");
        BigDecimal total = BigDecimal.ZERO;
        for (String head : List.of("materials", "consumables", "items", "labour")) {
            BigDecimal sum = list(cost, "lines").stream()
                    .filter(line -> line.get("head").equals(head))
                    .map(line -> new BigDecimal((String) line.get("cost")))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertThat(cost.get(head)).isEqualTo(sum.toPlainString());
            total = total.add(sum);
        }
        assertThat(cost.get("total")).isEqualTo(total.toPlainString());
    }

    @Test
    void massesAddUp() {
        for (Map<String, Object> part : List.of(LID, DECK)) {
            Map<String, Object> quantities = child(part, "quantities");
            double parts = 0;
            for (String key : Set.of("fibre_kg", "core_kg", "given_kg", "coating_kg", "items_kg", "resin_in_part_kg")) {
                parts += number(quantities, key);
            }
            assertThat(parts).isCloseTo(number(part, "mass_kg"), within(1e-9));
            list(part, "zones").forEach(EstimateJsonTest::assertZoneAddsUp);
        }
    }

    private static void assertZoneAddsUp(Map<String, Object> zone) {
        double mass = 0;
        double thickness = 0;
        for (Map<String, Object> coating : list(zone, "coatings")) {
            mass += number(coating, "mass_per_area_kg_m2");
        }
        for (Map<String, Object> layer : list(zone, "layers")) {
            thickness += number(layer, "thickness_m");
            for (String key : Set.of("fibre_kg_m2", "core_kg_m2", "resin_kg_m2", "given_kg_m2")) {
                mass += layer.containsKey(key) ? number(layer, key) : 0;
            }
        }
        assertThat(mass).isCloseTo(number(zone, "mass_per_area_kg_m2"), within(1e-12));
        assertThat(thickness).isCloseTo(number(zone, "thickness_m"), within(1e-15));
    }

    @Test
    void resinsAddUpWithoutCoatings() {
        for (Map<String, Object> part : List.of(LID, DECK)) {
            Map<String, Object> quantities = child(part, "quantities");
            double toMix = 0;
            double agent = 0;
            for (Map<String, Object> resin : list(quantities, "resins")) {
                boolean coating = (Boolean) resin.get("coating");
                toMix += coating ? 0 : number(resin, "to_mix_kg");
                agent += coating ? 0 : number(resin, "agent_kg");
                double mixed = number(resin, "in_part_kg") + number(resin, "lost_kg") + number(resin, "evaporated_kg");
                boolean twoPart = resin.get("agent").equals("hardener-slow");
                double ratio = number(resin, "agent_percent") / 100;
                assertThat(number(resin, "to_mix_kg")).isCloseTo(twoPart ? mixed / (1 + ratio) : mixed, within(1e-12));
            }
            assertThat(toMix).isCloseTo(number(quantities, "resin_to_mix_kg"), within(1e-12));
            assertThat(agent).isCloseTo(number(quantities, "catalyst_kg"), within(1e-12));
        }
    }

    @Test
    void cautionsAreTextsWithTheirSourcesBeside() {
        assertThat(LID.get("cautions"))
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .isNotEmpty()
                .allMatch(String.class::isInstance)
                .isEqualTo(list(LID, "caution_details").stream()
                        .map(caution -> caution.get("text"))
                        .toList());
        assertThat(list(LID, "caution_details"))
                .allSatisfy(caution -> assertThat(caution).containsOnlyKeys("kind", "text", "source", "status"));
    }

    @Test
    void namesComeBackAsTheyWere() {
        PartEstimate hostile = TestParts.hostileNames();
        assertThat(part(hostile).get("part")).isEqualTo(hostile.part().name());
    }

    @Test
    void severalPartsStandInOneObject() {
        assertThat(list(StrictJson.object(print(TestParts.all())), "parts"))
                .hasSize(TestParts.all().size());
        assertThat(StrictJson.object(print(List.of()))).containsEntry("parts", List.of());
    }

    private static void assertInOrder(Map<String, Object> object, String... keys) {
        List<String> kept = new ArrayList<>(object.keySet());
        kept.retainAll(Set.of(keys));
        assertThat(kept).containsExactly(keys);
    }

    private static Map<String, Object> part(PartEstimate estimate) {
        return first(StrictJson.object(print(List.of(estimate))), "parts");
    }

    private static String print(List<PartEstimate> estimates) {
        StringBuilder json = new StringBuilder();
        try {
            new EstimateJson().print(estimates, json);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return json.toString();
    }

    private static Map<String, Object> first(Map<String, Object> object, String key) {
        return list(object, key).get(0);
    }

    private static double number(Map<String, Object> object, String key) {
        return (Double) object.get(key);
    }
}
