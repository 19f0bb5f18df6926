package laminate.plan;

import static laminate.plan.PlanParts.EPOXY;
import static laminate.plan.PlanParts.POLYESTER;
import static laminate.plan.PlanParts.kelvin;
import static laminate.testing.TestMaterials.AMINE;
import static laminate.testing.TestMaterials.MEKP;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import laminate.material.Agent;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Mixing;
import laminate.testing.TestMaterials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How many mixes a pot takes, and what helps where none fit. */
class MixSizingTest {
    private static final double TWENTY = kelvin(20);

    /**
     * 6 kg of polyester at 2 % and 20 °C, 3600 s of work. The film gels in 1200 s, and 70 % less 120 s are left. A pot of m
     * gels in (m/0.1 kg)^−0.1549 of the time, 0.7 at 1 kg.
     *
     * <pre>
     *   n   pot      factor   usable    work
     *   7   0.877 kg 0.7144   480.1 s   514.3 s   too long
     *   8   0.765 kg 0.7297   492.9 s   450.0 s   fits
     * </pre>
     */
    @Test
    void theFewestMixesThatAreUsedUpInTime() {
        StageResin sized = sizing(1).size(pot(POLYESTER, MEKP, 0.02, 6, 3600));

        assertThat(sized.mixes()).hasSize(8);
        Mix mix = sized.mixes().get(7);
        assertThat(mix.number()).isEqualTo(8);
        assertThat(mix.resin()).isCloseTo(0.750, within(1e-12));
        assertThat(mix.catalyst()).isCloseTo(0.015, within(1e-12));
        assertThat(mix.catalystVolume()).isCloseTo(0.015 / 1170, within(1e-15));
        assertThat(mix.resinVolume()).isCloseTo(0.750 / 1110, within(1e-12));
        assertThat(mix.workTime()).isCloseTo(450, within(1e-9));
        assertThat(mix.gelTime()).hasValueCloseTo(0.7297 * 1200, within(0.1));
        assertThat(mix.usableTime()).hasValueCloseTo(492.9, within(0.1));
        assertThat(sized.gelTime()).hasValueCloseTo(1200.0, within(1e-6));
    }

    /** Two hands halve the work: 3 mixes of 2 kg are too late, 4 of 1.5 kg take 450 s of 423 s, 5 of 1.2 kg 360 s of 448 s. */
    @Test
    void moreHandsTakeLargerMixes() {
        assertThat(sizing(2).size(pot(POLYESTER, MEKP, 0.02, 6, 3600)).mixes()).hasSize(5);
    }

    /** Drawn in by vacuum, it takes as long with two as with one. */
    @Test
    void handsDoNotHastenAnInfusion() {
        PotNeed drawn = new PotNeed(POLYESTER, new Dose(MEKP, 0.02), "laminate", 6, 0, 0, Draw.even(3600));

        assertThat(sizing(4).size(drawn).mixes()).hasSize(8);
    }

    /** With no work to speak of, pots of 2 kg with their agent are the largest: 6 kg at 2 % are 6.12 kg, four of them. */
    @Test
    void noPotIsLargerThanTheHeatOfMixesIsKnownFor() {
        StageResin sized = sizing(1).size(pot(POLYESTER, MEKP, 0.02, 6, 1));

        assertThat(sized.mixes()).hasSize(4);
    }

    @Test
    void noPotIsLargerThanTheWorkshopMixes() {
        Mixing small = PlanParts.mixing(0.005, 0.0001, OptionalDouble.empty(), OptionalDouble.of(0.5));

        List<Mix> mixes = new MixSizing(TWENTY, 1, small)
                .size(pot(POLYESTER, MEKP, 0.02, 6, 1))
                .mixes();

        assertThat(mixes).hasSize(12).allSatisfy(mix -> assertThat(mix.resin()).isCloseTo(0.5, within(1e-12)));
    }

    /** 20 g are wanted where 70 g are the least that the scales hold: one mix, and the surplus shown. */
    @Test
    void lessThanTheSmallestMixIsOneSmallestMix() {
        StageResin sized = sizing(1).size(pot(POLYESTER, MEKP, 0.015, 0.020, 60));

        assertThat(sized.mixes()).hasSize(1);
        assertThat(sized.mixed()).isCloseTo(0.070, within(1e-12));
        assertThat(sized.surplus()).isCloseTo(0.050, within(1e-12));
    }

    /** The library states no gel times for this one: pots of 2 kg at most, and no time is told. */
    @Test
    void aResinWithoutGelTimesIsMixedInUsualPotsAndSaysSo() {
        StageResin sized = sizing(1).size(pot(TestMaterials.POLYESTER, MEKP, 0.015, 3, 36000));

        assertThat(sized.mixes()).hasSize(2).allSatisfy(mix -> {
            assertThat(mix.gelTime()).isEmpty();
            assertThat(mix.usableTime()).isEmpty();
        });
        assertThat(sized.gelTime()).isEmpty();
        assertThat(sized.gelTimeSource()).contains("polyester-ortho with mekp").contains("time a cup");
    }

    @Test
    void outsideTheGelTimesNothingIsPlanned() {
        StageResin cold = new MixSizing(kelvin(5), 1, Mixing.USUAL).size(pot(POLYESTER, MEKP, 0.02, 6, 3600));

        assertThat(cold.fits()).isFalse();
        assertThat(cold.mixes()).isEmpty();
        assertThat(cold.problem().orElseThrow()).contains("10 °C to 30 °C");
        assertThat(cold.suggestions()).isEmpty();
        assertThat(cold.surplus()).isZero();
    }

    /** Catalyst read to 5 g holds 3 % only from 3.33 kg on, more than a pot. */
    @Test
    void scalesTooCoarseForAPotAreTold() {
        Mixing coarse = PlanParts.mixing(0.005, 0.005, OptionalDouble.empty(), OptionalDouble.empty());

        StageResin sized = new MixSizing(TWENTY, 1, coarse).size(pot(POLYESTER, MEKP, 0.03, 6, 60));

        assertThat(sized.problem().orElseThrow())
                .isEqualTo(
                        "the smallest mix in which the scales hold the dose of polyester-ortho is 6000 g, the largest mix"
                                + " 2000 g; read the agent finer");
    }

    /** Slow work and a coarse scale: at 3 % and 30 °C the film gels in 400 s, and the smallest mix, 335 g, takes longer. */
    @Test
    void whereNothingFitsALowerDoseOrMoreHandsDo() {
        Mixing coarse = PlanParts.mixing(0.005, 0.0005, OptionalDouble.empty(), OptionalDouble.empty());
        PotNeed pot = pot(POLYESTER, MEKP, 0.03, 6, 3600);

        StageResin sized = new MixSizing(kelvin(30), 1, coarse).size(pot);

        assertThat(sized.fits()).isFalse();
        assertThat(sized.problem().orElseThrow())
                .contains("takes")
                .contains("min to use up")
                .contains("left after mixing");
        assertThat(sized.suggestions()).hasSize(2);
        assertSuggestionsFit(sized, pot, kelvin(30), coarse);
        double dose = sized.suggestions().get(0).dose().orElseThrow();
        assertThat(dose).isLessThan(0.03);
        assertThat(count(pot.with(new Dose(MEKP, dose + 0.001)), kelvin(30), 1, coarse))
                .as("a dose nearer to the planned one does not fit")
                .isZero();
        int hands = sized.suggestions().get(1).crew().orElseThrow();
        assertThat(count(pot, kelvin(30), hands - 1, coarse))
                .as("fewer hands are not enough")
                .isZero();
    }

    /** Scales too coarse for either alone: the fewest hands with which some dose fits. */
    @Test
    void whereNeitherDoseNorHandsAreEnoughBothTogetherAreSuggested() {
        Mixing coarse = PlanParts.mixing(0.05, 0.001, OptionalDouble.empty(), OptionalDouble.empty());
        PotNeed pot = pot(POLYESTER, MEKP, 0.03, 6, 9000);
        double temperature = kelvin(30);

        StageResin sized = new MixSizing(temperature, 1, coarse).size(pot);

        assertThat(sized.suggestions()).hasSize(1);
        int hands = sized.suggestions().get(0).crew().orElseThrow();
        double dose = sized.suggestions().get(0).dose().orElseThrow();
        assertThat(count(pot.with(new Dose(MEKP, dose)), temperature, hands, coarse))
                .isEqualTo(sized.suggestions().get(0).mixes());
        assertThat(count(pot.with(new Dose(MEKP, dose)), temperature, hands - 1, coarse))
                .isZero();
    }

    /**
     * The ratio of a two-part resin is no way to change the speed. Read to 5 g, 250 g is the least that holds 29 to 31 %; one
     * pair of hands takes 900 s to use it up, two 450 s, and 567 s are left.
     */
    @Test
    void anEpoxyIsGivenMoreHandsOnly() {
        Mixing slow = new Mixing(
                Mixing.USUAL.usableShare(),
                0.005,
                0.005,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Figure.stated(300));
        PotNeed pot = pot(EPOXY, AMINE, 0.30, 2, 7200);

        StageResin sized = new MixSizing(kelvin(30), 1, slow).size(pot);

        assertThat(sized.fits()).isFalse();
        assertThat(sized.suggestions()).hasSize(1);
        assertThat(sized.suggestions().get(0).crew()).hasValue(2);
        assertSuggestionsFit(sized, pot, kelvin(30), slow);
    }

    /** A dose outside the points but within the resin's range is refused; the nearest one that they reach is suggested. */
    @Test
    void aDoseThatThePointsDoNotReachIsMovedIntoThem() {
        Resin narrow = PlanParts.withPoints(
                POLYESTER,
                POLYESTER.gelPoints().stream()
                        .filter(point -> point.amount() >= 0.02)
                        .toList());

        StageResin sized = sizing(1).size(pot(narrow, MEKP, 0.015, 6, 3600));

        assertThat(sized.fits()).isFalse();
        assertThat(sized.suggestions().get(0).dose()).hasValueCloseTo(0.02, within(1e-12));
        assertThat(sized.suggestions()).hasSize(1);
    }

    /** The resin takes 1 to 3 %; gel times at 4 % alone help nobody. */
    @Test
    void noDoseOutsideTheResinsRangeIsSuggested() {
        Resin strong = PlanParts.withPoints(
                POLYESTER,
                POLYESTER.gelPoints().stream()
                        .filter(point -> point.amount() >= 0.04)
                        .toList());

        StageResin sized = sizing(1).size(pot(strong, MEKP, 0.03, 6, 3600));

        assertThat(sized.fits()).isFalse();
        assertThat(sized.suggestions()).isEmpty();
    }

    /** The ends of the range count: at 3 % alone gel times are known, and 3 % is suggested; so at 1 %. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.03})
    void theEndsOfTheResinsRangeAreSuggested(double end) {
        Resin one =
                PlanParts.withPoints(POLYESTER, List.of(new Resin.GelPoint("mekp", end, TWENTY, Figure.stated(1200))));

        assertThat(sizing(1)
                        .size(pot(one, MEKP, 0.02, 1, 60))
                        .suggestions()
                        .get(0)
                        .dose())
                .hasValueCloseTo(end, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void theFewestMixesAreThoseOfTryingEachNumber(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 60; i++) {
            PotNeed pot = randomPot(random);
            double temperature = kelvin(10 + 20 * random.nextDouble());
            int crew = 1 + random.nextInt(3);
            PotSizing sizing = new PotSizing(pot, temperature, crew, Mixing.USUAL);

            assertThat(sizing.count()).as("%s at %s K", pot, temperature).isEqualTo(byTrial(sizing, pot));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void warmthTakesNoFewerMixesAndHandsNoMore(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 60; i++) {
            PotNeed pot = randomPot(random);
            double celsius = 10 + 20 * random.nextDouble();
            int here = orMany(count(pot, kelvin(celsius), 1, Mixing.USUAL));
            int warmer = orMany(count(pot, kelvin(Math.min(30, celsius + 3)), 1, Mixing.USUAL));
            int helped = orMany(count(pot, kelvin(celsius), 2, Mixing.USUAL));

            assertThat(warmer).isGreaterThanOrEqualTo(here);
            assertThat(helped).isLessThanOrEqualTo(here);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void unroundedMixesSumToTheNeedAndEachIsUsedUpInTime(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 60; i++) {
            PotNeed pot = randomPot(random);
            StageResin sized = sizing(1 + random.nextInt(3)).size(pot);
            if (!sized.fits()) {
                assertSuggestionsFit(sized, pot, TWENTY, Mixing.USUAL);
                continue;
            }
            double needed = sized.mixes().stream().mapToDouble(Mix::needed).sum();
            assertThat(needed).isCloseTo(pot.need(), within(1e-12 * pot.need()));
            assertThat(sized.surplus()).isGreaterThanOrEqualTo(-1e-12 * pot.need());
            assertThat(sized.agent())
                    .isCloseTo(sized.mixes().get(0).catalyst() * sized.mixes().size(), within(1e-9));
            for (Mix mix : sized.mixes()) {
                assertThat(mix.workTime()).isLessThanOrEqualTo(mix.usableTime().orElseThrow());
                assertThat(mix.catalystVolume() * pot.dose().agent().density())
                        .isCloseTo(mix.catalyst(), within(1e-12));
                assertThat(mix.gelTime().orElseThrow())
                        .isLessThanOrEqualTo(sized.gelTime().orElseThrow() + 1e-9);
            }
        }
    }

    private static void assertSuggestionsFit(StageResin sized, PotNeed pot, double temperature, Mixing mixing) {
        for (Suggestion suggestion : sized.suggestions()) {
            Dose dose = new Dose(
                    pot.dose().agent(), suggestion.dose().orElse(pot.dose().ratio()));
            StageResin again = new MixSizing(temperature, suggestion.crew().orElse(1), mixing).size(pot.with(dose));
            assertThat(again.mixes()).as("%s", suggestion).hasSize(suggestion.mixes());
        }
    }

    private static int byTrial(PotSizing sizing, PotNeed pot) {
        for (int n = 1; n <= Math.max(1, pot.need() / 0.07); n++) {
            Mix mix = sizing.mixes(n).get(0);
            boolean small = mix.resin() + mix.catalyst() <= (pot.resin() == EPOXY ? 1 : 2);
            if (small && mix.workTime() <= mix.usableTime().orElse(Double.MAX_VALUE)) {
                return n;
            }
        }
        return 0;
    }

    private static PotNeed randomPot(Random random) {
        double need = Math.pow(10, -1 + 2.5 * random.nextDouble());
        double time = need * 2000 * random.nextDouble();
        return random.nextInt(3) == 0
                ? pot(EPOXY, AMINE, 0.30, need, time)
                : pot(POLYESTER, MEKP, 0.012 + 0.016 * random.nextDouble(), need, time);
    }

    private static int count(PotNeed pot, double temperature, int crew, Mixing mixing) {
        return new PotSizing(pot, temperature, crew, mixing).count();
    }

    private static int orMany(int count) {
        return count == 0 ? Integer.MAX_VALUE : count;
    }

    private static MixSizing sizing(int crew) {
        return new MixSizing(TWENTY, crew, Mixing.USUAL);
    }

    private static PotNeed pot(Resin resin, Agent agent, double dose, double need, double handTime) {
        return new PotNeed(resin, new Dose(agent, dose), "laminate", need, 0, handTime, Draw.NONE);
    }
}
