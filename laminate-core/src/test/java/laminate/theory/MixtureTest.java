package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.theory.Mixture.Part;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conservation of mass and volume, whichever of fibre mass, fibre volume and thickness is given. */
class MixtureTest {
    private static final double EXACT = 1e-12;

    static Stream<Arguments> layers() {
        Random random = new Random(20260116);
        return IntStream.range(0, 200)
                .mapToObj(i -> Arguments.of(
                        0.03 + 2 * random.nextDouble(),
                        0.1 + 0.7 * random.nextDouble(),
                        1400 + 1300 * random.nextDouble(),
                        1050 + 250 * random.nextDouble(),
                        i % 4 == 0 ? 0 : 0.1 * random.nextDouble()));
    }

    @ParameterizedTest
    @MethodSource("layers")
    void massAndVolumeAreKept(double w, double psi, double rhoF, double rhoR, double Vv) {
        double t = Mixture.thickness(w, psi, rhoF, rhoR, Vv);
        double Vf = Mixture.fibreVolumeFraction(psi, rhoF, rhoR, Vv);
        double resin = Mixture.resinMass(w, psi);
        assertThat(w / rhoF + resin / rhoR + Vv * t).isCloseTo(t, within(EXACT * t));
        assertThat(Mixture.density(psi, rhoF, rhoR, Vv) * t).isCloseTo(w + resin, within(EXACT * w / psi));
        assertThat(Mixture.thickness(w, Vf, rhoF)).isCloseTo(t, within(EXACT * t));
        assertThat(Vf * rhoF * t).isCloseTo(w, within(EXACT * w));
        assertThat((1 - Vf - Vv) * rhoR * t).isCloseTo(resin, within(EXACT * w / psi));
    }

    @ParameterizedTest
    @MethodSource("layers")
    void everyRoadLeadsBack(double w, double psi, double rhoF, double rhoR, double Vv) {
        double t = Mixture.thickness(w, psi, rhoF, rhoR, Vv);
        double Vf = Mixture.fibreVolumeFraction(psi, rhoF, rhoR, Vv);
        assertThat(Mixture.fibreMassFraction(Vf, rhoF, rhoR, Vv)).isCloseTo(psi, within(EXACT));
        assertThat(Mixture.fibreVolumeFractionOfThickness(w, rhoF, t)).isCloseTo(Vf, within(EXACT));
        assertThat(Mixture.voidFraction(Mixture.density(psi, rhoF, rhoR, Vv), psi, rhoF, rhoR))
                .isCloseTo(Vv, within(EXACT));
        assertThat(Mixture.fibreMassFractionOfRatio(Mixture.resinMass(w, psi) / w))
                .isCloseTo(psi, within(EXACT));
    }

    @Test
    void voidsThickenAtGivenMassAndDisplaceResinAtGivenVolume() {
        assertThat(Mixture.thickness(1, 0.5, 2560, 1200, 0.05))
                .isCloseTo(Mixture.thickness(1, 0.5, 2560, 1200, 0) / 0.95, within(1e-15));
        assertThat(Mixture.fibreMassFraction(0.5, 2560, 1200, 0.05))
                .isGreaterThan(Mixture.fibreMassFraction(0.5, 2560, 1200, 0));
        assertThat(Mixture.fibreMassFraction(0.95, 2560, 1200, 0.05)).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("layers")
    void combinedLayersWeighWhatTheyWeighTogether(double w, double psi, double rhoF, double rhoR, double Vv) {
        double other = 0.9 * psi;
        double psiBoth = Mixture.combinedFibreMassFraction(List.of(new Part(w, psi), new Part(0.3, other)));
        double resin = Mixture.resinMass(w, psi) + Mixture.resinMass(0.3, other);
        assertThat(Mixture.resinMass(w + 0.3, psiBoth)).isCloseTo(resin, within(EXACT * (w + 0.3) / other));
        double hybrid = Mixture.hybridDensity(List.of(new Part(w, rhoF), new Part(0.3, 1440)));
        assertThat((w + 0.3) / hybrid).isCloseTo(w / rhoF + 0.3 / 1440, within(1e-15));
    }

    @Test
    void aMeasuredDensityAboveTheoryShowsAsNegativeVoids() {
        assertThat(Mixture.voidFraction(1600, 0.45, 2560, 1200)).isNegative();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.01, Double.NaN})
    void impossibleFractionsAreRefused(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> Mixture.thickness(1, bad, 2560, 1200, 0), shown);
        refused(() -> Mixture.thickness(1, 0.5, 2560, 1200, bad), shown);
        refused(() -> Mixture.thickness(1, bad, 2560), shown);
        refused(() -> Mixture.fibreMassFraction(bad, 2560, 1200, 0), shown);
        refused(() -> Mixture.resinMass(1, bad), shown);
        refused(() -> Mixture.combinedFibreMassFraction(List.of(new Part(1, bad))), shown);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2, Double.NaN, Double.POSITIVE_INFINITY})
    void impossibleMassesDensitiesAndThicknessesAreRefused(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> Mixture.thickness(bad, 0.5, 2560, 1200, 0), shown);
        refused(() -> Mixture.density(0.5, bad, 1200, 0), shown);
        refused(() -> Mixture.density(0.5, 2560, bad, 0), shown);
        refused(() -> Mixture.voidFraction(bad, 0.5, 2560, 1200), shown);
        refused(() -> Mixture.fibreVolumeFractionOfThickness(1, 2560, bad), shown);
        refused(() -> Mixture.fibreMassFractionOfRatio(bad), shown);
        refused(() -> new Part(bad, 1), shown);
        refused(() -> new Part(1, bad), shown);
    }

    @Test
    void whatDoesNotFitIsRefused() {
        refused(() -> Mixture.fibreVolumeFractionOfThickness(2.56, 2560, 0.0009), "9.0E-4");
        refused(() -> Mixture.fibreMassFraction(0.9, 2560, 1200, 0.2), "0.2");
        refused(() -> Mixture.hybridDensity(List.of()), "mass of all parts");
        refused(() -> Mixture.combinedFibreMassFraction(List.of(new Part(0, 0.5))), "0.0");
    }

    private static void refused(ThrowingCallable call, String shown) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(shown);
    }
}
