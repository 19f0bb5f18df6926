package laminate.compare;

import static laminate.compare.TestWays.by;
import static laminate.compare.TestWays.layers;
import static laminate.compare.TestWays.sandwich;
import static laminate.compare.TestWays.sheet;
import static laminate.compare.TestWays.sheets;
import static laminate.compare.TestWays.way;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestParts.staged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.estimate.ZoneEstimate;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Process;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The nearest whole layers, and what they must not spoil. */
class WholeLayersTest {
    private static final CompareOptions STIFF = CompareOptions.USUAL.with(Basis.SAME_STIFFNESS);
    private static final Process HAND = Process.HAND_LAY_UP;

    /** The zone in place of a sheet of 9 GPa. */
    private static Alternative made(double sheetThickness, CompareOptions options, List<Layer> layers) {
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, sheetThickness)));
        Candidate lid = way("lid", Part.of("lid", List.of(Zone.of("lid", 1, layers))));
        SideBySide ways = SideBySide.of(List.of(plywood, lid), options);
        assertThat(ways.refusals()).isEmpty();
        return ways.alternatives().get(1);
    }

    private static ZoneEstimate zone(Alternative way) {
        return way.estimate().zones().get(0);
    }

    private static List<String> materials(Alternative way) {
        return zone(way).layers().stream().map(laid -> laid.layer().material()).toList();
    }

    /** Equal layers, counted out: the number n of which (n/3)³ times the stiffness of three is nearest, by its ratio. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.002, 0.004, 0.0055, 0.008, 0.011, 0.02})
    void ofEqualLayersTheNearestNumberIsLaid(double sheetThickness) {
        Alternative way = made(sheetThickness, STIFF, layers(HAND, mat(0.45), mat(0.45), mat(0.45)));
        double asGiven = way.adjustments().get(0).ratioAsGiven();
        int nearest = IntStream.rangeClosed(1, 100)
                .boxed()
                .min(Comparator.comparingDouble(n -> Math.abs(Math.log(asGiven * Math.pow(n / 3.0, 3)))))
                .orElseThrow();
        assertThat(zone(way).layers()).hasSize(nearest);
        assertThat(way.adjustments().get(0).ratioAsLaid())
                .isCloseTo(asGiven * Math.pow(nearest / 3.0, 3), within(1e-9 * nearest));
        Adjustment.LayerCount count = way.adjustments().get(0).counts().get(0);
        assertThat(count.material()).isEqualTo("mat-450");
        assertThat(count.given()).isEqualTo(3);
        assertThat(count.exact()).isCloseTo(3 / Math.cbrt(asGiven), within(1e-9));
        assertThat(count.laid()).isEqualTo(nearest);
    }

    /** Of every material the number next below or above the exact one. */
    @ParameterizedTest
    @ValueSource(doubles = {0.003, 0.005, 0.007, 0.009, 0.012, 0.016})
    void everyMaterialIsLaidWithinOneLayerOfTheExactNumber(double sheetThickness) {
        for (Basis basis : List.of(Basis.SAME_STIFFNESS, Basis.SAME_WEIGHT)) {
            Alternative way = made(sheetThickness, STIFF.with(basis), TestWays.solid(HAND));
            assertThat(way.adjustments().get(0).counts())
                    .extracting(Adjustment.LayerCount::material)
                    .containsExactly("mat-300", "mat-450", "roving-600");
            for (Adjustment.LayerCount count : way.adjustments().get(0).counts()) {
                assertThat(Math.abs(count.laid() - count.exact())).isLessThan(1);
                assertThat(Collections.frequency(materials(way), count.material()))
                        .isEqualTo(count.laid());
            }
        }
    }

    /** Half the weight of any layer is the most that can be missing when there are enough of them. */
    @ParameterizedTest
    @ValueSource(doubles = {0.006, 0.008, 0.011, 0.014})
    void whatRemainsIsWhatIsLaid(double sheetThickness) {
        for (Basis basis : List.of(Basis.SAME_STIFFNESS, Basis.SAME_WEIGHT)) {
            Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, sheetThickness)));
            Candidate lid = way("lid", TestWays.lid(TestWays.solid(HAND)));
            SideBySide ways = SideBySide.of(List.of(plywood, lid), STIFF.with(basis));
            Measure measure = basis == Basis.SAME_WEIGHT ? Measure.MASS_PER_AREA : Measure.BENDING_STIFFNESS_X;
            Row row = ways.rows().stream()
                    .filter(one -> one.measure() == measure)
                    .findFirst()
                    .orElseThrow();
            double remaining = ways.alternatives().get(1).adjustments().get(0).remaining();
            assertThat(row.difference(1)).hasValueCloseTo(remaining, within(1e-12));
            assertThat(remaining).isBetween(-0.2, 0.2);
        }
    }

    /** Mat and roving by turns, not each by itself: roving is not laid on roving. */
    @Test
    void aRunIsLaidInRounds() {
        List<Layer> pair = layers(HAND, mat(0.45), roving(0.6));
        assertThat(new WholeLayers(pair).about(3)).singleElement().satisfies(laying -> {
            assertThat(laying.counts()).containsExactly(3, 3);
            assertThat(laying.layers())
                    .extracting(Layer::material)
                    .containsExactly("mat-450", "roving-600", "mat-450", "roving-600", "mat-450", "roving-600");
        });
    }

    /** Four of each over three places: the extra ones in the middle; two of each: none there. */
    @Test
    void layersAreSpreadEvenlyOverTheirPlaces() {
        List<Layer> three = layers(HAND, mat(0.45), roving(0.6), mat(0.45), roving(0.6), mat(0.45), roving(0.6));
        assertThat(new WholeLayers(three).about(4 / 3.0))
                .singleElement()
                .extracting(WholeLayers.Laying::counts)
                .isEqualTo(List.of(1, 1, 2, 2, 1, 1));
        assertThat(new WholeLayers(three).about(2 / 3.0))
                .singleElement()
                .extracting(WholeLayers.Laying::counts)
                .isEqualTo(List.of(1, 1, 0, 0, 1, 1));
    }

    /** A solid lay-up that is its own mirror image stays one: no coupling. */
    @ParameterizedTest
    @ValueSource(doubles = {0.004, 0.006, 0.008, 0.010, 0.013})
    void aSymmetricSolidLayUpStaysSymmetric(double sheetThickness) {
        List<Layer> odd =
                layers(HAND, mat(0.3), roving(0.6), mat(0.45), unidirectional(0.5), mat(0.45), roving(0.6), mat(0.3));
        List<Layer> even = layers(HAND, mat(0.3), roving(0.6), mat(0.45), mat(0.45), roving(0.6), mat(0.3));
        for (List<Layer> layers : List.of(odd, even)) {
            Alternative way = made(sheetThickness, STIFF, layers);
            List<String> reversed = new ArrayList<>(materials(way));
            Collections.reverse(reversed);
            assertThat(reversed).isEqualTo(materials(way));
            assertThat(Math.abs(zone(way).laminate().coupling().m11())).isLessThan(1e-6);
        }
    }

    /** So does a sandwich, with the mats outside and inside alike. */
    @ParameterizedTest
    @CsvSource({"0.010, 0.5", "0.020, 1", "0.026, 2", "0.035, 3"})
    void aSymmetricSandwichStaysSymmetric(double sheetThickness, double atLeast) {
        Alternative way = made(sheetThickness, STIFF, sandwich(HAND));
        assertThat(way.adjustments().get(0).factor()).isGreaterThan(atLeast / 10);
        List<String> reversed = new ArrayList<>(materials(way));
        Collections.reverse(reversed);
        assertThat(reversed).isEqualTo(materials(way));
        assertThat(Math.abs(zone(way).laminate().coupling().m11())).isLessThan(1e-6);
        assertThat(materials(way)).containsOnlyOnce("pvc-80");
    }

    /** Plies at +45 and −45 in equal number stay so, whatever the factor. */
    @ParameterizedTest
    @ValueSource(doubles = {0.004, 0.006, 0.008, 0.011})
    void aBalancedLayUpStaysBalanced(double sheetThickness) {
        List<Layer> layers = IntStream.range(0, 5)
                .boxed()
                .<Layer>flatMap(i -> Stream.of(angled(45), angled(-45)))
                .toList();
        Alternative way = made(sheetThickness, STIFF, layers);
        assertThat(Math.abs(zone(way).laminate().membrane().m16())).isLessThan(1e-6);
    }

    private static ReinforcementLayer angled(double angle) {
        return new ReinforcementLayer(unidirectional(0.3), angle, false, by(HAND), Optional.empty(), "");
    }

    /** A skin coat cures before the bulk is laid: it is not mixed with it, and not left out. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0015, 0.004, 0.010})
    void stagesStayApartAndNoneIsLeftOut(double sheetThickness) {
        List<Layer> layers = List.of(
                staged(mat(0.3), by(HAND), "skin"),
                staged(mat(0.45), by(HAND), "bulk"),
                staged(roving(0.6), by(HAND), "bulk"),
                staged(mat(0.45), by(HAND), "bulk"));
        List<String> stages = zone(made(sheetThickness, STIFF, layers)).layers().stream()
                .map(laid -> laid.layer().stage())
                .toList();
        assertThat(stages.stream().distinct()).containsExactly("skin", "bulk");
        assertThat(stages.lastIndexOf("skin")).isLessThan(stages.indexOf("bulk"));
    }

    /** Sheets between take the factor as it is, layers whole numbers; the bulk of the core stays. */
    @Test
    void aSheetTakesTheExactFactor() {
        List<Layer> layers = List.of(
                sheet(20e9, 1800, 0.001),
                CoreLayer.of(PVC, 0.010, by(HAND)),
                ReinforcementLayer.of(mat(0.45), by(HAND)),
                ReinforcementLayer.of(mat(0.45), by(HAND)));
        Alternative way = made(0.015, STIFF, layers);
        Adjustment adjustment = way.adjustments().get(0);
        assertThat(zone(way).laminate().plies().get(0).thickness())
                .isCloseTo(0.001 * adjustment.factor(), within(1e-15));
        assertThat(zone(way).laminate().plies().get(1).thickness()).isEqualTo(0.010);
        assertThat(adjustment.layers())
                .extracting(Adjustment.ChangedLayer::number)
                .containsExactly(1, 3, 4);
        assertThat(adjustment.layers().get(0).times()).isEqualTo(adjustment.factor());
        assertThat(adjustment.counts()).hasSize(1);
    }

    /** Many kinds of layer still come to an end. */
    @Test
    void manyMaterialsAreTriedOneByOne() {
        List<Layer> layers = IntStream.range(0, 12)
                .<Layer>mapToObj(i -> ReinforcementLayer.of(mat(0.2 + 0.05 * i), by(HAND)))
                .toList();
        Alternative way = made(0.02, STIFF, layers);
        assertThat(way.adjustments().get(0).remaining()).isBetween(-0.05, 0.05);
    }
}
