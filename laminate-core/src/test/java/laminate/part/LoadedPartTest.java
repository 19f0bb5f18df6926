package laminate.part;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.hand;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.ContentSet;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Ply;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.PanelLoad;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LoadedPartTest {

    private static final Edges CLAMPED = Edges.all(Edge.CLAMPED);
    private static final PanelLoad PRESSURE = new PanelLoad.Uniform(1e4);
    private static final Zone LID = Zone.of("lid", 1, List.of(hand(mat(0.3))));
    private static final PanelPlan PANEL = PanelPlan.of("centre", "lid", 0.6, 0.4, CLAMPED, PRESSURE);
    private static final BeamPlan BEAM =
            BeamPlan.of("strip", "lid", 0.9, 0.1, Supports.SIMPLY_SUPPORTED, BeamLoad.threePoint(800, 0.9));

    private static Limits thickness(double least) {
        return new Limits(Optional.empty(), Map.of(), OptionalDouble.of(least), OptionalDouble.empty());
    }

    private static LoadCase pull(String name) {
        return new LoadCase(name, LaminateLoad.NONE.with(Term.NX, 1000));
    }

    @Test
    void aLoadCaseHasANameAndALoad() {
        assertThatThrownBy(() -> pull(" ")).hasMessage("a load case needs a name");
        assertThatThrownBy(() -> new LoadCase("none", LaminateLoad.NONE)).hasMessage("none: a load case needs a load");
        assertThat(new LoadCase("held", LaminateLoad.NONE.with(Term.EPS_X, 0))
                        .load()
                        .given())
                .containsOnlyKeys(Term.EPS_X);
    }

    @Test
    void copiesOfAZoneKeepItsLoadsAndLimits() {
        Zone zone = LID.withLoadCases(List.of(pull("pull"))).withLimits(thickness(0.004));
        assertThat(zone.with(ContentSet.ISO_NOMINAL_SIMPLE).loadCases()).containsExactly(pull("pull"));
        assertThat(zone.with(ContentSet.ISO_NOMINAL_SIMPLE).limits()).isEqualTo(thickness(0.004));
        assertThat(LID.loadCases()).isEmpty();
        assertThat(LID.limits()).isEqualTo(Limits.NONE);
        assertThatThrownBy(() -> LID.withLoadCases(List.of(pull("pull"), pull("pull"))))
                .hasMessageStartingWith("two load cases are called pull");
    }

    @Test
    void limitsComeFromPanelThenZoneThenPart() {
        Zone strict = LID.withLimits(thickness(0.004));
        Part part = Part.of("boat", List.of(strict, Zone.of("side", 1, LID.layers())))
                .withLimits(thickness(0.003))
                .withPanels(List.of(PANEL))
                .withBeams(List.of(BEAM));
        assertThat(part.limitsOf(PANEL)).isEqualTo(thickness(0.004));
        assertThat(part.limitsOf(BEAM)).isEqualTo(thickness(0.004));
        assertThat(part.limitsOf(part.zone("side"))).isEqualTo(thickness(0.003));
        assertThat(part.zone("lid")).isEqualTo(strict);
        assertThat(part.panels()).containsExactly(PANEL);
        assertThat(part.beams()).containsExactly(BEAM);
    }

    @Test
    void panelsAndBeamsAreOfAZoneOfThePart() {
        Part hull = Part.of("hull", List.of(Zone.of("side", 1, LID.layers())));
        assertThatThrownBy(() -> hull.withPanels(List.of(PANEL)))
                .hasMessageStartingWith("no zone is called lid; accepted: ");
        assertThatThrownBy(() -> hull.withBeams(List.of(BEAM)))
                .hasMessageStartingWith("no zone is called lid; accepted: ");
        Part twice = Part.of("lids", List.of(LID, LID));
        assertThatThrownBy(() -> twice.withPanels(List.of(PANEL))).hasMessage("more than one zone is called lid");
        Part once = Part.of("lid", List.of(LID));
        assertThatThrownBy(() -> once.withPanels(List.of(PANEL, PANEL)))
                .hasMessageStartingWith("two panels are called centre");
        assertThatThrownBy(() -> once.withBeams(List.of(BEAM, BEAM)))
                .hasMessageStartingWith("two beams are called strip");
    }

    @Test
    void aPanelIsReckonedInItsZonesLaminate() {
        Laminate sheet = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.3), 0.003, 0)));
        assertThat(PANEL.in(sheet).laminate()).isEqualTo(sheet);
        assertThat(PANEL.in(sheet).inPlane()).isEqualTo(InPlane.FREE_TO_PULL_IN);
        assertThat(PANEL.in(sheet).span()).isEqualTo(PANEL.span()).isEqualTo(0.4);
    }

    @Test
    void aPanelNeedsNameZoneAndLoad() {
        assertThatThrownBy(() -> PanelPlan.of("", "lid", 1, 1, CLAMPED, PRESSURE))
                .hasMessage("a panel needs a name and a zone");
        assertThatThrownBy(() -> PanelPlan.of("a", " ", 1, 1, CLAMPED, PRESSURE))
                .hasMessage("a panel needs a name and a zone");
        assertThatThrownBy(() -> PanelPlan.of("a", "lid", 1, 1, CLAMPED)).hasMessage("a: a panel needs a load");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void lengthsAreAboveZero(double bad) {
        assertThatThrownBy(() -> PanelPlan.of("a", "lid", bad, 1, CLAMPED, PRESSURE))
                .hasMessage("a: length must be above zero, not " + bad + " m");
        assertThatThrownBy(() -> PanelPlan.of("a", "lid", 1, bad, CLAMPED, PRESSURE))
                .hasMessage("a: width must be above zero, not " + bad + " m");
        assertThatThrownBy(() -> BeamPlan.of("a", "lid", bad, 1, Supports.CANTILEVER, BeamLoad.uniform(1)))
                .hasMessage("a: span must be above zero, not " + bad + " m");
        assertThatThrownBy(() -> BeamPlan.of("a", "lid", 1, bad, Supports.CANTILEVER, BeamLoad.uniform(1)))
                .hasMessage("a: width must be above zero, not " + bad + " m");
    }

    @ParameterizedTest
    @CsvSource({
        "0.30, 0.20, 0.6, 0.4, true", // covers the panel to its edges
        "0.04, 0.04, 0.08, 0.08, true",
        "0.56, 0.36, 0.08, 0.08, true",
        "0.57, 0.20, 0.08, 0.08, false",
        "0.30, 0.03, 0.08, 0.08, false"
    })
    void aPatchLiesOnThePanel(double x, double y, double alongX, double alongY, boolean lies) {
        PanelLoad patch = new PanelLoad.Patch(x, y, alongX, alongY, 900);
        if (lies) {
            assertThat(PanelPlan.of("a", "lid", 0.6, 0.4, CLAMPED, patch).loads())
                    .containsExactly(patch);
        } else {
            assertThatThrownBy(() -> PanelPlan.of("a", "lid", 0.6, 0.4, CLAMPED, patch))
                    .hasMessageContaining("reaches beyond the " + (x > 0.5 ? "length" : "width") + " of the panel");
        }
    }

    @Test
    void aBeamIsLoadedWithinItsSpan() {
        assertThatThrownBy(() -> BeamPlan.of("a", "lid", 0.5, 0.1, Supports.CANTILEVER, BeamLoad.at(800, 0.6)))
                .hasMessage("a: a force at 0.6 m is beyond the span, 0.5 m");
        assertThat(BEAM.along()).isEqualTo(BeamPlan.Along.X);
        assertThat(BEAM.bearingLength()).isEmpty();
        assertThatThrownBy(() -> BeamPlan.of(" ", "lid", 1, 1, Supports.CANTILEVER, BeamLoad.uniform(1)))
                .hasMessage("a beam needs a name and a zone");
    }
}
