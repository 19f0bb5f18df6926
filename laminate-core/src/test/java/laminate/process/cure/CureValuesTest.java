package laminate.process.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Range;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The limits of what is known of cure: the edges hold, and nothing is told beyond them. */
class CureValuesTest {

    /** 1 kg of polyester in 60 to 80 % of the time, 500 g of epoxy in 50 to 70 %, from memory. */
    @ParameterizedTest
    @CsvSource({"POLYESTER, 1, 0.7, 0.6, 0.8", "VINYLESTER, 1, 0.7, 0.6, 0.8", "EPOXY, 0.5, 0.6, 0.5, 0.7"})
    void aPotGelsSoonerByTheShareThatIsKnown(
            Resin.Family family, double mass, double planned, double least, double most) {
        Range factor = MassEffect.of(family).orElseThrow().factor(mass);
        assertThat(factor.planned()).isCloseTo(planned, within(1e-12));
        assertThat(factor.least()).isCloseTo(least, within(1e-12));
        assertThat(factor.most()).isCloseTo(most, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(names = "POLYURETHANE", mode = EnumSource.Mode.EXCLUDE)
    void aCupAndLessTakesTheWholeTimeAndMoreTakesLess(Resin.Family family) {
        MassEffect effect = MassEffect.of(family).orElseThrow();
        assertThat(effect.factor(0.001)).isEqualTo(Range.exactly(1));
        assertThat(effect.factor(MassEffect.CUP)).isEqualTo(Range.exactly(1));
        Range before = Range.exactly(1);
        for (int i = 11; i <= Math.round(effect.largestMass() * 100); i++) {
            Range now = effect.factor(i / 100.0);
            assertThat(now.planned()).isBetween(now.least(), now.most()).isLessThan(before.planned());
            assertThat(now.least()).isLessThan(before.least()).isPositive();
            assertThat(now.most()).isLessThan(before.most());
            before = now;
        }
    }

    /** The law is a power: ten times the mass takes the same share again, wherever it stands. */
    @Test
    void theEffectIsAPowerOfTheMass() {
        double doubled = MassEffect.STYRENIC.factor(0.2).planned();
        assertThat(MassEffect.STYRENIC.factor(0.4).planned()).isCloseTo(doubled * doubled, within(1e-12));
        assertThat(MassEffect.STYRENIC.factor(2).planned()).isCloseTo(0.7 * doubled, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"POLYESTER, 2", "VINYLESTER, 2", "EPOXY, 1"})
    void noMixIsLargerThanTheTradeMakes(Resin.Family family, double largest) {
        MassEffect effect = MassEffect.of(family).orElseThrow();
        assertThat(effect.factor(largest * (1 + 1e-12)).planned()).isPositive();
        assertThatThrownBy(() -> effect.factor(largest * 1.001))
                .hasMessageContaining("up to " + largest + " kg")
                .hasMessageContaining(String.valueOf(largest * 1.001));
    }

    @Test
    void nothingIsKnownOfPolyurethane() {
        assertThat(MassEffect.of(Resin.Family.POLYURETHANE)).isEmpty();
    }

    /** A thin stage loses nearly all of its heat, a thick one hardly any: the rise stays below its ceiling. */
    @Test
    void aThickerStageGetsWarmer() {
        double before = 0;
        for (double thickness : new double[] {1e-5, 0.001, 0.003, 0.006, 0.012, 0.05, 1}) {
            Exotherm exotherm = Exotherm.of(WetStage.onMould(thickness, 1450, 0.3));
            assertThat(exotherm.lumpedRise()).isBetween(before, exotherm.adiabaticRise());
            before = exotherm.lumpedRise();
        }
        assertThat(Exotherm.of(WetStage.onMould(1e-5, 1450, 0.3)).lumpedRise()).isLessThan(1);
        assertThat(before)
                .isGreaterThan(
                        0.99 * Exotherm.of(WetStage.onMould(1, 1450, 0.3)).adiabaticRise());
    }

    /** Bi = hc h/(2 λ) with two faces: 10 mm at 8 W/(m²·K) and 0.25 W/(m·K) is 0.16, on a mould twice that. */
    @Test
    void onAMouldTheBiotNumberIsTwiceThatOfAFreeSheet() {
        WetStage onMould = WetStage.onMould(0.010, 1600, 0.5);
        WetStage free = new WetStage(0.010, 1600, 0.5, 350e3, 1900, 800, 0.25, 2, 8, 900);
        assertThat(Exotherm.of(free).biot()).isCloseTo(0.16, within(1e-12));
        assertThat(Exotherm.of(onMould).biot()).isCloseTo(0.32, within(1e-12));
        assertThat(Exotherm.of(free).isEven()).isTrue();
        assertThat(Exotherm.of(onMould).isEven()).isFalse();
        // The worked layer of 10 mm, two faces: 95 K of 130.
        assertThat(Exotherm.of(free).lumpedRise()).isCloseTo(94.6, within(0.05));
        assertThat(Exotherm.of(onMould).lumpedRise()).isGreaterThan(94.6);
    }

    /** Twice the thickness is four times the number; at the critical half thickness the number is the critical one. */
    @Test
    void thickSlabsRunAway() {
        double thin = FrankKamenetskii.number(1000, 55e3, 0.01, 0.25, 293.15);
        assertThat(FrankKamenetskii.number(1000, 55e3, 0.02, 0.25, 293.15)).isCloseTo(4 * thin, within(1e-12));
        // q E L²/(λ R T0²) = 1000 · 55000 · 1e-4/(0.25 · 8.314463 · 85936.92)
        assertThat(thin).isCloseTo(5500 / 178629.6, within(1e-6));
        double critical = FrankKamenetskii.criticalHalfThickness(1000, 55e3, 0.25, 293.15);
        assertThat(FrankKamenetskii.number(1000, 55e3, critical, 0.25, 293.15))
                .isCloseTo(FrankKamenetskii.CRITICAL_SLAB, within(1e-12));
    }

    /** The molar mass: 104.15 g of styrene in 24.45 l at 25 °C is 4.26 mg/m³ a ppm. */
    @Test
    void partsPerMillionAreWeighedAtRoomTemperature() {
        assertThat(Styrene.PPM).isCloseTo(HeatOfCure.STYRENE_MOLAR_MASS / 0.02445 * 1e-6, within(0.005e-6));
        assertThat(Styrene.ofPartsPerMillion(50)).isCloseTo(213e-6, within(1e-12));
        assertThat(Styrene.partsPerMillion(86e-6)).isCloseTo(20.2, within(0.05));
        assertThat(Styrene.USUAL_LIMIT.value()).isCloseTo(426e-6, within(1e-12));
        assertThat(Styrene.freshAir(0, 3600, 426e-6)).isZero();
    }

    static Stream<ThrowingCallable> nonsense() {
        return Stream.of(
                () -> Arrhenius.time(0, 55e3, 293, 298),
                () -> Arrhenius.time(60, 55e3, 0, 298),
                () -> Arrhenius.time(60, 55e3, 293, -1),
                () -> Arrhenius.time(60, -1, 293, 298),
                () -> Arrhenius.time(60, 1e9, 293, 0.001),
                () -> Arrhenius.activationEnergy(60, 293, 30, 293),
                () -> Arrhenius.activationEnergy(60, 293, 0, 303),
                () -> HeatOfCure.unsaturated(1.1, 0.36),
                () -> HeatOfCure.unsaturated(-0.1, 0.36),
                () -> HeatOfCure.unsaturated(0.4, 0),
                () -> Exotherm.adiabaticRise(1.5, 350e3, 1900, 800),
                () -> Exotherm.adiabaticRise(Double.NaN, 350e3, 1900, 800),
                () -> Exotherm.coolingTime(1600, 1350, 0.01, 3, 8),
                () -> Exotherm.coolingTime(1600, 1350, 0.01, 0, 8),
                () -> Exotherm.lumpedRise(-1, 900, 900),
                () -> Exotherm.lumpedRise(100, 0, 900),
                () -> new Exotherm(10, 11, 0.1),
                () -> new Exotherm(Double.NaN, 1, 0.1),
                () -> WetStage.onMould(0, 1450, 0.3),
                () -> WetStage.onMould(0.003, 1450, 1.01),
                () -> FrankKamenetskii.number(0, 55e3, 0.01, 0.25, 293),
                () -> Styrene.freshAir(0.1, 0, 426e-6),
                () -> Styrene.freshAir(0.1, 3600, 0),
                () -> Styrene.freshAir(-0.1, 3600, 426e-6),
                () -> Styrene.ofPartsPerMillion(-1),
                () -> Viscosity.withStyrene(0.39),
                () -> Viscosity.withStyrene(0.61),
                () -> Viscosity.withStyrene(Double.NaN),
                () -> Viscosity.riseTime(0),
                () -> Viscosity.atTemperature(0, 40e3, 293, 298),
                () -> new GelTime(0, Status.USER, "cup"),
                () -> new GelTime(Double.POSITIVE_INFINITY, Status.USER, "cup"),
                () -> new GelTime(60, Status.USER, " "),
                () -> new Span(2, 1),
                () -> new Span(Double.NaN, 1),
                () -> new MassEffect(0.1, new Range(0.7, 0.6, 0.8), 2, "rule", Status.USER),
                () -> new MassEffect(1, new Range(0.7, 0.6, 1.1), 2, "rule", Status.USER),
                () -> new MassEffect(1, new Range(0.7, 0, 0.8), 2, "rule", Status.USER),
                () -> new MassEffect(1, new Range(0.7, 0.6, 0.8), 0.9, "rule", Status.USER),
                () -> new MassEffect(1, new Range(0.7, 0.6, 0.8), 2, "", Status.USER),
                () -> MassEffect.EPOXY.factor(0),
                () -> MassEffect.EPOXY.factor(Double.NaN));
    }

    @ParameterizedTest
    @MethodSource("nonsense")
    void refusesNonsense(ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class);
    }
}
