package laminate.theory.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.MatStrength;
import laminate.theory.Ply;
import laminate.theory.PlyPoint;
import laminate.theory.PlyStrength;
import laminate.theory.ShearStress;
import laminate.theory.StrainLimits;
import laminate.theory.Vector3;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names, edges, modes and refusals. */
class FailureValuesTest {
    private static final PlyStrength STRENGTH = PlyStrength.of(800e6, 450e6, 30e6, 110e6, 50e6);
    private static final Lamina PLY =
            Lamina.of(40e9, 9e9, 3.5e9, 0.28).withExpansion(7e-6, 28e-6).withStrength(STRENGTH);
    private static final MatStrength GLASS_MAT = new MatStrength(80e6, 120e6, 62e6);
    private static final Lamina MAT = Lamina.isotropic(7e9, 0.33).withStrength(GLASS_MAT);
    private static final CoreStrength FOAM = new CoreStrength(1.1e6, 0.9e6, 1.4e6, OptionalDouble.empty());
    private static final Lamina CORE = Lamina.isotropic(80e6, 0.33).withStrength(FOAM);

    @Test
    void everyCriterionIsFoundByItsName() {
        assertThat(Arrays.stream(Criterion.values()).map(Criterion::jsonName))
                .containsExactly(
                        "max_stress",
                        "max_strain",
                        "tsai_hill",
                        "tsai_wu",
                        "hashin",
                        "isotropic",
                        "core_shear",
                        "crushing");
        for (Criterion criterion : Criterion.values()) {
            assertThat(Criterion.find(criterion.jsonName())).contains(criterion);
            assertThat(criterion.source()).matches(".*(from memory|no source).*");
        }
        assertThat(Criterion.find("tsai-wu")).isEmpty();
        assertThat(Arrays.stream(Mode.values()).map(Mode::text))
                .doesNotHaveDuplicates()
                .allMatch(t -> !t.isBlank());
    }

    @Test
    void eachKindOfStrengthHasItsCriteria() {
        assertThat(Criterion.of(STRENGTH))
                .containsExactly(
                        Criterion.MAX_STRESS,
                        Criterion.MAX_STRAIN,
                        Criterion.TSAI_HILL,
                        Criterion.TSAI_WU,
                        Criterion.HASHIN);
        assertThat(Criterion.of(GLASS_MAT))
                .containsExactly(Criterion.MAX_STRESS, Criterion.MAX_STRAIN, Criterion.ISOTROPIC);
        assertThat(Criterion.of(FOAM)).containsExactly(Criterion.CORE_SHEAR, Criterion.CRUSHING);
        assertThat(Criterion.TSAI_WU.inFor(STRENGTH)).containsExactly(Criterion.TSAI_WU);
        assertThat(Criterion.TSAI_WU.inFor(GLASS_MAT)).containsExactly(Criterion.ISOTROPIC);
        assertThat(Criterion.MAX_STRAIN.inFor(GLASS_MAT)).containsExactly(Criterion.MAX_STRAIN);
        assertThat(Criterion.HASHIN.inFor(FOAM)).containsExactly(Criterion.CORE_SHEAR, Criterion.CRUSHING);
        assertThat(Criterion.ISOTROPIC.inFor(FOAM)).isEmpty();
        assertThat(Criterion.CRUSHING.inFor(STRENGTH)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void withoutLoadThereIsNoReserveFactor(Criterion criterion) {
        for (Lamina lamina : List.of(PLY, MAT, CORE)) {
            assertThat(criterion.reserve(lamina, StressPath.of(Vector3.ZERO))).isEmpty();
            assertThat(criterion.reserve(lamina, StressPath.of(Vector3.ZERO, new Vector3(1e6, 1e6, 1e6))))
                    .isEmpty();
            assertThat(criterion.index(lamina, StressState.ZERO).isPresent())
                    .isEqualTo(criterion.appliesTo(lamina.strength().orElseThrow()));
        }
        assertThat(criterion.index(Lamina.isotropic(7e9, 0.3), StressState.ZERO))
                .isEmpty();
        assertThat(criterion.reserve(Lamina.isotropic(7e9, 0.3), StressPath.of(new Vector3(1, 1, 1))))
                .isEmpty();
    }

    /** Residual stress at its strength already: nothing more can be carried, with load or without. */
    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN", "ISOTROPIC"})
    void residualStressThatFailsAloneLeavesNothing(Criterion criterion) {
        Vector3 residual = new Vector3(0, 130e6, 0);
        Lamina lamina = criterion == Criterion.ISOTROPIC ? MAT : PLY;
        for (Vector3 load : List.of(Vector3.ZERO, new Vector3(1e6, 0, 0), new Vector3(0, -50e6, 0))) {
            ReserveFactor reserve =
                    criterion.reserve(lamina, StressPath.of(load, residual)).orElseThrow();
            assertThat(reserve.value()).isZero();
            assertThat(reserve.failsUnloaded()).isTrue();
        }
        assertThat(Criterion.MAX_STRESS
                        .reserve(MAT, StressPath.of(Vector3.ZERO, residual))
                        .orElseThrow()
                        .value())
                .isZero();
    }

    /** Residual compression across the fibres is used up before the load counts: R = (Yt + 20)/10. */
    @Test
    void residualStressStaysWhereItIs() {
        ReserveFactor reserve = Criterion.MAX_STRESS
                .reserve(PLY, StressPath.of(new Vector3(0, 10e6, 0), new Vector3(0, -20e6, 0)))
                .orElseThrow();
        assertThat(reserve.value()).isCloseTo(5, within(1e-12));
        assertThat(reserve.mode()).isEqualTo(Mode.TENSION_2);
        assertThat(reserve.failsUnloaded()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-200, 1e-12, 1e200})
    void aTinyOrHugeLoadHasItsFactor(double size) {
        for (Criterion criterion : Criterion.of(STRENGTH)) {
            double one = criterion
                    .reserve(PLY, StressPath.of(new Vector3(3, 1, 2)))
                    .orElseThrow()
                    .value();
            double scaled = criterion
                    .reserve(PLY, StressPath.of(new Vector3(3, 1, 2).times(size)))
                    .orElseThrow()
                    .value();
            assertThat(scaled * size).isCloseTo(one, within(1e-9 * one));
        }
        assertThat(Criterion.MAX_STRESS.reserve(PLY, StressPath.of(new Vector3(1e-301, 0, 0))))
                .isEmpty();
        assertThat(Criterion.MAX_STRESS.reserve(MAT, StressPath.of(new Vector3(1e-307, 0, 0))))
                .isEmpty();
    }

    /** One stress alone fails at its strength, in its mode. */
    @Test
    void singleStressesFailAtTheirStrengths() {
        for (Criterion criterion : Criterion.of(STRENGTH)) {
            boolean hashin = criterion == Criterion.HASHIN;
            alone(criterion, PLY, new Vector3(1, 0, 0), 800e6, hashin ? Mode.FIBRE_TENSION : Mode.TENSION_1);
            alone(criterion, PLY, new Vector3(-1, 0, 0), 450e6, hashin ? Mode.FIBRE_COMPRESSION : Mode.COMPRESSION_1);
            alone(criterion, PLY, new Vector3(0, 1, 0), 30e6, hashin ? Mode.MATRIX_TENSION : Mode.TENSION_2);
            alone(criterion, PLY, new Vector3(0, -1, 0), 110e6, hashin ? Mode.MATRIX_COMPRESSION : Mode.COMPRESSION_2);
            alone(criterion, PLY, new Vector3(0, 0, -1), 50e6, hashin ? Mode.MATRIX_TENSION : Mode.SHEAR_12);
        }
        for (Criterion criterion : Criterion.of(GLASS_MAT)) {
            alone(criterion, MAT, new Vector3(0, 1, 0), 80e6, Mode.MAT_TENSION);
            alone(criterion, MAT, new Vector3(-1, 0, 0), 120e6, Mode.MAT_COMPRESSION);
        }
        alone(Criterion.ISOTROPIC, MAT, new Vector3(0, 0, 1), 62e6, Mode.MAT_SHEAR);
        alone(Criterion.MAX_STRESS, MAT, new Vector3(0, 0, 1), 62e6, Mode.MAT_SHEAR);
    }

    private static void alone(Criterion criterion, Lamina lamina, Vector3 unit, double strength, Mode mode) {
        ReserveFactor reserve = criterion.reserve(lamina, StressPath.of(unit)).orElseThrow();
        assertThat(reserve.value()).as("%s %s", criterion, unit).isCloseTo(strength, within(1e-6 * strength));
        assertThat(reserve.mode()).as("%s %s", criterion, unit).isEqualTo(mode);
    }

    /** With T = C = √3 S the isotropic form is von Mises: σ1² − σ1σ2 + σ2² + 3 τ² = T². */
    @Test
    void theIsotropicFormContainsVonMises() {
        double T = 100e6;
        MatStrength mises = new MatStrength(T, T, T / Math.sqrt(3));
        Vector3 s = new Vector3(30e6, -50e6, 20e6);
        double expected = (30 * 30 + 30 * 50 + 50 * 50 + 3 * 20 * 20) / 1e4;
        assertThat(MatFailure.isotropic(s, mises)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void strainLimitsOfItsOwnReplaceStrengthOverModulus() {
        Lamina limited =
                PLY.withStrength(STRENGTH.withStrainLimits(new StrainLimits(0.01, 0.008, 0.002, 0.009, 0.015)));
        alone(Criterion.MAX_STRAIN, limited, new Vector3(1, 0, 0), 400e6, Mode.TENSION_1);
        alone(Criterion.MAX_STRAIN, limited, new Vector3(0, 0, 1), 0.015 * 3.5e9, Mode.SHEAR_12);
        double along = MaximumStrain.index(new Vector3(0, -1e6, 0), PLY, StrainLimits.linear(STRENGTH, PLY));
        assertThat(along).isCloseTo(1.0 / 110, within(1e-12));
        assertThat(MaximumStress.index(new Vector3(-225e6, 0, 0), STRENGTH)).isCloseTo(0.5, within(1e-12));
        assertThat(TsaiHill.index(new Vector3(400e6, 0, 0), STRENGTH)).isCloseTo(0.25, within(1e-12));
        assertThat(TsaiWu.index(new Vector3(0, 0, 25e6), STRENGTH)).isCloseTo(0.25, within(1e-12));
    }

    /** Faces of 2 mm on 20 mm of foam: τ = Q/d nearly, and the bent faces press σ3 = N κ on the core. */
    @Test
    void aCoreIsShearedAndCrushed() {
        Laminate sandwich =
                Laminate.of(List.of(new Ply(MAT, 0.002, 0), new Ply(CORE, 0.020, 90), new Ply(MAT, 0.002, 0)));
        FailureAnalysis sheared = FailureAnalysis.of(sandwich, LaminateLoad.NONE.withShear(1000, 0));
        PlyReserve first = sheared.firstPly(Criterion.TSAI_WU).orElseThrow();
        assertThat(first.reserve().mode()).isEqualTo(Mode.CORE_SHEAR);
        assertThat(first.ply()).isEqualTo(1);
        assertThat(first.at()).isEqualTo(PlyPoint.At.MIDDLE);
        assertThat(first.z()).isZero();
        assertThat(first.factor())
                .as("turned by 90°, x is its direction 2")
                .isCloseTo(0.9e6 * 0.022 / 1000, within(0.3));
        FailureAnalysis bent = FailureAnalysis.of(
                sandwich, LaminateLoad.NONE.with(Term.MX, 1000).with(Term.KAPPA_Y, 0));
        double curvature = 1000 / sandwich.bending().m11();
        double pressure = 1000 / 0.022 * curvature;
        double crushing = bent.reserve(1, PlyPoint.At.MIDDLE, Criterion.CRUSHING)
                .orElseThrow()
                .value();
        assertThat(crushing).isCloseTo(Math.sqrt(1.4e6 / pressure), within(0.01 * crushing));
        assertThat(CoreFailure.crushing(-0.7e6, FOAM)).isEqualTo(0.5);
        assertThat(CoreFailure.shear(new ShearStress(1.1e6, 0), FOAM)).isEqualTo(1);
    }

    @Test
    void pliesWithoutStrengthAreListedNotJudged() {
        Lamina unknown = Lamina.isotropic(5e9, 0.3);
        Laminate laminate = Laminate.of(List.of(new Ply(unknown, 0.001, 0), new Ply(PLY, 0.001, 0)));
        FailureAnalysis analysis = FailureAnalysis.of(laminate, LaminateLoad.NONE.with(Term.NX, 1000));
        assertThat(analysis.notJudged()).containsExactly(0);
        assertThat(analysis.reserves(Criterion.HASHIN))
                .hasSize(3)
                .extracting(PlyReserve::ply)
                .containsOnly(1);
        assertThat(analysis.reserve(0, PlyPoint.At.MIDDLE, Criterion.HASHIN)).isEmpty();
        assertThat(FailureAnalysis.of(laminate, LaminateLoad.NONE).firstPly(Criterion.HASHIN))
                .isEmpty();
        assertThatThrownBy(() -> analysis.reserve(2, PlyPoint.At.MIDDLE, Criterion.HASHIN))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void whatCannotBeIsRefused() {
        refused(() -> new ReserveFactor(-1, Criterion.HASHIN, Mode.CRUSHING), "-1");
        refused(() -> new ReserveFactor(Double.POSITIVE_INFINITY, Criterion.HASHIN, Mode.CRUSHING), "Infinity");
        refused(() -> new ReserveFactor(Double.NaN, Criterion.HASHIN, Mode.CRUSHING), "NaN");
        refused(() -> new StressState(Vector3.ZERO, ShearStress.ZERO, Double.NaN), "NaN");
        refused(() -> new StressPath(StressState.ZERO, StressState.ZERO, Double.NaN), "NaN");
        refused(() -> new PlyDiscount(0, true), "0.0");
        refused(() -> new PlyDiscount(1, true), "1.0");
        Laminate laminate = Laminate.of(List.of(new Ply(PLY, 0.001, 0)));
        LaminateLoad held = LaminateLoad.NONE.with(Term.NX, 7);
        refused(() -> FailureSurface.trace(laminate, held, Term.NX, Term.NY, Criterion.HASHIN, 8), "NX", "7");
        refused(() -> FailureSurface.trace(laminate, held, Term.NY, Term.NY, Criterion.HASHIN, 8), "NY");
        refused(() -> FailureSurface.trace(laminate, held, Term.NY, Term.MX, Criterion.HASHIN, 0), "0");
        refused(() -> FailureSurface.trace(laminate, held, Term.NY, Term.EPS_Y, Criterion.HASHIN, 8), "NY", "EPS_Y");
    }

    /** An index that no number can hold is refused. */
    @Test
    void noIndexIsBeyondAllNumbers() {
        Vector3 huge = new Vector3(1e300, 1e300, 1e300);
        for (Criterion criterion : Criterion.of(STRENGTH)) {
            boolean linear = criterion == Criterion.MAX_STRESS || criterion == Criterion.MAX_STRAIN;
            if (!linear) {
                refused(() -> criterion.index(PLY, StressState.of(huge)), "failure index", "finite");
            }
        }
        refused(() -> Hashin.matrixTension(huge, STRENGTH), "failure index");
        refused(() -> TsaiWu.index(huge, STRENGTH, 0), "failure index");
        refused(() -> MatFailure.isotropic(huge, GLASS_MAT), "failure index");
        refused(() -> MatFailure.maximumStress(huge, new MatStrength(1e-9, 1e-9, 1e-9)), "failure index", "Infinity");
        refused(() -> MatFailure.maximumStrain(huge, 0.3, new MatStrength(1e-9, 1e-9, 1e-9)), "failure index");
        refused(() -> CoreFailure.shear(new ShearStress(1e300, 0), FOAM), "failure index", "Infinity");
        refused(
                () -> CoreFailure.crushing(-1e300, new CoreStrength(1, 1, 1e-9, OptionalDouble.empty())),
                "failure index",
                "Infinity");
        refused(() -> new FailureStep(Double.NaN, List.of()), "NaN");
    }

    private static void refused(ThrowingCallable call, String... shown) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContainingAll(shown);
    }
}
