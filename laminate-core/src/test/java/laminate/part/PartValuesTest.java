package laminate.part;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.FLOWCOAT;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.coating;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.part;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a part may be made of, and what is refused with the value in the message. */
class PartValuesTest {
    private static final Lamina LAMINA = Lamina.of(40e9, 9e9, 4e9, 0.28);

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void lengthsAreasAndMassesAreAboveNothing(double value) {
        assertThatThrownBy(() -> zone(value, hand(mat(0.3))))
                .hasMessage("panel: area must be above zero, not " + value + " m²");
        assertThatThrownBy(() -> CoreLayer.of(PVC, value, HAND))
                .hasMessageContaining("thickness of a core must be above zero, not " + value);
        assertThatThrownBy(() -> new Bed(PASTE, Dose.usual(PASTE, MEKP), value))
                .hasMessageContaining("thickness of a bed must be above zero");
        assertThatThrownBy(() -> new Film(Film.Basis.WET, value))
                .hasMessage("wet-film must be above zero, not " + value);
        assertThatThrownBy(() -> new LaminaLayer(LAMINA, value, 0.001, 0, ""))
                .hasMessageContaining("must be above zero");
        assertThatThrownBy(() -> new LaminaLayer(LAMINA, 1900, value, 0, ""))
                .hasMessageContaining("must be above zero");
        assertThatThrownBy(() -> new Trim(value, 0.04)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> new Trim(3, value)).hasMessageContaining("above zero");
        assertThatThrownBy(() -> new Measured(OptionalDouble.of(value), List.of()))
                .hasMessageContaining("a measured mass must be above zero");
        assertThatThrownBy(() -> new Measured(OptionalDouble.empty(), List.of(0.001, value)))
                .hasMessageContaining("a measured thickness");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void anglesAreFinite(double angle) {
        assertThatThrownBy(() -> new ReinforcementLayer(mat(0.3), angle, false, HAND, Optional.empty(), ""))
                .hasMessageContaining("an angle must be finite");
        assertThatThrownBy(() -> new CoreLayer(PVC, 0.01, angle, CoreFinish.PLAIN, HAND, Optional.empty(), ""))
                .hasMessageContaining("an angle must be finite");
        assertThatThrownBy(() -> new LaminaLayer(LAMINA, 1900, 0.001, angle, ""))
                .hasMessageContaining("an angle must be finite");
    }

    @Test
    void countsAreOneOrMore() {
        Zone zone = zone(1, hand(mat(0.3)));
        assertThatThrownBy(() -> new Part("lid", 0, List.of(zone), List.of(), Measured.NOTHING))
                .hasMessage("count must be one or more, not 0");
        assertThatThrownBy(() -> new Zone(
                        "lid", 1, 0, List.of(), zone.layers(), Optional.empty(), ContentSet.TRADE, Measured.NOTHING))
                .hasMessage("lid: count must be one or more, not 0");
        assertThatThrownBy(() -> new Item("hinge", 0, 1, Optional.empty()))
                .hasMessage("hinge: count must be one or more, not 0");
        assertThatThrownBy(() -> new Coating(
                        GELCOAT, gelcoat(0.0005).dose(), gelcoat(0.0005).film(), 0))
                .hasMessage("a coating has one coat or more, not 0");
    }

    @Test
    void namesAreNotBlank() {
        Zone zone = zone(1, hand(mat(0.3)));
        assertThatThrownBy(() -> Part.of(" ", List.of(zone))).hasMessage("a part needs a name");
        assertThatThrownBy(() -> Zone.of("", 1, zone.layers())).hasMessage("a zone needs a name");
        assertThatThrownBy(() -> new Item(" ", 1, 1, Optional.empty())).hasMessage("an item needs a name");
    }

    @Test
    void nothingIsEmpty() {
        assertThatThrownBy(() -> Part.of("lid", List.of())).hasMessage("lid has no zones");
        assertThatThrownBy(() -> Zone.of("lid", 1, List.of())).hasMessage("lid has no layers");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void anItemMayWeighNothingButNotLess(double mass) {
        assertThat(new Item("label", 1, 0, Optional.empty()).mass()).isZero();
        assertThatThrownBy(() -> new Item("label", 1, mass, Optional.empty()))
                .hasMessage("label: mass must not be below zero, not " + mass);
    }

    @Test
    void coatingsAreCoatings() {
        assertThatThrownBy(
                        () -> new Coating(POLYESTER, Dose.usual(POLYESTER, MEKP), new Film(Film.Basis.WET, 0.0005), 1))
                .hasMessage("polyester-ortho is a laminating resin, not a coating");
        assertThatThrownBy(() -> new Coating(GELCOAT, new Dose(MEKP, 0.03), new Film(Film.Basis.WET, 0.0005), 1))
                .hasMessage("gelcoat-iso takes 1.2 % to 2 % of mekp by mass, not 3 %");
        assertThat(gelcoat(0.0005).atMouldFace()).isTrue();
        assertThat(coating(FLOWCOAT, new Film(Film.Basis.WET, 0.0005)).atMouldFace())
                .isFalse();
    }

    @Test
    void aBedIsOfPasteInItsOwnDose() {
        assertThatThrownBy(() -> new Bed(GELCOAT, Dose.usual(GELCOAT, MEKP), 0.001))
                .hasMessage("gelcoat-iso is a gelcoat, which beds no core");
        assertThatThrownBy(() -> new Bed(PASTE, new Dose(MEKP, 0.03), 0.001)).hasMessageContaining("1 % to 2.5 %");
        assertThat(new Bed(POLYESTER, Dose.usual(POLYESTER, MEKP), 0.001).paste())
                .isEqualTo(POLYESTER);
    }

    @Test
    void layersNameTheirMaterialAndStage() {
        assertThat(hand(mat(0.3)).material()).isEqualTo("mat-300");
        assertThat(new BulkerLayer(BULKING_MAT, HAND, "bulk").material()).isEqualTo("bulking-mat-3");
        assertThat(new BulkerLayer(BULKING_MAT, HAND, "bulk").stage()).isEqualTo("bulk");
        assertThat(CoreLayer.of(PVC, 0.01, HAND).material()).isEqualTo("pvc-80");
        assertThat(new LaminaLayer(LAMINA, 1900, 0.001, 0, "").material()).isEqualTo("lamina");
        assertThat(new LaminaLayer(LAMINA, 1900, 0.001, 0, "").laying()).isEmpty();
        assertThat(hand(mat(0.3)).laying()).contains(HAND);
    }

    @Test
    void listsCannotBeChangedFromOutside() {
        List<Layer> layers = new ArrayList<>(List.of(hand(mat(0.3))));
        Zone zone = Zone.of("lid", 1, layers);
        List<Zone> zones = new ArrayList<>(List.of(zone));
        Part part = Part.of("lid", zones);
        layers.clear();
        zones.clear();
        assertThat(zone.layers()).hasSize(1);
        assertThat(part.zones()).hasSize(1);
        assertThat(part(zone).count()).isEqualTo(1);
    }

    @Test
    void readingsHaveAMean() {
        assertThat(new Measured(OptionalDouble.empty(), List.of(0.003, 0.004))
                        .meanThickness()
                        .orElseThrow())
                .isCloseTo(0.0035, within(1e-18));
        assertThat(Measured.NOTHING.meanThickness()).isEmpty();
    }

    @Test
    void areasAreOfAllSuchZones() {
        Zone zone = new Zone(
                "lid",
                2.5,
                3,
                List.of(),
                List.of(hand(mat(0.3))),
                Optional.of(new Trim(4, 0.05)),
                ContentSet.TRADE,
                Measured.NOTHING);
        assertThat(zone.totalArea()).isEqualTo(7.5);
        assertThat(zone.trim().orElseThrow().area()).isCloseTo(0.2, within(1e-16));
        assertThat(zone.with(ContentSet.ISO_NOMINAL_SIMPLE).contents()).isEqualTo(ContentSet.ISO_NOMINAL_SIMPLE);
        assertThat(Film.Basis.CURED.key()).isEqualTo("thickness");
    }
}
