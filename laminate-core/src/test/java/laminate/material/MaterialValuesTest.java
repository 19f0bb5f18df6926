package laminate.material;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.matrix;
import static laminate.testing.TestMaterials.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.unit.Dimension;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a material may state, and what is refused with the value in the message. */
class MaterialValuesTest {

    @Test
    void aFigureIsFiniteAndHasASource() {
        assertThat(Figure.stated(2)).isEqualTo(new Figure(2, "stated by the user", Status.USER));
        assertThatThrownBy(() -> Figure.stated(Double.NaN)).hasMessage("a figure must be finite, not NaN");
        assertThatThrownBy(() -> Figure.stated(Double.NEGATIVE_INFINITY))
                .hasMessage("a figure must be finite, not -Infinity");
        assertThatThrownBy(() -> new Figure(2, " ", Status.MEMORY)).hasMessage("a figure needs a source; 2.0 has none");
    }

    @Test
    void figuresKeepTheirOrderAndCannotBeChanged() {
        Figures figures = Figures.none().with(Property.NU, 0.3).with(Property.DENSITY, 80);
        assertThat(figures.asMap().keySet()).containsExactly(Property.DENSITY, Property.NU);
        assertThat(figures).hasToString(figures.asMap().toString());
        Map<Property, Figure> source = new EnumMap<>(figures.asMap());
        Figures copy = Figures.of(source);
        source.clear();
        assertThat(copy)
                .isEqualTo(figures)
                .hasSameHashCodeAs(figures)
                .isNotEqualTo(Figures.none())
                .isNotEqualTo("figures");
        assertThatThrownBy(() -> figures.asMap().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThat(figures.valueOf(Property.E)).isEmpty();
        assertThat(figures.find(Property.E)).isEmpty();
        assertThatThrownBy(() -> figures.value(Property.E)).hasMessage("no figure is given for E");
    }

    @Test
    void propertiesHaveDimensionsAndAKeyEach() {
        assertThat(Property.values()).extracting(Property::key).doesNotHaveDuplicates();
        assertThat(Property.E.dimension()).contains(Dimension.PRESSURE);
        assertThat(Property.NU.dimension()).isEmpty();
    }

    @Test
    void figuresThatAreMissingOrOutOfPlaceAreNamed() {
        assertThatThrownBy(() -> resin(Figures.none())).hasMessage("resin has no density-liquid");
        assertThatThrownBy(() -> resin(matrix(1110, 1200, 3e9, 0.3).with(Property.ROLL_WIDTH, 1)))
                .hasMessage("resin cannot have roll-width");
        assertThatThrownBy(() -> resin(matrix(1110, 0, 3e9, 0.3)))
                .hasMessage("resin: density-cured must be above zero, not 0.0");
    }

    @ParameterizedTest
    @CsvSource({
        "STYRENE_CONTENT, 1",
        "STYRENE_CONTENT, -0.1",
        "SHRINKAGE, 1",
        "NU, 0.5",
        "NU, -1.1",
        "STAGE_THICKNESS, 0",
        "VISCOSITY, 0",
        "TENSILE_STRENGTH, -1",
        "ELONGATION, 0",
        "E, 0",
        "DENSITY_LIQUID, -1"
    })
    void aResinStatesWhatCanBe(Property property, double value) {
        assertThatThrownBy(() -> with(POLYESTER, property, value))
                .hasMessageStartingWith("polyester-ortho: " + property.key() + " must be ")
                .hasMessageEndingWith("not " + value);
    }

    private static Resin resin(Figures figures) {
        return new Resin(
                "resin",
                "A resin",
                Resin.Family.POLYESTER,
                Resin.Use.LAMINATING,
                false,
                figures,
                POLYESTER.cures(),
                List.of());
    }

    @Test
    void aResinNamesWhatCuresIt() {
        assertThat(POLYESTER.defaultCure().agent()).isEqualTo("mekp");
        assertThat(POLYESTER.cureBy("cumene-peroxide"))
                .contains(POLYESTER.cures().get(1));
        assertThat(POLYESTER.cureBy("amine-hardener")).isEmpty();
        assertThatThrownBy(() -> new Resin(
                        "r", "r", Resin.Family.EPOXY, Resin.Use.PAINT, false, EPOXY.figures(), List.of(), List.of()))
                .hasMessage("r names no agent that cures it");
        assertThat(EPOXY.styreneContent()).isZero();
        assertThat(EPOXY.stageThickness()).isEmpty();
        assertThat(POLYESTER.kind().word()).isEqualTo("resin");
    }

    @ParameterizedTest
    @CsvSource({"0, 0.01, 0.02", "0.02, 0.01, 0.03", "0.01, 0.03, 0.02"})
    void dosesRiseFromLeastToGreatest(double from, double usual, double to) {
        assertThatThrownBy(() -> new Resin.Cure("mekp", Figure.stated(usual), Figure.stated(from), Figure.stated(to)))
                .hasMessageContaining("must rise from least to usual to greatest");
    }

    @ParameterizedTest
    @CsvSource({"0, 293, 1200", "0.01, 0, 1200", "0.01, 293, 0", "NaN, 293, 1200"})
    void gelPointsAreAboveNothing(double amount, double temperature, double time) {
        assertThatThrownBy(() -> new Resin.GelPoint("mekp", amount, temperature, Figure.stated(time)))
                .hasMessageContaining("must be above zero");
        assertThat(new Resin.GelPoint("mekp", 0.01, 293, Figure.stated(1200))
                        .time()
                        .value())
                .isEqualTo(1200);
    }

    @Test
    void aGelTimeIsGivenOnce() {
        Resin.GelPoint point = new Resin.GelPoint("mekp", 0.015, 293.15, Figure.stated(1200));
        Resin.GelPoint other = new Resin.GelPoint("mekp", 0.015, 293.15, Figure.stated(1300));
        assertThatThrownBy(() -> new Resin(
                        "r",
                        "r",
                        Resin.Family.POLYESTER,
                        Resin.Use.LAMINATING,
                        false,
                        POLYESTER.figures(),
                        POLYESTER.cures(),
                        List.of(point, other)))
                .hasMessage("r has two gel times with 1.500 % of mekp at 20.00 °C");
    }

    @Test
    void usesAndFamiliesAreToldApart() {
        assertThat(Resin.Use.INFUSION.isLaminating()).isTrue();
        assertThat(PASTE.use().isLaminating() || PASTE.use().isCoating()).isFalse();
        assertThat(List.of(Resin.Use.values()))
                .filteredOn(Resin.Use::isCoating)
                .containsExactly(Resin.Use.GELCOAT, Resin.Use.FLOWCOAT, Resin.Use.BARRIER, Resin.Use.PAINT);
        assertThat(List.of(Resin.Family.values()))
                .filteredOn(Resin.Family::isStyrenic)
                .containsExactly(Resin.Family.POLYESTER, Resin.Family.VINYLESTER);
        assertThat(Resin.Family.EPOXY.word()).isEqualTo("epoxy");
        assertThat(GELCOAT.use().word()).isEqualTo("gelcoat");
    }

    @Test
    void anAgentIsACatalystOrAHardener() {
        assertThatThrownBy(() -> new Agent("x", "x", MaterialKind.CORE, MEKP.figures()))
                .hasMessage("x must be a catalyst or a hardener, not a core");
        assertThatThrownBy(() -> new Agent("x", "x", MaterialKind.CATALYST, Figures.none()))
                .hasMessage("x has no density");
        assertThatThrownBy(() -> new Agent(
                        "x", "x", MaterialKind.CATALYST, Figures.none().with(Property.DENSITY, -1)))
                .hasMessageContaining("must be above zero");
    }

    @Test
    void aFibreStatesItsConstants() {
        assertThat(E_GLASS.density()).isEqualTo(2560);
        assertThat(E_GLASS.kind()).isEqualTo(MaterialKind.FIBRE);
        assertThat(CARBON.type().word()).isEqualTo("carbon");
        assertThatThrownBy(() ->
                        new Fibre("x", "x", Fibre.Type.GLASS, E_GLASS.figures().with(Property.E2, 0)))
                .hasMessageContaining("x: E2 must be above zero");
    }

    @Test
    void aCoreStatesItsConstants() {
        assertThat(PVC.kind()).isEqualTo(MaterialKind.CORE);
        assertThat(Core.Type.PVC_CROSS_LINKED.word()).isEqualTo("cross-linked PVC");
        for (Property property :
                List.of(Property.G13, Property.EZ, Property.SHEAR_STRENGTH, Property.TENSILE_STRENGTH)) {
            assertThatThrownBy(() -> core(property, 0))
                    .hasMessage("pvc-80: " + property.key() + " must be above zero, not 0.0");
        }
        assertThatThrownBy(() -> core(Property.UPTAKE_HAND, -0.1)).hasMessageContaining("uptake-hand must be from 0.0");
        assertThatThrownBy(() -> core(Property.UPTAKE_INFUSION, 250))
                .hasMessageContaining("uptake-infusion must be from 0.0 to below 10.0");
        assertThat(core(Property.UPTAKE_HAND, 0).figures().value(Property.UPTAKE_HAND))
                .isZero();
    }

    private static Core core(Property property, double value) {
        return new Core(
                "pvc-80",
                "PVC",
                Core.Type.PVC_CROSS_LINKED,
                false,
                PVC.figures().with(property, value));
    }

    @Test
    void aBulkerTakesUpResin() {
        assertThat(BULKING_MAT.resinUptake()).isCloseTo(620 * 0.003 - 0.105, within(1e-15));
        assertThat(BULKING_MAT.kind()).isEqualTo(MaterialKind.BULKER);
        assertThatThrownBy(() -> new Bulker("x", "x", BULKING_MAT.figures().with(Property.AREAL_WEIGHT, 1.86)))
                .hasMessageContaining("x: the dry mat weighs 1.86 kg/m², the impregnated one only");
        assertThatThrownBy(() -> new Bulker("x", "x", BULKING_MAT.figures().with(Property.NU, 0.6)))
                .hasMessageContaining("nu must be from");
    }

    @Test
    void aConsumableNeedsNoFigures() {
        assertThat(new Consumable("rag", "Rag", PriceBasis.KG, Figures.none())
                        .kind()
                        .word())
                .isEqualTo("consumable");
        assertThatThrownBy(() -> new Consumable("rag", "Rag", PriceBasis.ROLL, Figures.none()))
                .hasMessage("rag cannot be sold by roll; kg, m², m, l or piece measures it");
        assertThatThrownBy(() -> new Consumable(
                        "rag", "Rag", PriceBasis.KG, Figures.none().with(Property.DENSITY, 0)))
                .hasMessageContaining("density must be above zero");
        assertThatThrownBy(() -> new Consumable(
                        "rag", "Rag", PriceBasis.KG, Figures.none().with(Property.E, 1)))
                .hasMessage("rag cannot have E");
    }

    /** Stitching and binder are part of the areal weight: plies of 280 and 300 g/m² are brought to 600. */
    @Test
    void pliesAreBroughtToTheArealWeight() {
        Reinforcement stitched = reinforcement(
                0.6, FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.28), FibrePly.of(E_GLASS, Form.STITCHED, 90, 0.30));
        assertThat(stitched.plies()).extracting(FibrePly::arealMass).satisfies(masses -> {
            assertThat(masses.get(0)).isCloseTo(0.6 * 28 / 58, within(1e-15));
            assertThat(masses.get(1)).isCloseTo(0.6 * 30 / 58, within(1e-15));
        });
        assertThat(stitched.arealMass()).isEqualTo(0.6);
        assertThatThrownBy(() -> reinforcement(0.6, FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.5)))
                .hasMessage("r: its plies weigh 500 g/m² together, its areal weight is 600 g/m²");
        assertThatThrownBy(() -> reinforcement(0.6, FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.7)))
                .hasMessageContaining("700 g/m²");
        assertThatThrownBy(() -> reinforcement(0.6)).hasMessage("r has no plies");
    }

    private static Reinforcement reinforcement(double arealMass, FibrePly... plies) {
        return new Reinforcement(
                "r",
                "r",
                Form.STITCHED,
                List.of(plies),
                Optional.empty(),
                Figures.none().with(Property.AREAL_WEIGHT, arealMass),
                Optional.empty());
    }

    @Test
    void aReinforcementKnowsItsRollAndBinder() {
        assertThat(mat(0.3).rollWidth()).hasValue(1.25);
        assertThat(reinforcement(0.3, FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.3))
                        .rollWidth())
                .isEmpty();
        assertThat(mat(0.3).binder().orElseThrow().word()).isEqualTo("powder");
    }

    @ParameterizedTest
    @CsvSource({"FIBRE_VOLUME_FRACTION, 0", "FIBRE_VOLUME_FRACTION, 1", "E1, 0", "E2, -1", "G12, 0", "G13, 0"})
    void measuredPropertiesAreWhatCanBe(Property property, double value) {
        Figures ply = Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.5)
                .with(Property.E1, 21e9)
                .with(Property.E2, 20e9)
                .with(Property.G12, 3.5e9)
                .with(Property.NU12, 0.13)
                .with(property, value);
        assertThatThrownBy(() -> new Reinforcement(
                        "r", "r", Form.MAT, mat(0.3).plies(), Optional.empty(), mat(0.3).figures(), Optional.of(ply)))
                .hasMessageStartingWith("r (measured): " + property.key());
    }

    private static Reinforcement measured(Map<Property, Double> more) {
        Figures ply = Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.5)
                .with(Property.E1, 21e9)
                .with(Property.E2, 20e9)
                .with(Property.G12, 3.5e9)
                .with(Property.NU12, 0.13);
        for (Map.Entry<Property, Double> one : more.entrySet()) {
            ply = ply.with(one.getKey(), one.getValue());
        }
        return new Reinforcement(
                "r", "r", Form.MAT, mat(0.3).plies(), Optional.empty(), mat(0.3).figures(), Optional.of(ply));
    }

    private static Map<Property, Double> each(double value, Property... properties) {
        return Stream.of(properties).collect(Collectors.toMap(Function.identity(), property -> value));
    }

    @ParameterizedTest
    @EnumSource(
            names = {"XT", "XC", "YT", "YC", "S", "S23", "STRAIN_1T", "STRAIN_1C", "STRAIN_2T", "STRAIN_2C", "STRAIN_12"
            })
    void measuredStrengthsAndStrainsAreAboveZeroAndComplete(Property one) {
        Map<Property, Double> all = each(
                0.5,
                Property.XT,
                Property.XC,
                Property.YT,
                Property.YC,
                Property.S,
                Property.S23,
                Property.STRAIN_1T,
                Property.STRAIN_1C,
                Property.STRAIN_2T,
                Property.STRAIN_2C,
                Property.STRAIN_12);
        assertThat(measured(all).measured().orElseThrow().value(one)).isEqualTo(0.5);
        Map<Property, Double> impossible = new EnumMap<>(all);
        impossible.put(one, 0.0);
        assertThatThrownBy(() -> measured(impossible))
                .hasMessage("r (measured): " + one.key() + " must be above zero, not 0.0");
        Map<Property, Double> incomplete = new EnumMap<>(all);
        incomplete.remove(one);
        if (one == Property.S23) {
            assertThat(measured(incomplete).measured()).isPresent();
        } else {
            assertThatThrownBy(() -> measured(incomplete))
                    .hasMessageContaining("r (measured) has no " + one.key() + "; ");
        }
    }

    @Test
    void measuredStrainsAndS23WantTheStrengths() {
        String wanted = "r (measured) has no Xt, Xc, Yt, Yc, S to go with its S23 or strain limits";
        assertThatThrownBy(() -> measured(each(1, Property.S23))).hasMessage(wanted);
        assertThatThrownBy(() -> measured(each(
                        0.02,
                        Property.STRAIN_1T,
                        Property.STRAIN_1C,
                        Property.STRAIN_2T,
                        Property.STRAIN_2C,
                        Property.STRAIN_12)))
                .hasMessage(wanted);
    }

    @Test
    void aCoreMayStateItsCells() {
        assertThat(PVC.cellSize()).isEmpty();
        assertThat(new Core("h", "h", Core.Type.HONEYCOMB, true, PVC.figures().with(Property.CELL_SIZE, 0.0032))
                        .cellSize())
                .hasValue(0.0032);
        assertThatThrownBy(() -> new Core(
                        "h", "h", Core.Type.HONEYCOMB, true, PVC.figures().with(Property.CELL_SIZE, 0)))
                .hasMessage("h: cell-size must be above zero, not 0.0");
    }

    @ParameterizedTest
    @EnumSource(names = {"TENSILE_STRENGTH", "COMPRESSIVE_STRENGTH", "SHEAR_STRENGTH"})
    void aBulkerMayStateItsStrengths(Property property) {
        Figures figures = BULKING_MAT.figures();
        assertThat(new Bulker("b", "b", figures.with(property, 4e6)).figures().value(property))
                .isEqualTo(4e6);
        assertThatThrownBy(() -> new Bulker("b", "b", figures.with(property, 0)))
                .hasMessage("b: " + property.key() + " must be above zero, not 0.0");
    }

    @Test
    void compressiveStrengthIsAboveZero() {
        assertThatThrownBy(() -> with(POLYESTER, Property.COMPRESSIVE_STRENGTH, 0))
                .hasMessageContaining("compressive-strength must be above zero");
        assertThatThrownBy(() -> new Fibre(
                        "f", "f", Fibre.Type.ARAMID, E_GLASS.figures().with(Property.COMPRESSIVE_STRENGTH, 0)))
                .hasMessageContaining("compressive-strength must be above zero");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -0.1})
    void aPlyIsWhatCanBe(double value) {
        assertThatThrownBy(() -> FibrePly.of(E_GLASS, Form.MAT, 0, value))
                .hasMessageContaining("areal weight of a ply");
        assertThatThrownBy(() -> new FibrePly(E_GLASS, Form.MAT, 0, 0.3, value))
                .hasMessageContaining("warp share must be from 0 to 1");
        assertThatThrownBy(() -> FibrePly.of(E_GLASS, Form.MAT, value * Double.POSITIVE_INFINITY, 0.3))
                .hasMessageContaining("angle of a ply must be finite");
    }

    @Test
    void fibresLieAsTheFormSays() {
        assertThat(FibrePly.of(E_GLASS, Form.UNIDIRECTIONAL, 0, 0.3).warpShare())
                .isEqualTo(1);
        assertThat(FibrePly.of(E_GLASS, Form.WOVEN_CLOTH, 0, 0.3).warpShare()).isEqualTo(0.5);
        assertThat(Form.values()).extracting(Form::word).doesNotHaveDuplicates();
    }

    /** Zero stays zero when a make-up is turned: −0 would print as "-0". */
    @Test
    void turningKeepsZeroPositive() {
        double angle = reinforcement(0.3, FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.3))
                .turnedPlies()
                .get(0)
                .angle();
        assertThat(Double.doubleToRawLongBits(angle)).isZero();
    }

    @Test
    void aStockIsOverlaidById() {
        Resin own = with(POLYESTER, Property.SHRINKAGE, 0.07);
        Materials stock = Materials.of(List.of(E_GLASS, POLYESTER)).overlaidBy(Materials.of(List.of(own, PVC)));
        assertThat(stock.find("polyester-ortho")).contains(own);
        assertThat(stock.find("e-glass")).contains(E_GLASS);
        assertThat(stock.find("pvc-80")).contains(PVC);
        assertThat(stock.find("balsa")).isEmpty();
        assertThat(stock.ids()).containsExactly("e-glass", "polyester-ortho", "pvc-80");
        assertThat(Materials.of(List.of(POLYESTER, own)).find("polyester-ortho"))
                .contains(own);
    }

    @Test
    void statusesHaveWords() {
        assertThat(Status.COMMON_PRACTICE.word()).isEqualTo("common practice");
        assertThat(Status.values())
                .allSatisfy(status -> assertThat(status.word())
                        .isEqualTo(status.name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        assertThat(MEKP.kind().word()).isEqualTo("catalyst");
    }
}
