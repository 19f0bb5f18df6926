package laminate.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.unit.Dimension;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A workshop's own figures over the usual ones, and the small values of the process. */
class WorkshopTest {

    @ParameterizedTest
    @EnumSource(Process.class)
    void everyProcessHasAFigureForEveryLoss(Process process) {
        assertThat(Loss.usual(process)).containsOnlyKeys(Loss.values());
        assertThat(Loss.usual(process).values()).allSatisfy(figure -> {
            assertThat(figure.value()).isNotNegative();
            assertThat(figure.status()).isIn(Status.MEMORY, Status.COMMON_PRACTICE);
        });
        for (Loss loss : Loss.values()) {
            assertThat(Workshop.USUAL.loss(process, loss))
                    .isEqualTo(Loss.usual(process).get(loss));
        }
    }

    @Test
    void onlyWhatIsBaggedLosesResinInTheBag() {
        assertThat(Workshop.USUAL.loss(Process.HAND_LAY_UP, Loss.BAG).value()).isZero();
        assertThat(Workshop.USUAL.loss(Process.VACUUM_BAG, Loss.BAG).value()).isEqualTo(0.15);
        assertThat(Workshop.USUAL.loss(Process.VACUUM_BAG, Loss.MESH).value()).isZero();
        assertThat(Workshop.USUAL.loss(Process.VACUUM_BAG, Loss.BUCKET).value()).isZero();
        assertThat(Workshop.USUAL.loss(Process.VACUUM_BAG, Loss.LINES).value()).isZero();
        assertThat(Workshop.USUAL.loss(Process.INFUSION, Loss.BUCKET).value()).isEqualTo(0.4);
        assertThat(Workshop.USUAL.loss(Process.INFUSION, Loss.RESIN).value()).isEqualTo(0.05);
        assertThat(Workshop.USUAL.loss(Process.HAND_LAY_UP, Loss.RESIN).value()).isEqualTo(0.08);
    }

    @Test
    void losesItsOwnFigureWhereItStatesOne() {
        Workshop own = Workshop.USUAL.withLosses(Map.of(Process.HAND_LAY_UP, Map.of(Loss.RESIN, Figure.stated(0.12))));
        assertThat(own.loss(Process.HAND_LAY_UP, Loss.RESIN).value()).isEqualTo(0.12);
        assertThat(own.loss(Process.HAND_LAY_UP, Loss.CORE).value()).isEqualTo(0.10);
        assertThat(own.loss(Process.VACUUM_BAG, Loss.RESIN).value()).isEqualTo(0.08);
    }

    @Test
    void cannotBeChangedFromOutside() {
        Map<Loss, Figure> byHand = new EnumMap<>(Map.of(Loss.RESIN, Figure.stated(0.12)));
        Workshop own = Workshop.USUAL.withLosses(Map.of(Process.HAND_LAY_UP, byHand));
        byHand.put(Loss.RESIN, Figure.stated(0.5));
        assertThat(own.loss(Process.HAND_LAY_UP, Loss.RESIN).value()).isEqualTo(0.12);
        assertThatThrownBy(() -> own.losses().get(Process.HAND_LAY_UP).clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> own.voids().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void everyCopyKeepsTheRest() {
        Labour labour = Labour.USUAL.at(UnitPrice.parse("28 GBP/h"));
        Consumables consumables = Consumables.shareOfMaterials(0.05);
        Workshop own = TestParts.workshopAt(290)
                .withStrength(StrengthBasis.ISO_12215_5)
                .withLabour(labour)
                .withConsumables(consumables)
                .withVoids(Map.of(Process.INFUSION, Figure.stated(0.02)))
                .withLosses(Map.of(Process.INFUSION, Map.of()))
                .withContentRules(List.of())
                .withStiffness(StiffnessBasis.USUAL);
        assertThat(own)
                .isEqualTo(new Workshop(
                        OptionalDouble.of(290),
                        List.of(),
                        Map.of(Process.INFUSION, Figure.stated(0.02)),
                        Map.of(Process.INFUSION, Map.of()),
                        false,
                        Map.of(),
                        labour,
                        consumables,
                        StiffnessBasis.USUAL,
                        StrengthBasis.ISO_12215_5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 0.5})
    void sharesStayInTheirRange(double share) {
        assertThatThrownBy(() -> TestParts.withVoids(share))
                .hasMessageContaining("a void fraction must be from 0 to below 0.5");
        Workshop usual = Workshop.USUAL;
        assertThatThrownBy(() -> new Workshop(
                        usual.temperature(),
                        List.of(),
                        Map.of(),
                        Map.of(),
                        false,
                        Map.of(Process.INFUSION, Figure.stated(share)),
                        usual.labour(),
                        usual.consumables(),
                        usual.stiffness(),
                        usual.strength()))
                .hasMessageContaining("an evaporation must be from 0");
    }

    @Test
    void aLossIsNotBelowNothingAndAShareNotMoreThanAll() {
        assertThatThrownBy(() -> TestParts.withLoss(-0.1, Loss.CORE))
                .hasMessage("loss of core must be from 0 to 1, not -0.1");
        assertThatThrownBy(() -> TestParts.withLoss(1.1, Loss.RESIN))
                .hasMessage("loss of resin must be from 0 to 1, not 1.1");
        assertThatThrownBy(() -> TestParts.withLoss(-0.1, Loss.BUCKET))
                .hasMessage("loss of bucket must be from 0, not -0.1");
        assertThat(TestParts.withLoss(1.5, Loss.BUCKET)
                        .loss(Process.INFUSION, Loss.BUCKET)
                        .value())
                .isEqualTo(1.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -10, Double.NaN, Double.POSITIVE_INFINITY})
    void temperatureIsAboveAbsoluteZero(double kelvin) {
        assertThatThrownBy(() -> TestParts.workshopAt(kelvin))
                .hasMessage("a temperature must be above 0 K, not " + kelvin);
    }

    @ParameterizedTest
    @EnumSource(names = {"HOUR", "ROLL", "FT2", "US_GALLON"})
    void consumableIsMeasuredByWhatIsUsedUp(PriceBasis measure) {
        assertThatThrownBy(() -> new ConsumableUse("peel-ply", Figure.stated(1), measure, ConsumableUse.Basis.AREA))
                .hasMessage("the amount of peel-ply must be in kg, m², m, l or pieces, not in " + measure);
    }

    @Test
    void fibreContentOfASetNamesItsSource() {
        FibreContent content = FibreContent.ofMassFraction(0.3);
        assertThatThrownBy(() -> new ContentBand(content, content, content, " ", Status.MEMORY))
                .hasMessageContaining("needs a source");
    }

    @Test
    void lossesHaveAKeyEachAndTheDimensionOfTheirFigure() {
        assertThat(Loss.values()).extracting(Loss::key).doesNotHaveDuplicates();
        assertThat(Loss.LINES.dimension()).isEqualTo(Dimension.MASS);
        assertThat(Loss.MESH.dimension()).isEqualTo(Dimension.AREAL_MASS);
        assertThat(Loss.LAPS.dimension()).isEqualTo(Dimension.FRACTION);
    }

    @Test
    void operationsOfItsOwnReplaceTheUsualOnesOrJoinThem() {
        Operation faster = new Operation(Operation.LAY_UP, Operation.Basis.LAYER_AREA, Figure.stated(600));
        Operation polish = new Operation("polish", Operation.Basis.AREA, Figure.stated(60));
        List<Operation> joint = Labour.USUAL.with(List.of(faster, polish)).operations();
        assertThat(joint).hasSize(Operation.USUAL.size() + 1).contains(faster).endsWith(polish);
        assertThat(joint.get(2)).isEqualTo(faster);
        assertThat(joint)
                .filteredOn(operation -> operation.name().equals(Operation.LAY_UP))
                .hasSize(1);
    }

    @Test
    void aRateIsByTheHour() {
        assertThatThrownBy(() -> Labour.USUAL.at(UnitPrice.parse("28 GBP/kg")))
                .hasMessage("a labour rate is by the hour, not 28 GBP/kg");
        assertThatThrownBy(() -> new Operation(" ", Operation.Basis.AREA, Figure.stated(1)))
                .hasMessage("an operation needs a name");
        assertThatThrownBy(() -> new Operation("polish", Operation.Basis.AREA, Figure.stated(-1)))
                .hasMessage("the time of polish must not be below zero, not -1.0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void aShareOfMaterialsIsNotBelowNothing(double share) {
        assertThatThrownBy(() -> Consumables.shareOfMaterials(share))
                .hasMessageContaining("a share must not be below zero");
    }

    @ParameterizedTest
    @EnumSource(Process.class)
    void everyProcessUsesSomethingUp(Process process) {
        assertThat(Consumables.USUAL.uses(process))
                .isEqualTo(ConsumableUse.usual(process))
                .isNotEmpty();
        assertThat(Consumables.listed(List.of()).uses(process)).isEmpty();
    }

    @Test
    void whatIsUsedUpIsNotBelowNothing() {
        assertThatThrownBy(() -> new ConsumableUse("rag", Figure.stated(-1), PriceBasis.KG, ConsumableUse.Basis.AREA))
                .hasMessage("the amount of rag must not be below zero, not -1.0");
        assertThatThrownBy(() -> new ConsumableUse("rag", Figure.stated(1), PriceBasis.POUND, ConsumableUse.Basis.AREA))
                .hasMessage("the amount of rag must be in kg, m², m, l or pieces, not in lb");
    }

    @Test
    void wordsOfFilesAreTheTradesOwn() {
        assertThat(Process.VACUUM_BAG.word()).isEqualTo("vacuum bag");
        assertThat(ContentSet.ISO_NOMINAL_COMPLEX.word()).isEqualTo("iso-nominal");
        assertThat(ContentSet.TRADE.word()).isEqualTo("trade");
        assertThat(ConsumableUse.Basis.RESIN.word()).isEqualTo("kg resin");
        assertThat(CoreFinish.Kind.PERFORATED.word()).isEqualTo("perforated");
        assertThat(FibreContent.Basis.RESIN_RATIO.key()).isEqualTo("resin-ratio");
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 3, true", "0.999, 1, 3, false", "3.001, 1, 3, false", "1, 1, 3, true", "3, 1, 3, true"})
    void aRangeHoldsItsBounds(double value, double least, double most, boolean inside) {
        assertThat(new Range(2, least, most).contains(value)).isEqualTo(inside);
    }

    @Test
    void rangesAddAndScaleByTheirBounds() {
        Range one = new Range(2, 1, 4);
        assertThat(one.plus(new Range(10, 9, 12))).isEqualTo(new Range(12, 10, 16));
        assertThat(one.times(0.5)).isEqualTo(new Range(1, 0.5, 2));
        assertThat(Range.exactly(3)).isEqualTo(new Range(3, 3, 3));
    }

    @ParameterizedTest
    @CsvSource({
        "2, 3, 4",
        "2, 1, 1.5",
        "NaN, 1, 2",
        "1, NaN, 2",
        "1, 1, NaN",
        "Infinity, 1, Infinity",
        "1, -Infinity, 2"
    })
    void aRangeIsFiniteAndInOrder(double planned, double least, double most) {
        assertThatThrownBy(() -> new Range(planned, least, most)).hasMessageContaining("a range must be in order");
    }

    @ParameterizedTest
    @CsvSource({
        "0, .002, .02, 1, 1",
        ".002, 0, .02, 1, 1",
        ".02, .002, .02, 1, 1",
        ".002, .002, Infinity, 1, 1",
        ".002, Infinity, .02, 1, 1",
        ".002, .002, .02, 0, 1",
        ".002, .002, .02, 3, 1",
        ".002, .002, .02, 1, 0",
        ".002, .002, .02, 1, 3"
    })
    void groovesHaveASensibleShape(double width, double depth, double pitch, int faces, int ways) {
        assertThatThrownBy(() -> new Grooves(width, depth, pitch, faces, ways))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aRuleWithoutTermsHoldsForAll() {
        ContentRule all = new ContentRule(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                FibreContent.ofMassFraction(0.4));
        assertThat(Workshop.USUAL
                        .withContentRules(List.of(all))
                        .contentFor(
                                TestParts.HAND,
                                TestParts.hand(TestMaterials.mat(0.3)).plies().get(0)))
                .contains(FibreContent.ofMassFraction(0.4));
    }
}
