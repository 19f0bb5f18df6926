package laminate.check;

import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.factor;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.sandwich;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import laminate.part.BeamPlan;
import laminate.part.Limits;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.Lamina;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The sandwich beam of case SAN-03 as a part: b = 50 mm, L = 500 mm, faces 2 mm, core 20 mm, P = 500 N in the middle. */
class BeamCheckValidationTest {
    private static final double B = 0.05;
    private static final double L = 0.5;
    private static final double P = 500;

    private static BeamCheck beam(OptionalDouble bearing) {
        BeamPlan plan = new BeamPlan(
                "beam",
                "sandwich",
                BeamPlan.Along.X,
                L,
                B,
                Supports.SIMPLY_SUPPORTED,
                BeamLoad.threePoint(P, L),
                bearing,
                Limits.NONE);
        return check(part(sandwich()).withBeams(List.of(plan))).beams().get(0);
    }

    @Test
    void deflectsByBendingAndShear() {
        BeamCheck beam = beam(OptionalDouble.empty());
        assertThat(beam.deflection().bending()).isCloseTo(0.002669115, Percentage.withPercentage(0.1));
        assertThat(beam.deflection().shear()).isCloseTo(0.001844746, Percentage.withPercentage(1));
    }

    /** Outer-fibre stress 30.748 MPa, mean face stress M/(b tf d), core shear 227 273 Pa, wrinkling 173.8 MPa (SAN-04). */
    @Test
    void hasItsReserves() {
        BeamCheck beam = beam(OptionalDouble.empty());
        assertThat(factor(beam.reserves(), ReserveKind.FIRST_PLY))
                .isCloseTo(150e6 / 30748210.0, Percentage.withPercentage(0.1));
        assertThat(factor(beam.reserves(), ReserveKind.CORE_SHEAR))
                .isCloseTo(0.8e6 / 227272.7, Percentage.withPercentage(1));
        double meanFace = 62.5 * 20e9 * 0.011 / 487.8333;
        assertThat(factor(beam.reserves(), ReserveKind.WRINKLING))
                .isCloseTo(173801300 / meanFace, Percentage.withPercentage(0.3));
        assertThat(beam.worstPlace()).isCloseTo(L / 2, Percentage.withPercentage(1e-9));
        assertThat(beam.reserves()).isSortedAccordingTo((a, b) -> Double.compare(a.factor(), b.factor()));
    }

    /** P = 4/3 b t √(σc σf) of a brittle face, and with a pad of length a what the core bears below it, σc b a. */
    @Test
    void isIndentedUnderTheLoad() {
        double line = 4.0 / 3 * B * 0.002 * Math.sqrt(1.1e6 * 150e6);
        Reserve bare = beam(OptionalDouble.empty()).reserves().stream()
                .filter(reserve -> reserve.kind() == ReserveKind.INDENTATION)
                .findFirst()
                .orElseThrow();
        assertThat(bare.factor()).isCloseTo(line / P, Percentage.withPercentage(0.01));
        assertThat(bare.x()).hasValue(L / 2);
        assertThat(factor(beam(OptionalDouble.of(0.02)).reserves(), ReserveKind.INDENTATION))
                .isCloseTo((line + 1.1e6 * B * 0.02) / P, Percentage.withPercentage(0.01));
    }

    /** A support carries half the load each, but of a short load near it nearly all. */
    @Test
    void isIndentedOverASupport() {
        BeamPlan plan = BeamPlan.of("beam", "sandwich", L, B, Supports.SIMPLY_SUPPORTED, BeamLoad.uniform(P / L));
        BeamCheck beam =
                check(part(sandwich()).withBeams(List.of(plan))).beams().get(0);
        double line = 4.0 / 3 * B * 0.002 * Math.sqrt(1.1e6 * 150e6);
        assertThat(factor(beam.reserves(), ReserveKind.INDENTATION))
                .isCloseTo(line / (P / 2), Percentage.withPercentage(0.01));
    }

    /** A cross-ply strip of one ply: EI = b t³ E/12 with E1 along x and E2 along y. */
    @Test
    void runsAlongEitherDirection() {
        Lamina ply = Lamina.of(40e9, 10e9, 4e9, 0.3);
        Zone zone = Zone.of("strip", 1, List.of(CheckedParts.layer(ply, 0.01, 0)));
        for (BeamPlan.Along along : BeamPlan.Along.values()) {
            BeamPlan plan = new BeamPlan(
                    "strip",
                    "strip",
                    along,
                    L,
                    B,
                    Supports.CANTILEVER,
                    BeamLoad.at(P, L),
                    OptionalDouble.empty(),
                    Limits.NONE);
            BeamCheck beam = check(part(zone).withBeams(List.of(plan))).beams().get(0);
            double EI = B * 1e-6 / 12 * (along == BeamPlan.Along.X ? 40e9 : 10e9);
            assertThat(beam.deflection().bending())
                    .isCloseTo(P * L * L * L / (3 * EI), Percentage.withPercentage(1e-9));
        }
    }
}
