package laminate.estimate;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.cloth;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.BAG_EPOXY;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.withVoids;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.Map;
import laminate.material.Reinforcement;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.ContentSet;
import laminate.process.FibreContent;
import laminate.process.Range;
import laminate.process.Workshop;
import laminate.testing.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Estimates against laminates that were made, weighed and measured; sources stand beside each in the resource. */
class AsBuiltValidationTest {
    private static final Estimator ESTIMATOR = new Estimator(Workshop.USUAL);

    /** Two mats of 300 g/m² in polyester by hand, 1.25 mm: planned is 15 % thicker, the tolerance just reaches. */
    @Test
    void matSheetOfTwoLayersLiesInsideTheTolerance() {
        Range planned = lay(repeated(2, hand(mat(0.300)))).thickness();
        double measured = measured("A1", "thickness_m");
        assertThat(planned.contains(measured)).isTrue();
        assertThat(planned.planned() / measured - 1).isCloseTo(0.155, within(0.005));
    }

    /** Without voids, at the content that the source's own thickness gives, nothing is left to explain. */
    @Test
    void matSheetAtItsOwnContentHasItsThickness() {
        FibreContent own = FibreContent.ofMassFraction(number(reference("A1"), "derived", "psi"));
        double thickness = new Estimator(Workshop.USUAL)
                .lay(zone(1, repeated(2, hand(mat(0.300)).with(own))).with(ContentSet.ISO_NOMINAL_SIMPLE))
                .thickness()
                .planned();
        assertThat(thickness).isCloseTo(measured("A1", "thickness_m"), within(0.00001));
    }

    /** One schedule of six cloths, four plates of three builders: the plan is among them, its tolerance covers all. */
    @ParameterizedTest
    @ValueSource(strings = {"A10", "A11", "A12", "A13"})
    void toleranceCoversEveryBuildersPlate(String id) {
        assertThat(sixCloths().contains(measured(id, "areal_kg_m2"))).isTrue();
    }

    @Test
    void planLiesAmongTheBuildersPlates() {
        double planned = sixCloths().planned();
        assertThat(planned).isBetween(measured("A12", "areal_kg_m2"), measured("A11", "areal_kg_m2"));
        assertThat(planned).isCloseTo(3.0, within(1e-12));
    }

    private static Range sixCloths() {
        return lay(repeated(6, ReinforcementLayer.of(cloth(0.300), HAND_EPOXY))).massPerArea();
    }

    /** Cloth and biaxial in epoxy, 2.3 mm and 3.51 kg/m², from its dry glass and the resin share as reported. */
    @Test
    void sheetOfKnownGlassContentHasTheReportedThicknessAndMass() {
        Map<String, Object> sheet = reference("A2");
        FibreContent own = FibreContent.ofMassFraction(number(sheet, "inputs", "psi"));
        Layer layer = ReinforcementLayer.of(biaxial(number(sheet, "inputs", "dry_kg_m2")), HAND_EPOXY)
                .with(own);
        ZoneEstimate solid = new Estimator(withVoids(0)).lay(zone(1, layer));
        // The author's "a little more than 55 %" of resin and 2.3 mm are rounded to 0.5 % and 0.1 mm.
        assertThat(solid.massPerArea().planned()).isCloseTo(measured("A2", "areal_kg_m2"), within(0.005));
        assertThat(solid.thickness().planned()).isCloseTo(measured("A2", "thickness_m"), within(0.00005));
        assertThat(solid.fibreVolumeFraction()).isCloseTo(number(sheet, "derived", "Vf"), within(0.001));
        // At the usual 3 % of voids it would be 2.36 mm.
        assertThat(lay(layer).thickness().planned()).isCloseTo(0.00236, within(0.00001));
    }

    /**
     * At default contents the same glass comes out 10 % lighter and 11 % thinner: the sheet is richer in resin than a
     * biaxial by hand usually is (45 % glass against 50 %), at the very edge of the tolerance.
     */
    @Test
    void sheetAtDefaultContentsIsLighterThanReported() {
        double dry = number(reference("A2"), "inputs", "dry_kg_m2");
        ZoneEstimate usual = lay(ReinforcementLayer.of(biaxial(dry), HAND_EPOXY));
        assertThat(usual.massPerArea().planned() / measured("A2", "areal_kg_m2") - 1)
                .isCloseTo(-0.100, within(0.005));
        assertThat(usual.thickness().planned() / measured("A2", "thickness_m") - 1)
                .isCloseTo(-0.108, within(0.005));
        assertThat(usual.massPerArea().contains(measured("A2", "areal_kg_m2"))).isTrue();
        assertThat(usual.thickness().contains(measured("A2", "thickness_m"))).isTrue();
    }

    /** Extra pressure packs more than any bag can: mat 0.34, plain weave 0.53. We plan 0.14 and 0.11 below. */
    @Test
    void bagStaysBelowWhatExtraPressureReached() {
        double mat = bagged(mat(0.450)).fibreVolumeFraction();
        double weave = bagged(cloth(0.300)).fibreVolumeFraction();
        assertThat(number(reference("A18"), "measured", "Vf") - mat).isCloseTo(0.14, within(0.01));
        assertThat(number(reference("A19"), "measured", "Vf") - weave).isCloseTo(0.11, within(0.01));
        assertThat(leanest(mat(0.450))).isLessThan(number(reference("A18"), "measured", "Vf"));
        assertThat(leanest(cloth(0.300))).isLessThan(number(reference("A19"), "measured", "Vf"));
    }

    /** The same work without extra pressure, back-calculated: mat 0.189, plain weave 0.457; voids 1.75 and 2.75 %. */
    @Test
    void bagIsNearWhatTheSameWorkReachedWithoutExtraPressure() {
        assertThat(bagged(mat(0.450)).fibreVolumeFraction())
                .isCloseTo(number(reference("A16"), "derived", "Vf"), within(0.02));
        assertThat(bagged(cloth(0.300)).fibreVolumeFraction())
                .isCloseTo(number(reference("A17"), "derived", "Vf"), within(0.05));
        assertThat(bagged(mat(0.450)).voidFraction())
                .isBetween(number(reference("A16"), "derived", "Vv"), number(reference("A17"), "derived", "Vv"));
    }

    private static ZoneEstimate bagged(Reinforcement reinforcement) {
        return lay(ReinforcementLayer.of(reinforcement, BAG_EPOXY));
    }

    /** Fibre volume fraction at the lean edge of the tolerance, which has no voids. */
    private static double leanest(Reinforcement reinforcement) {
        LaidLayer laid = bagged(reinforcement).layers().get(0);
        return laid.fibreVolume() / laid.thickness().least();
    }

    private static ZoneEstimate lay(Layer... layers) {
        return ESTIMATOR.lay(zone(1, layers));
    }

    private static Layer[] repeated(int times, Layer layer) {
        return Collections.nCopies(times, layer).toArray(Layer[]::new);
    }

    private static double measured(String id, String what) {
        return number(reference(id), "measured", what);
    }

    private static double number(Map<String, Object> reference, String group, String name) {
        return (Double) map(reference.get(group)).get(name);
    }

    private static Map<String, Object> reference(String id) {
        return maps(Json.resource("/reference/asbuilt-cases.json").get("cases")).stream()
                .filter(c -> c.get("id").equals(id))
                .findFirst()
                .orElseThrow();
    }
}
