package laminate.compare;

import static laminate.compare.TestWays.PAID;
import static laminate.compare.TestWays.PRICES;
import static laminate.compare.TestWays.layers;
import static laminate.compare.TestWays.lid;
import static laminate.compare.TestWays.sandwich;
import static laminate.compare.TestWays.sheet;
import static laminate.compare.TestWays.sheets;
import static laminate.compare.TestWays.solid;
import static laminate.compare.TestWays.solidBy;
import static laminate.compare.TestWays.way;
import static laminate.compare.TestWays.zone;
import static laminate.testing.TestMaterials.PAINT;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.with;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.coated;
import static laminate.testing.TestParts.coating;
import static laminate.testing.TestParts.times;
import static laminate.testing.TestParts.withoutLosses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.check.CheckOptions;
import laminate.check.PanelCheck;
import laminate.check.PartCheck;
import laminate.check.Reserve;
import laminate.check.Subject;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.material.Property;
import laminate.part.Film;
import laminate.part.LaminaLayer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Process;
import laminate.theory.Equivalence.Stiffness;
import laminate.theory.Lamina;
import laminate.theory.LaminateLoad;
import laminate.theory.MatStrength;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.PanelLoad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A part made in several ways, side by side. */
class SideBySideTest {
    private static final SideBySide THREE = SideBySide.of(TestWays.threeProcesses(), CompareOptions.USUAL);

    static Stream<CompareOptions> allOptions() {
        return Stream.of(Basis.values())
                .flatMap(basis -> Stream.of(Means.values())
                        .flatMap(means -> Stream.of(Stiffness.BENDING_X, Stiffness.BENDING_Y)
                                .map(along -> CompareOptions.USUAL
                                        .with(basis)
                                        .with(means)
                                        .with(along))));
    }

    private static Part lifted(Part part) {
        LoadCase lifted = new LoadCase("lifted", LaminateLoad.NONE.with(LaminateLoad.Term.MX, 50));
        return part.withZones(List.of(part.zones().get(0).withLoadCases(List.of(lifted))));
    }

    private static Part deck(Part part) {
        String zone = part.zones().get(0).name();
        return part.withPanels(List.of(new PanelPlan(
                "deck",
                zone,
                0.6,
                0.4,
                Edges.all(Edge.CLAMPED),
                InPlane.HELD,
                List.of(new PanelLoad.Uniform(3000)),
                Limits.NONE)));
    }

    /** Nothing is changed by a factor of one, and nothing differs, in any figure, cost or break-even. */
    @ParameterizedTest
    @MethodSource("allOptions")
    void aPartBesideItselfDiffersInNothing(CompareOptions options) {
        Part part = lifted(lid(sandwich(Process.VACUUM_BAG)));
        SideBySide ways = SideBySide.of(List.of(way("one", part), way("other", part)), options);
        assertThat(ways.refusals()).isEmpty();
        assertThat(ways.rows())
                .hasSizeGreaterThan(18)
                .allSatisfy(row -> assertThat(row.difference(1))
                        .as("%s of %s", row.measure(), row.subject())
                        .hasValueCloseTo(0.0, within(1e-9)));
        assertThat(ways.costs())
                .isNotEmpty()
                .allSatisfy(row ->
                        assertThat(row.extra(1).orElseThrow().amount().signum()).isZero());
        assertThat(ways.breakEvens()).isEmpty();
        assertThat(ways.alternatives().get(1).adjustments())
                .hasSize(options.basis() == Basis.SAME_REINFORCEMENT ? 0 : 1)
                .allSatisfy(same -> {
                    assertThat(same.factor()).isCloseTo(1, within(1e-12));
                    assertThat(same.remaining()).isCloseTo(0, within(1e-12));
                });
    }

    /** Every figure of the issue, from the estimate by itself. */
    @ParameterizedTest
    @EnumSource(Process.class)
    void everyFigureIsThatOfTheEstimateForOnePart(Process process) {
        PartEstimate alone = new Estimator(PAID, Optional.of(PRICES)).estimate(lid(solid(process)));
        int column = process.ordinal();
        assertThat(THREE.alternatives().get(column).estimate()).isEqualTo(alone);
        Map<Measure, Double> expected = Map.ofEntries(
                Map.entry(
                        Measure.MEAN_THICKNESS, alone.zones().get(0).laminate().thickness()),
                Map.entry(Measure.MASS, alone.mass().planned()),
                Map.entry(Measure.FIBRE_MASS_FRACTION, alone.zones().get(0).fibreMassFraction()),
                Map.entry(Measure.FIBRE_VOLUME_FRACTION, alone.zones().get(0).fibreVolumeFraction()),
                Map.entry(Measure.VOID_FRACTION, alone.zones().get(0).voidFraction()),
                Map.entry(Measure.FIBRE, alone.quantities().fibre()),
                Map.entry(Measure.RESIN_IN_PART, alone.quantities().resinInPart()),
                Map.entry(Measure.RESIN_TO_MIX, alone.quantities().resinToMix()),
                Map.entry(Measure.TIME, alone.time()));
        expected.forEach(
                (measure, value) -> assertThat(THREE.row(measure).values().get(column))
                        .as(measure.words())
                        .hasValueCloseTo(value, within(1e-12 * value)));
    }

    /** What is mixed ends in the part, in the air or is wasted; all here is styrenic and cured by peroxide. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void whatIsMixedIsInThePartInTheAirOrWasted(int column) {
        PartEstimate estimate = THREE.alternatives().get(column).estimate();
        double mixed = estimate.quantities().resins().stream()
                .mapToDouble(resin -> resin.toMix())
                .sum();
        double found = value(THREE, Measure.RESIN_IN_PART, column)
                + estimate.quantities().coating()
                + value(THREE, Measure.STYRENE, column)
                + value(THREE, Measure.RESIN_WASTE, column);
        assertThat(found).isCloseTo(mixed, within(1e-12 * mixed));
        assertThat(THREE.alternatives().get(column).styrene()).isEqualTo(value(THREE, Measure.STYRENE, column));
    }

    /** Paint gives off solvent and epoxy nothing: neither is styrene. */
    @Test
    void solventIsNotStyrene() {
        Zone painted = coated(
                List.of(coating(with(PAINT, Property.SHRINKAGE, 0.3), new Film(Film.Basis.WET, 0.0001))),
                ReinforcementLayer.of(mat(0.3), HAND_EPOXY));
        SideBySide ways =
                SideBySide.of(List.of(way("painted", Part.of("lid", List.of(painted)))), CompareOptions.USUAL);
        assertThat(ways.alternatives().get(0).estimate().quantities().resins().stream()
                        .mapToDouble(resin -> resin.evaporated())
                        .sum())
                .isPositive();
        assertThat(ways.alternatives().get(0).styrene()).isZero();
    }

    private static double value(SideBySide ways, Measure measure, int column) {
        return ways.row(measure).values().get(column).orElseThrow();
    }

    /** Fibre bought less fibre in the part; of a workshop that wastes none and trims none it is nothing. */
    @Test
    void whatIsCutAwayIsWhatIsBoughtAndNotInThePart() {
        double bought = THREE.alternatives().get(0).estimate().quantities().materials().stream()
                .filter(material -> material.material().matches("(mat|roving)-.*"))
                .mapToDouble(material -> material.mass().orElseThrow())
                .sum();
        assertThat(value(THREE, Measure.SHEET_WASTE, 0))
                .isCloseTo(bought - value(THREE, Measure.FIBRE, 0), within(1e-12))
                .isPositive();
        Part untrimmed = Part.of("lid", List.of(Zone.of("lid", 0.8, solid(Process.HAND_LAY_UP))));
        SideBySide careful = SideBySide.of(
                List.of(new Candidate("careful", untrimmed, withoutLosses(), Optional.empty())), CompareOptions.USUAL);
        assertThat(value(careful, Measure.SHEET_WASTE, 0)).isZero();
        assertThat(value(careful, Measure.RESIN_WASTE, 0)).isZero();
    }

    /** What a class should see: pressed and drawn, a laminate is thinner, lighter, richer in fibre, and softer in bending. */
    @Test
    void theSameReinforcementIsThinnerAndSofterWhenPressed() {
        for (Measure falling : List.of(
                Measure.MEAN_THICKNESS, Measure.MASS, Measure.VOID_FRACTION, Measure.RESIN_IN_PART, Measure.STYRENE)) {
            assertThat(THREE.row(falling).difference(1).orElseThrow())
                    .as(falling.words())
                    .isNegative();
            assertThat(value(THREE, falling, 2)).as(falling.words()).isLessThan(value(THREE, falling, 1));
        }
        assertThat(value(THREE, Measure.FIBRE_VOLUME_FRACTION, 2))
                .isGreaterThan(value(THREE, Measure.FIBRE_VOLUME_FRACTION, 1));
        assertThat(THREE.row(Measure.FIBRE).difference(2)).hasValue(0);
        StiffnessSplit split = THREE.splits().get(1);
        assertThat(split.alternative()).isEqualTo("infusion");
        assertThat(split.modulus()).isGreaterThan(1);
        assertThat(split.stiffness()).isLessThan(0.5);
        assertThat(split.stiffness())
                .isCloseTo(
                        1
                                + zoneRow(THREE, Measure.BENDING_STIFFNESS_X)
                                        .difference(2)
                                        .orElseThrow(),
                        within(1e-12));
        assertThat(zoneRow(THREE, Measure.BENDING_MODULUS_X).difference(2))
                .hasValueCloseTo(split.modulus() - 1, within(1e-12));
        assertThat(split.thickness()).isCloseTo(0.625, within(5e-4));
        assertThat(split.thicknessCubed()).isCloseTo(0.244, within(5e-4));
    }

    private static Row zoneRow(SideBySide ways, Measure measure) {
        return ways.rows().stream()
                .filter(row -> row.measure() == measure && row.subject().kind() == Subject.Kind.ZONE)
                .findFirst()
                .orElseThrow();
    }

    /** Bending stiffness per width is that of the independent laminate: 1/d11, of an isotropic sheet E t³/12. */
    @Test
    void bendingStiffnessIsPerWidth() {
        SideBySide ways =
                SideBySide.of(List.of(way("ply", sheets("sheet", sheet(9e9, 600, 0.012)))), CompareOptions.USUAL);
        assertThat(zoneRow(ways, Measure.BENDING_STIFFNESS_X).values().get(0))
                .hasValueCloseTo(9e9 * 0.012 * 0.012 * 0.012 / 12, within(1e-9));
        assertThat(zoneRow(ways, Measure.BENDING_MODULUS_Y).values().get(0)).hasValueCloseTo(9e9, within(1.0));
    }

    /** Twice the area or five parts at once: every figure by area and by part stays, and so does every factor. */
    @Test
    void nothingDependsOnTheScale() {
        CompareOptions options = CompareOptions.USUAL.with(Basis.SAME_STIFFNESS);
        List<SideBySide> scales = Stream.of(1.0, 2.0, 0.1)
                .map(scale -> SideBySide.of(
                        Stream.of(Process.HAND_LAY_UP, Process.VACUUM_BAG)
                                .map(process -> new Candidate(
                                        process.word(),
                                        Part.of("lid", List.of(Zone.of("lid", 0.8 * scale, solid(process)))),
                                        PAID,
                                        Optional.empty()))
                                .toList(),
                        options))
                .toList();
        for (SideBySide scaled : scales) {
            assertThat(scaled.alternatives().get(1).adjustments())
                    .isEqualTo(scales.get(0).alternatives().get(1).adjustments());
            for (Row row : scaled.rows()) {
                double expected = scales.get(0).rows().stream()
                        .filter(one -> one.measure() == row.measure()
                                && one.subject().kind() == row.subject().kind())
                        .findFirst()
                        .orElseThrow()
                        .difference(1)
                        .orElse(7);
                assertThat(row.difference(1).orElse(7))
                        .as(row.measure().words())
                        .isCloseTo(expected, within(1e-9));
            }
        }
    }

    @Test
    void figuresOfThePartAreOfOneOfMany() {
        Part one = lid(solid(Process.INFUSION));
        SideBySide ways = SideBySide.of(List.of(way("one", one), way("five", times(5, one))), CompareOptions.USUAL);
        assertThat(ways.rows())
                .allSatisfy(row ->
                        assertThat(row.difference(1)).as(row.measure().words()).hasValueCloseTo(0.0, within(1e-9)));
        assertThat(ways.alternatives().get(1).styrene())
                .isCloseTo(5 * ways.alternatives().get(0).styrene(), within(1e-12));
    }

    @Test
    void panelsAndLoadCasesStandAsTheyAreChecked() {
        Lamina glass = Lamina.isotropic(7e9, 0.33).withStrength(new MatStrength(90e6, 140e6, 60e6));
        List<Candidate> candidates = Stream.of(0.006, 0.005)
                .map(t -> way(t + " m", deck(lifted(sheets("deck", new LaminaLayer(glass, 1450, t, 0, ""))))))
                .toList();
        SideBySide ways = SideBySide.of(candidates, CompareOptions.USUAL);
        for (int i = 0; i < 2; i++) {
            PartCheck check = PartCheck.of(ways.alternatives().get(i).estimate(), CheckOptions.USUAL);
            PanelCheck panel = check.panels().get(0);
            Map<Measure, Row> rows = rowsOf(ways, Subject.Kind.PANEL);
            assertThat(rows.get(Measure.DEFLECTION).values().get(i)).hasValue(Math.abs(panel.governingDeflection()));
            assertThat(rows.get(Measure.RESERVE_FACTOR).values().get(i))
                    .hasValue(panel.reserves().get(0).factor());
            assertThat(panel.reserves().get(0).factor()).isPositive();
            assertThat(rowsOf(ways, Subject.Kind.LOAD_CASE)
                            .get(Measure.RESERVE_FACTOR)
                            .values()
                            .get(i))
                    .hasValue(check.zones().get(0).loadCases().get(0).reserves().stream()
                            .mapToDouble(Reserve::factor)
                            .min()
                            .orElseThrow());
            assertThat(ways.alternatives().get(i).panel("deck").orElseThrow().governingDeflection())
                    .isEqualTo(panel.governingDeflection());
            assertThat(ways.alternatives().get(i).panel("other")).isEmpty();
        }
        assertThat(rowsOf(ways, Subject.Kind.PANEL)
                        .get(Measure.DEFLECTION)
                        .difference(1)
                        .orElseThrow())
                .isPositive();
    }

    private static Map<Measure, Row> rowsOf(SideBySide ways, Subject.Kind kind) {
        return ways.rows().stream()
                .filter(row -> row.subject().kind() == kind)
                .collect(Collectors.toMap(Row::measure, row -> row));
    }

    @Test
    void aPartThatAsksNothingIsNotChecked() {
        assertThat(THREE.alternatives())
                .allSatisfy(way -> assertThat(way.check()).isEmpty());
    }

    /** What cannot be stands with its reason, the others go on, and what is first of them is compared with. */
    @Test
    void whatCannotBeStandsWithItsReason() {
        Candidate solid = solidBy(Process.HAND_LAY_UP);
        Candidate cored = way("cored", lid(sandwich(Process.HAND_LAY_UP)));
        SideBySide ways = SideBySide.of(
                List.of(cored, solid, way("infused", lid(sandwich(Process.INFUSION)))),
                CompareOptions.USUAL.with(Basis.SAME_STIFFNESS).with(Means.CORE));
        assertThat(ways.alternatives()).extracting(Alternative::name).containsExactly("cored", "infused");
        assertThat(ways.refusals())
                .containsExactly(new Refusal(
                        "hand lay-up", "no zone has a core that could be changed to reach the same bending stiffness"));
        Refusal open = new Refusal("open", "honeycomb-48 has open cells");
        assertThat(ways.withRefusals(List.of(open)).refusals()).hasSize(2).contains(open);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ways.withRefusals(List.of(new Refusal("cored", "it is there already"))))
                .withMessage("two ways to make a part are called cored");
    }

    /** A solid edge about a cored lid: the core is thickened, the edge stays, and the report says so. */
    @Test
    void aZoneWithoutACoreStaysAsItIs() {
        Part byHand = coredLidWithSolidEdge(Process.HAND_LAY_UP);
        Part infused = coredLidWithSolidEdge(Process.INFUSION);
        SideBySide ways = SideBySide.of(
                List.of(way("by hand", byHand), way("infused", infused)),
                CompareOptions.USUAL.with(Basis.SAME_STIFFNESS).with(Means.CORE));

        assertThat(ways.refusals()).isEmpty();
        Alternative changed = ways.alternatives().get(1);
        assertThat(changed.adjustments()).extracting(Adjustment::zone).containsExactly("lid");
        assertThat(changed.estimate().part().zones().get(0))
                .isNotEqualTo(infused.zones().get(0));
        assertThat(changed.estimate().part().zones().get(1))
                .isEqualTo(infused.zones().get(1));
        assertThat(ways.remarks()).contains("Of infused, without a core to change, is left as it is: edge.");
    }

    private static Part coredLidWithSolidEdge(Process process) {
        return Part.of("lid", List.of(zone("lid", 0.8, sandwich(process)), zone("edge", 0.1, solid(process))));
    }

    /** Mass, cost and styrene are those of the part as it is changed: the same as if that part were given. */
    @Test
    void everyFigureFollowsTheChangedPart() {
        CompareOptions stiffness = CompareOptions.USUAL.with(Basis.SAME_STIFFNESS);
        Alternative changed = SideBySide.of(TestWays.threeProcesses(), stiffness)
                .alternatives()
                .get(1);
        Alternative given = SideBySide.of(
                        List.of(way("as changed", changed.estimate().part())), CompareOptions.USUAL)
                .alternatives()
                .get(0);
        Alternative unchanged = THREE.alternatives().get(1);

        assertThat(changed.estimate()).isEqualTo(given.estimate());
        assertThat(changed.curve()).isPresent().isEqualTo(given.curve());
        assertThat(changed.styrene()).isEqualTo(given.styrene()).isGreaterThan(unchanged.styrene());
        assertThat(changed.curve()).isNotEqualTo(unchanged.curve());
    }

    @Test
    void whatIsTooHeavyAlreadyCannotBeMadeAsLight() {
        Candidate thin = way("thin", sheets("sheet", sheet(9e9, 600, 0.0005)));
        Candidate lid = way("lid", lid(layers(Process.HAND_LAY_UP, mat(0.45))));
        SideBySide ways = SideBySide.of(List.of(thin, lid), CompareOptions.USUAL.with(Basis.SAME_WEIGHT));
        assertThat(ways.refusals())
                .singleElement()
                .satisfies(refusal -> assertThat(refusal.reason())
                        .startsWith(
                                "zone lid cannot be made to weigh the same as the first: all but its reinforcement weighs 0.")
                        .endsWith(" kg/m² already, the other 0.300 kg/m²"));
    }

    @Test
    void facesThatAreStiffEnoughNeedNoCore() {
        Candidate thin = way("thin", sheets("sheet", sheet(9e9, 600, 0.002)));
        Candidate lid = way("lid", lid(sandwich(Process.HAND_LAY_UP)));
        SideBySide ways = SideBySide.of(
                List.of(thin, lid),
                CompareOptions.USUAL.with(Basis.SAME_STIFFNESS).with(Means.CORE));
        assertThat(ways.refusals())
                .singleElement()
                .satisfies(refusal -> assertThat(refusal.reason())
                        .contains("the rest is as stiff already, or no change of its core thickness is enough"));
    }

    @Test
    void noWayAtAllIsRefusedWithItsReasons() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SideBySide.of(List.of(), CompareOptions.USUAL))
                .withMessage("there is no way to compare");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new SideBySide(CompareOptions.USUAL, List.of(), List.of(new Refusal("infusion", "it is open"))))
                .withMessage("there is no way to compare; infusion: it is open");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> THREE.row(Measure.DEFLECTION))
                .withMessage("deflection is not told of a part");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CompareOptions.USUAL.with(Stiffness.SHEAR))
                .withMessageContaining("SHEAR");
    }

    /** Zones go by their names; one alone stands for any; what has no like is refused. */
    @Test
    void zonesAreMatchedByName() {
        CompareOptions options = CompareOptions.USUAL.with(Basis.SAME_WEIGHT);
        Part bottomAndSide = Part.of(
                "boat",
                List.of(
                        zone("bottom", 1, solid(Process.HAND_LAY_UP)),
                        zone("side", 1, layers(Process.HAND_LAY_UP, mat(0.45), mat(0.45)))));
        Part turned = Part.of(
                "boat",
                List.of(
                        zone("side", 1, layers(Process.VACUUM_BAG, mat(0.45), mat(0.45), mat(0.45))),
                        zone("bottom", 1, solid(Process.VACUUM_BAG))));
        SideBySide ways = SideBySide.of(List.of(way("boat", bottomAndSide), way("turned", turned)), options);
        List<Adjustment> adjustments = ways.alternatives().get(1).adjustments();
        assertThat(adjustments).extracting(Adjustment::zone).containsExactly("side", "bottom");
        Estimator estimator = new Estimator(PAID);
        assertThat(adjustments.get(0).exactMassPerArea())
                .isCloseTo(
                        estimator
                                .lay(bottomAndSide.zones().get(1))
                                .massPerArea()
                                .planned(),
                        within(1e-12));
        Part deck = Part.of("boat", List.of(zone("deck", 1, solid(Process.VACUUM_BAG))));
        SideBySide without = SideBySide.of(List.of(way("boat", bottomAndSide), way("deck", deck)), options);
        assertThat(without.refusals())
                .containsExactly(new Refusal("deck", "zone deck has no like in boat, which has bottom, side"));
        SideBySide forAny = SideBySide.of(
                List.of(way("sheet", sheets("sheet", sheet(9e9, 600, 0.01))), way("boat", bottomAndSide)), options);
        assertThat(forAny.alternatives().get(1).adjustments())
                .allSatisfy(one -> assertThat(one.exactMassPerArea()).isCloseTo(6, within(1e-12)));
    }

    /** Two zones of one name are told apart by their order. */
    @Test
    void namesakesKeepTheirOwnFigures() {
        Part twins = Part.of(
                "boat",
                List.of(
                        zone("side", 1, solid(Process.HAND_LAY_UP)),
                        zone("side", 1, layers(Process.HAND_LAY_UP, mat(0.45)))));
        SideBySide ways = SideBySide.of(List.of(way("boat", twins)), CompareOptions.USUAL);
        List<Row> thicknesses = ways.rows().stream()
                .filter(row ->
                        row.measure() == Measure.THICKNESS && row.subject().kind() == Subject.Kind.ZONE)
                .toList();
        assertThat(thicknesses).extracting(row -> row.subject().name()).containsExactly("side", "side (2)");
        assertThat(thicknesses.get(0).values().get(0).orElseThrow())
                .isGreaterThan(thicknesses.get(1).values().get(0).orElseThrow());
    }
}
