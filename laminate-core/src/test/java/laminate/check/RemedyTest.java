package laminate.check;

import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.deflection;
import static laminate.check.CheckedParts.panel;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.reserve;
import static laminate.check.CheckedParts.sandwich;
import static laminate.check.CheckedParts.solid;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import laminate.check.Remedy.Lever;
import laminate.part.BeamPlan;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.MatStrength;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.theory.panel.Edge;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A remedy is right when the part is changed as it says, by other means than its own, and just meets the limit then. */
class RemedyTest {

    private static Part panelPart(Zone zone, double pressure, Limits limits) {
        return part(zone)
                .withPanels(List.of(panel(zone.name(), 0.5, Edge.SIMPLY_SUPPORTED, pressure)))
                .withLimits(limits);
    }

    private static Part beamPart(double force, Limits limits) {
        BeamPlan plan =
                BeamPlan.of("beam", "sandwich", 0.5, 0.05, Supports.SIMPLY_SUPPORTED, BeamLoad.threePoint(force, 0.5));
        return part(sandwich()).withBeams(List.of(plan)).withLimits(limits);
    }

    private static Part casePart(Zone zone, LaminateLoad load, Limits limits) {
        return part(zone.withLoadCases(List.of(new LoadCase("case", load)))).withLimits(limits);
    }

    static Stream<Arguments> misses() {
        LaminateLoad bent = LaminateLoad.NONE.with(Term.MX, 500);
        LaminateLoad pressed = LaminateLoad.NONE.with(Term.NX, -300e3);
        LaminateLoad sheared = LaminateLoad.NONE.withShear(10e3, 0);
        return Stream.of(
                Arguments.of("solid panel, deflection", panelPart(solid(0.006), 2000, deflection(0.0003)), 2),
                Arguments.of("solid panel, large", panelPart(solid(0.002), 2000, deflection(0.002)), 2),
                Arguments.of(
                        "solid panel, strength", panelPart(solid(0.004), 3000, reserve(ReserveKind.FIRST_PLY, 20)), 2),
                Arguments.of("sandwich panel, deflection", panelPart(sandwich(), 20e3, deflection(0.0008)), 4),
                Arguments.of(
                        "sandwich panel, core shear",
                        panelPart(sandwich(), 40e3, reserve(ReserveKind.CORE_SHEAR, 4)),
                        2),
                Arguments.of(
                        "sandwich panel, crushing", panelPart(sandwich(), 40e3, reserve(ReserveKind.CRUSHING, 40)), 1),
                Arguments.of(
                        "core with one face, deflection",
                        panelPart(
                                Zone.of(
                                        "backed",
                                        1,
                                        List.of(
                                                CheckedParts.layer(CheckedParts.FACE, 0.004, 0),
                                                CheckedParts.layer(CheckedParts.CORE, 0.01, 0))),
                                1000,
                                deflection(0.0005)),
                        2),
                Arguments.of("beam, deflection", beamPart(500, deflection(0.004)), 4),
                Arguments.of("beam, wrinkling", beamPart(500, reserve(ReserveKind.WRINKLING, 8)), 3),
                Arguments.of("beam, indentation", beamPart(500, reserve(ReserveKind.INDENTATION, 5)), 2),
                Arguments.of("moment, first ply", casePart(sandwich(), bent, reserve(ReserveKind.FIRST_PLY, 20)), 3),
                Arguments.of("moment, last ply", casePart(solid(0.004), bent, reserve(ReserveKind.LAST_PLY, 2)), 2),
                Arguments.of(
                        "shear force, last ply", casePart(sandwich(), sheared, reserve(ReserveKind.LAST_PLY, 3)), 3),
                Arguments.of(
                        "force, crimping", casePart(sandwich(), pressed, reserve(ReserveKind.SHEAR_CRIMPING, 3)), 2),
                Arguments.of("thickness", casePart(solid(0.004), bent, thickness(0.005)), 1));
    }

    private static Limits thickness(double least) {
        return new Limits(Optional.empty(), Map.of(), OptionalDouble.of(least), OptionalDouble.empty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("misses")
    void everyRemedyMeetsTheLimitClosely(String name, Part part, int remedies) {
        LimitCheck miss = check(part).limits().get(0);
        assertThat(miss.verdict()).isEqualTo(LimitCheck.Verdict.NOT_MET);
        assertThat(miss.margin()).isLessThan(1);
        assertThat(miss.remedies()).hasSize(remedies);
        for (Remedy remedy : miss.remedies()) {
            LimitCheck mended = check(changed(part, remedy)).limits().stream()
                    .filter(limit ->
                            limit.kind() == miss.kind() && limit.reserveKind().equals(miss.reserveKind()))
                    .findFirst()
                    .orElseThrow();
            assertThat(mended.isMet())
                    .as("%s mended by %s: %s", name, remedy, mended)
                    .isTrue();
            assertThat(mended.margin()).as("%s just met by %s", name, remedy).isLessThan(1.00101);
        }
    }

    /** A solid laminate bends as the cube of its thickness and is stressed as its square. */
    @Test
    void aSolidLaminateFollowsItsPowers() {
        Part deflecting = panelPart(solid(0.006), 2000, deflection(0.0003));
        LimitCheck deflected = check(deflecting).limits().get(0);
        assertThat(remedy(deflected, Lever.LAMINATE_THICKNESS).factor())
                .isCloseTo(Math.cbrt(1 / deflected.margin()), Percentage.withPercentage(0.1));
        assertThat(remedy(deflected, Lever.LAYER_STIFFNESS).factor())
                .isCloseTo(1 / deflected.margin(), Percentage.withPercentage(0.1));
        LimitCheck stressed = check(panelPart(solid(0.004), 3000, reserve(ReserveKind.FIRST_PLY, 20)))
                .limits()
                .get(0);
        Remedy thicker = remedy(stressed, Lever.LAMINATE_THICKNESS);
        assertThat(thicker.factor()).isCloseTo(Math.sqrt(1 / stressed.margin()), Percentage.withPercentage(0.1));
        assertThat(thicker.from()).hasValue(0.004);
        assertThat(thicker.to().orElseThrow()).isEqualTo(0.004 * thicker.factor());
    }

    /** Stiffer faces cannot mend what the shear of the core makes alone. */
    @Test
    void whatCannotMendIsNotOffered() {
        LimitCheck miss = check(beamPart(500, deflection(0.0018))).limits().get(0);
        assertThat(miss.remedies())
                .extracting(Remedy::lever)
                .contains(Lever.CORE_THICKNESS)
                .doesNotContain(Lever.LAYER_STIFFNESS, Lever.CORE_SHEAR_STIFFNESS);
    }

    @Test
    void aMassThatIsTooHighIsShortOfLightness() {
        Part part = casePart(
                solid(0.004)
                        .withLimits(
                                new Limits(Optional.empty(), Map.of(), OptionalDouble.empty(), OptionalDouble.of(4))),
                LaminateLoad.NONE.with(Term.NX, 1),
                Limits.NONE);
        LimitCheck miss = check(part).limits().get(0);
        assertThat(miss.kind()).isEqualTo(LimitCheck.Kind.MASS);
        assertThat(miss.found()).hasValue(CheckedParts.DENSITY * 0.004);
        assertThat(remedy(miss, Lever.MASS).factor()).isCloseTo(4.0 / 6, Offset.offset(1e-12));
        assertThat(remedy(miss, Lever.MASS).to().orElseThrow()).isCloseTo(4, Offset.offset(1e-12));
    }

    private static Remedy remedy(LimitCheck miss, Lever lever) {
        return miss.remedies().stream()
                .filter(remedy -> remedy.lever() == lever)
                .findFirst()
                .orElseThrow();
    }

    private static Part changed(Part part, Remedy remedy) {
        List<Zone> zones = new ArrayList<>();
        for (Zone zone : part.zones()) {
            List<Layer> layers = zone.layers().stream()
                    .map(layer -> changed((LaminaLayer) layer, remedy.lever(), remedy.factor()))
                    .toList();
            zones.add(Zone.of(zone.name(), zone.area(), layers).withLoadCases(zone.loadCases()));
        }
        return Part.of(part.name(), zones)
                .withPanels(part.panels())
                .withBeams(part.beams())
                .withLimits(part.limits());
    }

    private static Layer changed(LaminaLayer layer, Lever lever, double f) {
        boolean core = layer.lamina().strength().orElseThrow() instanceof CoreStrength;
        Lamina m = layer.lamina();
        double t = layer.thickness();
        return switch (lever) {
            case LAMINATE_THICKNESS -> CheckedParts.layer(m, f * t, 0);
            case CORE_THICKNESS -> CheckedParts.layer(m, core ? f * t : t, 0);
            case FACE_THICKNESS -> CheckedParts.layer(m, core ? t : f * t, 0);
            case LAYER_STIFFNESS ->
                CheckedParts.layer(
                        core ? m : Lamina.isotropic(f * m.E1(), m.nu12()).withStrength(CheckedParts.MAT_STRENGTH),
                        t,
                        0);
            case CORE_SHEAR_STIFFNESS -> CheckedParts.layer(core ? m.withTransverseShear(f * 28e6, f * 28e6) : m, t, 0);
            case CORE_STIFFNESS ->
                CheckedParts.layer(
                        core
                                ? Lamina.of(m.E1(), f * m.E2(), m.G12(), m.nu12())
                                        .withTransverseShear(f * 28e6, f * 28e6)
                                        .withStrength(CheckedParts.CORE_STRENGTH)
                                : m,
                        t,
                        0);
            case PLY_STRENGTH ->
                CheckedParts.layer(core ? m : m.withStrength(new MatStrength(f * 200e6, f * 150e6, f * 140e6)), t, 0);
            case CORE_SHEAR_STRENGTH ->
                CheckedParts.layer(
                        core
                                ? m.withStrength(new CoreStrength(f * 0.8e6, f * 0.8e6, 1.1e6, OptionalDouble.empty()))
                                : m,
                        t,
                        0);
            case CORE_COMPRESSIVE_STRENGTH ->
                CheckedParts.layer(
                        core ? m.withStrength(new CoreStrength(0.8e6, 0.8e6, f * 1.1e6, OptionalDouble.empty())) : m,
                        t,
                        0);
            case MASS -> layer;
        };
    }
}
