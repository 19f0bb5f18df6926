package laminate.check;

import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.deflection;
import static laminate.check.CheckedParts.panel;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.reserve;
import static laminate.check.CheckedParts.sandwich;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import laminate.part.BeamPlan;
import laminate.part.LoadCase;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.FailureAnalysis;
import laminate.theory.failure.ReserveFactor;
import laminate.theory.panel.Edge;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold whatever the numbers are. */
class CheckInvariantsTest {

    private static final LaminateLoad LOAD = LaminateLoad.NONE
            .with(Term.NX, -20e3)
            .with(Term.MX, 60)
            .with(Term.MXY, 25)
            .withShear(3000, 1000);

    private static Part caseOf(LaminateLoad load) {
        return part(sandwich().withLoadCases(List.of(new LoadCase("case", load))));
    }

    private static Part panelOf(double pressure) {
        return part(sandwich()).withPanels(List.of(panel("sandwich", 0.6, Edge.CLAMPED, pressure)));
    }

    /** All but crushing, which grows with the square where faces bend, go with the load. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.5, 3})
    void reserveFactorsFallAsTheLoadRises(double factor) {
        List<Reserve> once =
                check(caseOf(LOAD)).zones().get(0).loadCases().get(0).reserves();
        List<Reserve> more = check(caseOf(LOAD.times(factor)))
                .zones()
                .get(0)
                .loadCases()
                .get(0)
                .reserves();
        assertThat(once).hasSize(6).extracting(Reserve::kind).doesNotContain(ReserveKind.DIMPLING);
        for (Reserve reserve : once) {
            assertThat(CheckedParts.factor(more, reserve.kind()))
                    .as(reserve.kind().word())
                    .isCloseTo(reserve.factor() / factor, Percentage.withPercentage(1e-6));
        }
    }

    @Test
    void aPanelDeflectsAndIsStressedWithItsLoad() {
        PanelCheck once = check(panelOf(2e3)).panels().get(0);
        PanelCheck thrice = check(panelOf(-6e3)).panels().get(0);
        assertThat(thrice.bending().deflection())
                .isCloseTo(-3 * once.bending().deflection(), Percentage.withPercentage(1e-6));
        assertThat(CheckedParts.factor(thrice.reserves(), ReserveKind.CORE_SHEAR))
                .isCloseTo(
                        CheckedParts.factor(once.reserves(), ReserveKind.CORE_SHEAR) / 3,
                        Percentage.withPercentage(1e-6));
        assertThat(CheckedParts.factor(thrice.reserves(), ReserveKind.WRINKLING))
                .isCloseTo(
                        CheckedParts.factor(once.reserves(), ReserveKind.WRINKLING) / 3,
                        Percentage.withPercentage(1e-4));
    }

    /** The load at a reserve factor has a reserve of 1. */
    @ParameterizedTest
    @EnumSource(
            value = ReserveKind.class,
            names = {"FIRST_PLY", "LAST_PLY", "CORE_SHEAR", "CRUSHING", "WRINKLING", "SHEAR_CRIMPING"})
    void theLoadAtTheReserveFactorHasNoneLeft(ReserveKind kind) {
        double factor = CheckedParts.factor(
                check(caseOf(LOAD)).zones().get(0).loadCases().get(0).reserves(), kind);
        List<Reserve> then = check(caseOf(LOAD.times(factor)))
                .zones()
                .get(0)
                .loadCases()
                .get(0)
                .reserves();
        assertThat(CheckedParts.factor(then, kind)).isCloseTo(1, Percentage.withPercentage(1e-6));
    }

    @Test
    void aLimitThatIsExactlyReachedIsMetAndATouchMoreIsNot() {
        PanelCheck panel = check(panelOf(20e3)).panels().get(0);
        double w = panel.governingDeflection();
        double R = CheckedParts.factor(panel.reserves(), ReserveKind.CORE_SHEAR);
        assertThat(check(panelOf(20e3).withLimits(deflection(w))).limitsMet()).isTrue();
        assertThat(check(panelOf(20e3).withLimits(deflection(w * (1 - 1e-6)))).limitsMet())
                .isFalse();
        assertThat(check(panelOf(20e3).withLimits(reserve(ReserveKind.CORE_SHEAR, R)))
                        .limitsMet())
                .isTrue();
        assertThat(check(panelOf(20e3).withLimits(reserve(ReserveKind.CORE_SHEAR, R * (1 + 1e-6))))
                        .limitsMet())
                .isFalse();
    }

    /** What a load case says of points is what the library says without any part. */
    @Test
    void aLoadCaseIsWhatTheLaminateItselfAnswers() {
        PartCheck check = check(caseOf(LOAD));
        LoadCaseCheck loadCase = check.zones().get(0).loadCases().get(0);
        var laminate = check.zones().get(0).zone().laminate();
        assertThat(loadCase.laminate().response()).isEqualTo(laminate.responseTo(LOAD));
        assertThat(loadCase.laminate().points()).hasSize(9);
        FailureAnalysis analysis = FailureAnalysis.of(laminate, LOAD);
        loadCase.laminate()
                .points()
                .forEach(point -> point.reserves()
                        .forEach((criterion, reserve) -> assertThat(reserve)
                                .isEqualTo(analysis.reserve(
                                                point.point().ply(),
                                                point.point().at(),
                                                criterion)
                                        .orElseThrow())));
        assertThat(loadCase.laminate().points().get(0).reserves()).hasSize(3);
        assertThat(loadCase.laminate().points().get(4).reserves()).hasSize(2);
        assertThat(loadCase.progressive().steps()).isNotEmpty();
        assertThat(CheckedParts.factor(loadCase.reserves(), ReserveKind.LAST_PLY))
                .isEqualTo(loadCase.progressive().lastPlyFactor().orElseThrow());
    }

    /** A panel's stress at its worst place and a beam's are those of the moment there. */
    @Test
    void theWorstPlaceHasTheLeastReserve() {
        PanelCheck panel = check(panelOf(20e3)).panels().get(0);
        double least = panel.worst().points().stream()
                .flatMap(point -> point.reserves().values().stream())
                .filter(reserve -> reserve.criterion() == Criterion.ISOTROPIC)
                .mapToDouble(ReserveFactor::value)
                .min()
                .orElseThrow();
        assertThat(CheckedParts.factor(panel.reserves(), ReserveKind.FIRST_PLY)).isEqualTo(least);
        double Mx = panel.worstPlace().resultants().moment().x();
        assertThat(Math.abs(Mx)).isGreaterThan(1);
        assertThat(panel.worst().response().resultants().moment().x()).isCloseTo(Mx, Percentage.withPercentage(1e-6));
        assertThat(panel.reserves()).isSortedAccordingTo((a, b) -> Double.compare(a.factor(), b.factor()));
    }

    /** A beam loaded from the other side has its mirror image's reserves. */
    @Test
    void aBeamDoesNotMindItsSide() {
        double[] forces = {500, -500};
        double[][] found = new double[2][];
        for (int i = 0; i < 2; i++) {
            BeamPlan plan =
                    BeamPlan.of("beam", "sandwich", 0.5, 0.05, Supports.SIMPLY_SUPPORTED, BeamLoad.at(forces[i], 0.2));
            Zone zone = sandwich();
            found[i] = check(part(zone).withBeams(List.of(plan))).beams().get(0).reserves().stream()
                    .mapToDouble(Reserve::factor)
                    .toArray();
        }
        assertThat(found[1]).containsExactly(found[0], Offset.offset(1e-9));
    }

    /** 10¹⁰ times the least is rounding: nothing is loaded that way. */
    @Test
    void whatIsLoadedByRoundingAloneHasNoReserveFactor() {
        LeastReserves least = new LeastReserves();
        least.add(Reserve.whole(ReserveKind.FIRST_PLY, 2));
        least.add(Reserve.whole(ReserveKind.WRINKLING, 1e10));
        least.add(Reserve.whole(ReserveKind.SHEAR_CRIMPING, 1e11));
        assertThat(least.sorted())
                .extracting(Reserve::kind)
                .containsExactly(ReserveKind.FIRST_PLY, ReserveKind.WRINKLING);
        assertThat(least.of(ReserveKind.SHEAR_CRIMPING)).isEmpty();
    }
}
