package laminate.plan;

import static laminate.testing.TestMaterials.AMINE;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.cure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Mixing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounding of resin and agent to what scales read, so that the dose holds. */
class ScalesTest {
    private static final double TINY = 1e-12;

    /** 5 g and 0.1 g: resin up, agent to the reading nearest to the dose of the rounded resin. */
    @ParameterizedTest
    @CsvSource({
        "0.7512, 1.5 , 0.755, 0.0113",
        "0.7450, 1.5 , 0.745, 0.0112",
        "0.7500, 2   , 0.750, 0.0150",
        "0.0750, 3   , 0.075, 0.0022",
        "0.0750, 1   , 0.200, 0.0020",
    })
    void weighsToTheStepsOfTheScales(double needed, double percent, double resin, double agent) {
        Weighed mix = scales(percent, Mixing.USUAL).cover(needed);

        assertThat(mix.resin()).isCloseTo(resin, within(TINY));
        assertThat(mix.agent()).isCloseTo(agent, within(TINY));
        assertThat(mix.strokes()).isEmpty();
    }

    /**
     * At 1.5 % the dose may move by 5 % either way, 0.15 % of the resin in all; 0.1 g is that of 67 g, read as 70 g. At 1 %,
     * the least that the resin takes, only upwards: 0.05 %, so 200 g; epoxy at 29 to 31 %: 2 %, so 5 g.
     */
    @Test
    void theSmallestMixIsWhereOneStepOfTheScaleIsWithinTheRoomOfTheDose() {
        assertThat(scales(1.5, Mixing.USUAL).smallest()).hasValueCloseTo(0.070, within(TINY));
        assertThat(scales(1, Mixing.USUAL).smallest()).hasValueCloseTo(0.200, within(TINY));
        assertThat(new Scales(Mixing.USUAL, EPOXY, new Dose(AMINE, 0.30)).smallest())
                .hasValueCloseTo(0.005, within(TINY));
        assertThat(scales(1.5, Mixing.USUAL).cover(0.020).resin()).isCloseTo(0.070, within(TINY));
    }

    /** A stroke of 10 ml of peroxide of 1170 kg/m³ is 11.7 g, the dose of 780 g at 1.5 %. */
    @ParameterizedTest
    @CsvSource({"0.500, 0.780, 1", "0.780, 0.780, 1", "0.781, 1.560, 2", "1.600, 2.340, 3"})
    void aDispenserGivesWholeStrokesAndTheResinFollows(double needed, double resin, int strokes) {
        Scales scales = scales(1.5, PlanParts.mixing(0.005, 0.0001, OptionalDouble.of(10e-6), OptionalDouble.empty()));

        Weighed mix = scales.cover(needed);

        assertThat(mix.strokes()).isEqualTo(OptionalInt.of(strokes));
        assertThat(mix.resin()).isCloseTo(resin, within(TINY));
        assertThat(mix.agent()).isCloseTo(strokes * 0.0117, within(TINY));
        assertThat(scales.smallest()).hasValueCloseTo(0.780, within(TINY));
    }

    @Test
    void aResinThatTakesOneDoseExactlyHasNoSmallestMix() {
        Resin exact = new Resin(
                "exact",
                "exact",
                Resin.Family.EPOXY,
                Resin.Use.LAMINATING,
                false,
                EPOXY.figures(),
                List.of(cure(AMINE, 0.3, 0.3, 0.3)),
                List.of());

        assertThat(new Scales(Mixing.USUAL, exact, new Dose(AMINE, 0.3)).smallest())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyMixCoversItsNeedAtADoseThatHolds(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double ratio = 0.01 + 0.02 * random.nextDouble();
            double resinStep = Math.pow(10, -4 + 3 * random.nextDouble());
            double agentStep = Math.pow(10, -5 + 2 * random.nextDouble());
            OptionalDouble stroke = random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(agentStep / 1170);
            Scales scales = new Scales(
                    PlanParts.mixing(resinStep, agentStep, stroke, OptionalDouble.empty()),
                    POLYESTER,
                    new Dose(MEKP, ratio));
            double needed = 0.01 + 3 * random.nextDouble();

            Weighed mix = scales.cover(needed);

            assertThat(mix.resin()).isGreaterThanOrEqualTo(needed * (1 - TINY));
            assertThat(mix.resin()).isGreaterThanOrEqualTo(scales.smallest().orElseThrow() * (1 - TINY));
            assertThat(mix.resin() / resinStep).isCloseTo(Math.rint(mix.resin() / resinStep), within(1e-6));
            assertThat(mix.agent() / agentStep).isCloseTo(Math.rint(mix.agent() / agentStep), within(1e-6));
            double dose = mix.agent() / mix.resin();
            assertThat(dose).isBetween(0.01 * (1 - 1e-6), 0.03 * (1 + 1e-6));
            assertThat(dose / ratio).isBetween(1 - Scales.TOLERANCE - 1e-6, 1 + Scales.TOLERANCE + 1e-6);
            assertThat(scales.cover(needed * 1.1).resin()).isGreaterThanOrEqualTo(mix.resin());
            assertThat(scales.cover(needed * 1.1).agent()).isGreaterThanOrEqualTo(mix.agent());
        }
    }

    /** What a mix leaves over is less than a step of the scale, where it is not the smallest. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0701, 0.5, 0.9999, 1.5003})
    void noMoreResinIsWeighedThanOneStep(double needed) {
        Weighed mix = scales(2, Mixing.USUAL).cover(needed);

        assertThat(mix.resin() - needed).isBetween(0.0, Mixing.USUAL.resinStep());
    }

    private static Scales scales(double percent, Mixing mixing) {
        return new Scales(mixing, POLYESTER, new Dose(MEKP, percent / 100));
    }
}
