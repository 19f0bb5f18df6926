package laminate.theory.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every beam: equilibrium, energy, reciprocity, superposition, mirror and scale. */
class BeamTest {
    private static final double ROUNDING = 1e-10;

    /** Every kind of support with random section, span and load, up to four forces. */
    static Stream<Arguments> beams() {
        return IntStream.range(0, 60).mapToObj(i -> {
            Random random = new Random(7_000 + i);
            double span = 0.2 + 2 * random.nextDouble();
            double EI = 100 + 1000 * random.nextDouble();
            double f = Math.pow(10, -3 + 4 * random.nextDouble()) * span * span;
            Beam beam = new Beam(BeamSection.of(EI, EI / f), span, Supports.values()[i % 3]);
            BeamLoad load = BeamLoad.uniform(i % 2 == 0 ? 0 : 500 * random.nextGaussian());
            for (int n = random.nextInt(4); n >= 0; n--) {
                load = load.plus(BeamLoad.at(100 * random.nextGaussian(), span * random.nextDouble()));
            }
            return Arguments.of(beam, load);
        });
    }

    private static double[] ends(Beam beam, BeamLoad load) {
        return Stream.concat(Stream.of(0.0, beam.span()), load.points().stream().map(PointLoad::position))
                .mapToDouble(x -> x)
                .sorted()
                .toArray();
    }

    /** Boole's rule over each field between forces, exact for the polynomials of beam theory. */
    private static double integral(Beam beam, BeamLoad load, DoubleUnaryOperator f) {
        double[] ends = ends(beam, load);
        double[] weight = {7, 32, 12, 32, 7};
        double sum = 0;
        for (int i = 0; i + 1 < ends.length; i++) {
            double tiny = 1e-9 * (ends[i + 1] - ends[i]);
            double from = ends[i] + tiny;
            double to = ends[i + 1] - tiny;
            for (int k = 0; k < 5; k++) {
                sum += (to - from) * weight[k] / 90 * f.applyAsDouble(from + (to - from) * k / 4);
            }
        }
        return sum;
    }

    /** ½ Σ P w + ½ ∫ q w dx = ½ ∫ (M²/EI + V²/S) dx. */
    @ParameterizedTest
    @MethodSource("beams")
    void workOfTheLoadIsTheStrainEnergy(Beam beam, BeamLoad load) {
        BeamResponse r = beam.under(load);
        double work = load.points().stream()
                        .mapToDouble(
                                p -> p.force() * r.deflectionAt(p.position()).total())
                        .sum()
                + integral(beam, load, x -> load.uniform() * r.deflectionAt(x).total());
        double EI = beam.section().bendingStiffness();
        double S = beam.section().shearStiffness().orElseThrow();
        double energy = integral(beam, load, x -> Math.pow(r.momentAt(x), 2) / EI + Math.pow(r.shearForceAt(x), 2) / S);
        assertThat(work).isCloseTo(energy, within(1e-7 * energy));
    }

    /** M' = V, V' = −q, wb'' = −M/EI, ws' = V/S, by differences within a field. */
    @ParameterizedTest
    @MethodSource("beams")
    void equilibriumAndCurvatureHoldWithinEachField(Beam beam, BeamLoad load) {
        BeamResponse r = beam.under(load);
        double[] ends = ends(beam, load);
        int widest = IntStream.range(1, ends.length)
                .boxed()
                .max(Comparator.comparingDouble(i -> ends[i] - ends[i - 1]))
                .orElseThrow();
        double x = 0.6 * ends[widest] + 0.4 * ends[widest - 1];
        double h = 1e-3 * beam.span();
        double size = Math.abs(r.largestMoment().value())
                + Math.abs(r.largestShearForce().value()) * beam.span();
        assertThat((r.momentAt(x + h) - r.momentAt(x - h)) / (2 * h))
                .isCloseTo(r.shearForceAt(x), within(ROUNDING * size / h));
        assertThat((r.shearForceAt(x - h) - r.shearForceAt(x + h)) / (2 * h))
                .isCloseTo(load.uniform(), within(ROUNDING * size / (h * beam.span())));
        double bent = r.deflectionAt(x + h).bending()
                - 2 * r.deflectionAt(x).bending()
                + r.deflectionAt(x - h).bending();
        double EI = beam.section().bendingStiffness();
        assertThat(bent / (h * h))
                .isCloseTo((load.uniform() * h * h / 12 - r.momentAt(x)) / EI, within(1e-6 * size / EI));
        double sheared = r.deflectionAt(x + h).shear() - r.deflectionAt(x - h).shear();
        assertThat(sheared / (2 * h) * beam.section().shearStiffness().orElseThrow())
                .isCloseTo(r.shearForceAt(x), within(ROUNDING * size / h));
    }

    @ParameterizedTest
    @MethodSource("beams")
    void supportsHold(Beam beam, BeamLoad load) {
        BeamResponse r = beam.under(load);
        double L = beam.span();
        double small = ROUNDING * Math.abs(r.largestDeflection().total());
        double smallMoment = ROUNDING * Math.abs(r.largestMoment().value());
        double h = 1e-6 * L;
        assertThat(r.deflectionAt(0).total()).isZero();
        assertThat(r.startReaction() + r.endReaction())
                .isCloseTo(
                        load.integral(0, L),
                        within(ROUNDING * Math.abs(r.largestShearForce().value())));
        switch (beam.supports()) {
            case SIMPLY_SUPPORTED -> {
                assertThat(r.deflectionAt(L).total()).isCloseTo(0, within(small));
                assertThat(r.momentAt(0)).isZero();
                assertThat(r.momentAt(L)).isCloseTo(0, within(smallMoment));
            }
            case CANTILEVER -> {
                assertThat(r.momentAt(L)).isCloseTo(0, within(smallMoment));
                assertThat(r.deflectionAt(h).bending() / h).isCloseTo(0, within(1e-5 * steep(r)));
            }
            case CLAMPED -> {
                assertThat(r.deflectionAt(L).total()).isCloseTo(0, within(small));
                assertThat(r.deflectionAt(h).bending() / h).isCloseTo(0, within(1e-5 * steep(r)));
                double atEnd =
                        r.deflectionAt(L).bending() - r.deflectionAt(L - h).bending();
                assertThat(atEnd / h).isCloseTo(0, within(1e-5 * steep(r)));
            }
        }
    }

    /** A size of slope to judge by: that of a bar bent all along by the largest moment. */
    private static double steep(BeamResponse r) {
        return Math.abs(r.largestMoment().value())
                * r.beam().span()
                / r.beam().section().bendingStiffness();
    }

    /** Maxwell and Betti: the deflection at b under a force at a is that at a under the force at b. */
    @ParameterizedTest
    @EnumSource(Supports.class)
    void deflectionsAreReciprocal(Supports supports) {
        Beam beam = new Beam(BeamSection.of(300, 4000), 1.3, supports);
        double one = beam.under(BeamLoad.at(100, 0.31)).deflectionAt(0.92).total();
        double other = beam.under(BeamLoad.at(100, 0.92)).deflectionAt(0.31).total();
        assertThat(one).isCloseTo(other, within(ROUNDING * one));
    }

    @ParameterizedTest
    @MethodSource("beams")
    void loadsAddUp(Beam beam, BeamLoad load) {
        BeamLoad second = BeamLoad.fourPoint(70, beam.span(), 0.3 * beam.span());
        BeamResponse both = beam.under(load.times(3).plus(second));
        BeamResponse first = beam.under(load);
        BeamResponse other = beam.under(second);
        for (double share : new double[] {0.1, 0.5, 0.77, 1}) {
            double x = share * beam.span();
            Deflection w = first.deflectionAt(x);
            Deflection v = other.deflectionAt(x);
            double size = Math.abs(3 * first.largestDeflection().total())
                    + Math.abs(other.largestDeflection().total());
            assertThat(both.deflectionAt(x).bending())
                    .isCloseTo(3 * w.bending() + v.bending(), within(ROUNDING * size));
            assertThat(both.deflectionAt(x).shear()).isCloseTo(3 * w.shear() + v.shear(), within(ROUNDING * size));
            double moments = Math.abs(3 * first.largestMoment().value())
                    + Math.abs(other.largestMoment().value());
            assertThat(both.momentAt(x))
                    .isCloseTo(3 * first.momentAt(x) + other.momentAt(x), within(ROUNDING * moments));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Supports.class,
            names = {"SIMPLY_SUPPORTED", "CLAMPED"})
    void theMirroredLoadGivesTheMirroredAnswer(Supports supports) {
        Beam beam = new Beam(BeamSection.of(300, 4000), 2, supports);
        BeamResponse r = beam.under(BeamLoad.at(100, 0.5).plus(BeamLoad.uniform(40)));
        BeamResponse mirrored = beam.under(BeamLoad.at(100, 1.5).plus(BeamLoad.uniform(40)));
        assertThat(mirrored.deflectionAt(0.4).total())
                .isCloseTo(r.deflectionAt(1.6).total(), within(1e-14));
        assertThat(mirrored.momentAt(0.4)).isCloseTo(r.momentAt(1.6), within(1e-11));
        assertThat(mirrored.shearForceAt(0.4)).isCloseTo(-r.shearForceAt(1.6), within(1e-11));
        assertThat(mirrored.startReaction()).isCloseTo(r.endReaction(), within(1e-11));
    }

    /** Twice the span under the same force: bending grows eightfold, shear twofold. */
    @ParameterizedTest
    @EnumSource(Supports.class)
    void bendingGrowsWithTheCubeOfTheSpanAndShearWithTheSpan(Supports supports) {
        BeamSection section = BeamSection.of(300, 4000);
        Deflection once =
                new Beam(section, 1, supports).under(BeamLoad.threePoint(10, 1)).deflectionAt(0.5);
        Deflection twice =
                new Beam(section, 2, supports).under(BeamLoad.threePoint(10, 2)).deflectionAt(1);
        assertThat(twice.bending()).isCloseTo(8 * once.bending(), within(1e-12));
        assertThat(twice.shear()).isCloseTo(2 * once.shear(), within(1e-12));
    }

    /**
     * A uniform load held back by two forces that nearly balance it, so that the deflection has a trough on either side
     * of a hump within the field between them: w' has three roots there.
     */
    static Stream<Arguments> troughs() {
        return IntStream.range(0, 30).mapToObj(i -> {
            Random random = new Random(9_000 + i);
            BeamSection section = BeamSection.of(400, Math.pow(10, 5 + 6 * random.nextDouble()));
            Beam beam = new Beam(section, 1, i % 3 == 0 ? Supports.CLAMPED : Supports.SIMPLY_SUPPORTED);
            double force = -1000 * (0.45 + 0.05 * random.nextDouble());
            BeamLoad load = BeamLoad.uniform(1000)
                    .plus(BeamLoad.at(force, 0.24 + 0.02 * random.nextDouble()))
                    .plus(BeamLoad.at(force, 0.75));
            return Arguments.of(beam, load);
        });
    }

    /** No place on a fine grid has more than the peak found. */
    @ParameterizedTest
    @MethodSource({"beams", "troughs"})
    void noPlaceExceedsThePeak(Beam beam, BeamLoad load) {
        BeamResponse r = beam.under(load);
        double w = Math.abs(r.largestDeflection().total()) * (1 + 1e-9);
        double M = Math.abs(r.largestMoment().value()) * (1 + 1e-9);
        double V = Math.abs(r.largestShearForce().value()) * (1 + 1e-9);
        assertThat(IntStream.rangeClosed(0, 2000).mapToDouble(i -> beam.span() * i / 2000))
                .allSatisfy(x -> {
                    assertThat(Math.abs(r.deflectionAt(x).total())).isLessThanOrEqualTo(w);
                    assertThat(Math.abs(r.momentAt(x))).isLessThanOrEqualTo(M);
                    assertThat(Math.abs(r.shearForceAt(x))).isLessThanOrEqualTo(V);
                });
        assertThat(r.largestDeflection())
                .isEqualTo(r.deflectionAt(r.largestDeflection().x()));
    }

    /** As shear stiffens, Timoshenko becomes Euler and Bernoulli. */
    @ParameterizedTest
    @EnumSource(Supports.class)
    void stiffInShearIsRigidInShear(Supports supports) {
        BeamLoad load = BeamLoad.at(10, 0.3).plus(BeamLoad.uniform(5));
        double rigid = new Beam(BeamSection.rigidInShear(300), 1, supports)
                .under(load)
                .deflectionAt(0.6)
                .total();
        double stiff = new Beam(BeamSection.of(300, 3e12), 1, supports)
                .under(load)
                .deflectionAt(0.6)
                .total();
        assertThat(stiff).isCloseTo(rigid, within(1e-8 * rigid));
    }

    @Test
    void shearForceJumpsAtAForce() {
        Beam beam = new Beam(BeamSection.rigidInShear(1), 1, Supports.SIMPLY_SUPPORTED);
        BeamResponse r = beam.under(BeamLoad.threePoint(10, 1));
        assertThat(r.shearForceAt(0.5)).isEqualTo(-5);
        assertThat(r.shearForceAt(Math.nextDown(0.5))).isEqualTo(5);
        assertThat(r.shearForceAt(1)).isEqualTo(-5);
        BeamResponse tip = new Beam(BeamSection.rigidInShear(1), 1, Supports.CANTILEVER).under(BeamLoad.at(10, 1));
        assertThat(tip.shearForceAt(1)).isEqualTo(10);
        assertThat(tip.endReaction()).isZero();
    }

    @Test
    void noLoadGivesZero() {
        BeamResponse r = new Beam(BeamSection.of(1, 1), 1, Supports.CLAMPED).under(BeamLoad.uniform(0));
        assertThat(r.largestDeflection().total()).isZero();
        assertThat(r.largestMoment().value()).isZero();
        assertThat(r.largestShearForce().value()).isZero();
    }
}
