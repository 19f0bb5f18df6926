package laminate.estimate;

import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.staged;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.trimmed;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import laminate.material.Figure;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Item;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ConsumableUse;
import laminate.process.Consumables;
import laminate.process.ContentSet;
import laminate.process.Labour;
import laminate.process.Operation;
import laminate.process.Workshop;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;

/** Hours and consumables counted by hand for small parts. */
class WorkTest {
    /** 2 m² by hand with two coats of gelcoat, 1 m of trimmed edge; h/m² from memory, see the operations. */
    @Test
    void hoursByHand() {
        Zone zone = new Zone(
                "lid",
                1.9,
                1,
                List.of(new Coating(GELCOAT, gelcoat(0.00025).dose(), new Film(Film.Basis.WET, 0.00025), 2)),
                List.of(hand(mat(0.3)), CoreLayer.of(PVC, 0.01, HAND), hand(roving(0.6))),
                Optional.of(new Trim(2, 0.05)),
                ContentSet.TRADE,
                Measured.NOTHING);
        PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(times(2, part(zone)));
        assertThat(estimate.operations())
                .extracting(o -> o.operation().name())
                .containsExactly("mould preparation", "gelcoat", "lay-up", "core", "trimming");
        assertThat(estimate.operations()).extracting(OperationTime::amount).containsExactly(4.0, 8.0, 8.0, 4.0, 4.0);
        double hours = 4 * 0.10 + 8 * 0.10 + 8 * 0.22 + 4 * 0.30 + 4 * 0.15;
        assertThat(estimate.time()).isCloseTo(3600 * hours, within(1e-9));
    }

    @Test
    void hoursOfBagsAndInfusions() {
        Zone infused = zone(2, ReinforcementLayer.of(mat(0.3), INFUSED), ReinforcementLayer.of(roving(0.6), INFUSED));
        Zone bagged =
                zone(3, staged(mat(0.3), HAND, "skin"), staged(mat(0.3), BAG, "bulk"), staged(mat(0.3), BAG, "inner"));
        PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(times(2, part(infused, bagged)));
        assertThat(estimate.operations())
                .extracting(o -> o.operation().name() + " " + o.amount())
                .containsExactly(
                        "mould preparation 10.0", "lay-up 18.0", "dry lay-up 8.0", "bagging 16.0", "infusion 2.0");
    }

    @Test
    void aStepOfTheWorkshopsOwnCountsWhatItsBasisSays() {
        List<Operation> own = List.of(
                operation("polishing", Operation.Basis.AREA, 60),
                operation("rolling", Operation.Basis.LAYER_AREA, 30),
                operation("setting up", Operation.Basis.MOULDING, 600),
                operation("sealing", Operation.Basis.EDGE, 10),
                operation("lay-up", Operation.Basis.LAYER_AREA, 0));
        Workshop workshop = Workshop.USUAL.withLabour(new Labour(Optional.empty(), own));
        Zone zone = trimmed(zone(2, hand(mat(0.3)), hand(mat(0.3)), CoreLayer.of(PVC, 0.01, HAND)), new Trim(10, 0.1));
        PartEstimate estimate = new Estimator(workshop).estimate(times(2, part(zone)));
        assertThat(estimate.operations())
                .extracting(o -> o.operation().name() + " " + o.amount() + " " + o.time())
                .containsExactly(
                        "polishing 6.0 360.0", "rolling 12.0 360.0", "setting up 2.0 1200.0", "sealing 20.0 200.0");
    }

    @Test
    void stagesAndItemsAreCountedOverThePart() {
        List<Operation> own = List.of(
                operation("cleaning up", Operation.Basis.STAGE, 600),
                operation("drilling", Operation.Basis.ITEM, 120),
                operation("bagging", Operation.Basis.STAGE, 60));
        Workshop workshop = Workshop.USUAL.withLabour(new Labour(Optional.empty(), own));
        Zone outside = zone(2, staged(mat(0.3), HAND, "skin"), staged(mat(0.3), HAND, "bulk"));
        Zone inside = zone(1, staged(mat(0.3), HAND, "skin"), hand(mat(0.3)));
        List<Item> items =
                List.of(new Item("hinge", 2, 0.1, Optional.empty()), new Item("turn button", 1, 0.1, Optional.empty()));
        Part part = new Part("lid", 3, List.of(outside, inside), items, Measured.NOTHING);
        assertThat(new Estimator(workshop).estimate(part).operations())
                .extracting(o -> o.operation().name() + " " + o.amount() + " " + o.time())
                .containsExactly("cleaning up 9.0 5400.0", "drilling 9.0 1080.0");
    }

    private static Operation operation(String name, Operation.Basis basis, double seconds) {
        return new Operation(name, basis, Figure.stated(seconds));
    }

    @Test
    void usualConsumablesAreCountedOnceForEachProcess() {
        Zone zone = zone(2, staged(mat(0.3), HAND, "skin"), staged(mat(0.3), BAG, "bulk"));
        PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(times(3, part(zone)));
        assertThat(used(estimate, "gloves").pieces()).hasValue(24);
        assertThat(used(estimate, "peel-ply").area().orElseThrow()).isCloseTo(6 * 1.15, within(1e-13));
        assertThat(used(estimate, "sealant-tape").length()).hasValue(24);
        double mixed = estimate.quantities().resins().stream()
                .mapToDouble(ResinQuantity::mixed)
                .sum();
        assertThat(used(estimate, "acetone").amount(PriceBasis.LITRE).orElseThrow())
                .isCloseTo(0.15 * mixed, within(1e-13));
        assertThat(estimate.consumables()).extracting(MaterialQuantity::kind).containsOnly("consumable");
        PartEstimate infused = estimate(Workshop.USUAL, zone(2, ReinforcementLayer.of(mat(0.3), INFUSED)));
        assertThat(infused.consumables())
                .extracting(MaterialQuantity::material)
                .contains("flow-mesh", "spiral-tube", "feed-hose")
                .doesNotContain("brush");
    }

    @Test
    void aListOfTheWorkshopsOwnIsCountedOnce() {
        Workshop workshop = Workshop.USUAL.withConsumables(Consumables.listed(List.of(
                new ConsumableUse("tape", Figure.stated(2), PriceBasis.M, ConsumableUse.Basis.EDGE),
                new ConsumableUse("rag", Figure.stated(0.5), PriceBasis.KG, ConsumableUse.Basis.AREA),
                new ConsumableUse("pot", Figure.stated(1), PriceBasis.PIECE, ConsumableUse.Basis.RESIN),
                new ConsumableUse("nothing", Figure.stated(0), PriceBasis.PIECE, ConsumableUse.Basis.MOULDING))));
        Zone zone = trimmed(zone(2, staged(mat(0.3), HAND, "skin"), staged(mat(0.3), BAG, "bulk")), new Trim(10, 0.1));
        PartEstimate estimate = estimate(workshop, zone);
        assertThat(estimate.consumables())
                .extracting(MaterialQuantity::material)
                .containsExactly("tape", "rag", "pot");
        assertThat(used(estimate, "tape").length()).hasValue(20);
        assertThat(used(estimate, "rag").mass()).hasValue(1.5);
        double mixed = estimate.quantities().resins().stream()
                .mapToDouble(ResinQuantity::mixed)
                .sum();
        assertThat(used(estimate, "pot").pieces()).hasValue(Math.ceil(mixed));
    }

    private static MaterialQuantity used(PartEstimate estimate, String id) {
        return estimate.consumables().stream()
                .filter(c -> c.material().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PartEstimate estimate(Workshop workshop, Zone... zones) {
        return new Estimator(workshop).estimate(part(zones));
    }
}
