package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import laminate.theory.Equivalence.PlyThickness;
import laminate.theory.Equivalence.Stiffness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may replace a laminate. */
class EquivalenceTest {
    private static final Lamina MAT = Lamina.isotropic(7e9, 0.33);
    private static final Lamina CLOTH = Lamina.of(16e9, 14e9, 3e9, 0.14);
    private static final Lamina FOAM = Lamina.isotropic(80e6, 0.33);

    private static Laminate solid(double thickness) {
        return Laminate.of(List.of(new Ply(MAT, thickness, 0)));
    }

    private static Laminate sandwich(double face, double core) {
        return Laminate.of(List.of(new Ply(MAT, face, 0), new Ply(FOAM, core, 0), new Ply(MAT, face, 0)));
    }

    private static Laminate thickened(Laminate laminate, double factor) {
        return Laminate.of(laminate.plies().stream()
                .map(p -> new Ply(p.lamina(), factor * p.thickness(), p.angleDegrees()))
                .toList());
    }

    static Stream<Laminate> laminates() {
        return RandomLaminates.take(12);
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void itselfIsItsEqual(Laminate laminate) {
        Equivalence same = new Equivalence(laminate, laminate);
        assertThat(same.bending()).isEqualTo(new StiffnessRatios(1, 1, 1));
        assertThat(same.membrane()).isEqualTo(new StiffnessRatios(1, 1, 1));
    }

    /** Twice as thick: eight times as stiff in bending, twice in stretching; unsymmetric laminates too. */
    @ParameterizedTest
    @MethodSource("laminates")
    void thicknessCountsByItsCubeInBending(Laminate laminate) {
        Equivalence twice = new Equivalence(laminate, thickened(laminate, 2));
        for (double ratio : List.of(
                twice.bending().x(), twice.bending().y(), twice.bending().xy())) {
            assertThat(ratio).isCloseTo(8, within(1e-6));
        }
        for (double ratio : List.of(
                twice.membrane().x(), twice.membrane().y(), twice.membrane().xy())) {
            assertThat(ratio).isCloseTo(2, within(1e-6));
        }
    }

    @ParameterizedTest
    @EnumSource(Stiffness.class)
    void theThicknessFactorMakesItEqual(Stiffness what) {
        Laminate reference = solid(0.006);
        Laminate candidate = Laminate.of(List.of(new Ply(CLOTH, 0.001, 20), new Ply(MAT, 0.002, 0)));
        double factor = new Equivalence(reference, candidate).thicknessFactor(what);
        double ratio = new Equivalence(reference, thickened(candidate, factor)).ratio(what);
        assertThat(ratio).isCloseTo(1, within(1e-10));
    }

    /** 1/d11 of an isotropic plate is E h³/12, 1/d66 is G h³/12; 1/a11 is E h, 1/a66 G h (textbook). */
    @Test
    void theStiffnessesAreThoseOfTheTextbook() {
        double h3 = Math.pow(0.006, 3) / 12;
        double G = 7e9 / 2.66;
        assertThat(Stiffness.BENDING_X.of(solid(0.006))).isCloseTo(7e9 * h3, within(1e-9));
        assertThat(Stiffness.BENDING_Y.of(solid(0.006))).isCloseTo(7e9 * h3, within(1e-9));
        assertThat(Stiffness.TWIST.of(solid(0.006))).isCloseTo(G * h3, within(1e-9));
        assertThat(Stiffness.STRETCHING_X.of(solid(0.006))).isCloseTo(7e9 * 0.006, within(1e-3));
        assertThat(Stiffness.STRETCHING_Y.of(solid(0.006))).isCloseTo(7e9 * 0.006, within(1e-3));
        assertThat(Stiffness.SHEAR.of(solid(0.006))).isCloseTo(G * 0.006, within(1e-3));
    }

    @Test
    void directionsAreKeptApart() {
        Laminate along = Laminate.of(List.of(new Ply(Lamina.of(40e9, 10e9, 4e9, 0.3), 0.003, 0)));
        Equivalence turned = new Equivalence(along, along.turnedBy(90));
        assertThat(turned.bending().x()).isCloseTo(0.25, within(1e-10));
        assertThat(turned.bending().y()).isCloseTo(4, within(1e-9));
        assertThat(turned.bending().xy()).isCloseTo(1, within(1e-10));
        assertThat(turned.bending().least()).isEqualTo(turned.bending().x());
        assertThat(turned.membrane().x()).isCloseTo(0.25, within(1e-10));
        assertThat(turned.membrane().y()).isCloseTo(4, within(1e-9));
        assertThat(new StiffnessRatios(3, 2, 4).least()).isEqualTo(2);
        assertThat(new StiffnessRatios(3, 2, 1).least()).isEqualTo(1);
    }

    /** 6 mm of solid laminate by 1.5 mm faces: E (t d²/2 + t³/6) = E h³/12 with a core of no stiffness. */
    @Test
    void theCoreThatReplacesASolidLaminate() {
        double t = 0.0015;
        Lamina nothing = Lamina.isotropic(1, 0.33);
        Laminate candidate = Laminate.of(List.of(new Ply(MAT, t, 0), new Ply(nothing, 0.02, 0), new Ply(MAT, t, 0)));
        PlyThickness answer = new Equivalence(solid(0.006), candidate).thicknessOf(Stiffness.BENDING_X, 1);
        double d = Math.sqrt(2 / t * (Math.pow(0.006, 3) / 12 - t * t * t / 6));
        assertThat(answer.thickness().orElseThrow()).isCloseTo(d - t, within(1e-9));
        assertThat(answer.ratioWithout()).isCloseTo(0.125, within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(
            value = Stiffness.class,
            names = {"BENDING_X", "BENDING_Y", "TWIST"})
    void theCoreThicknessMakesItEqual(Stiffness what) {
        Laminate candidate = Laminate.of(List.of(
                new Ply(MAT, 0.001, 0), new Ply(CLOTH, 0.001, 30), new Ply(FOAM, 0.005, 0), new Ply(CLOTH, 0.001, 0)));
        Equivalence equivalence = new Equivalence(solid(0.008), candidate);
        double c = equivalence.thicknessOf(what, 2).thickness().orElseThrow();
        Laminate made = Laminate.of(List.of(
                new Ply(MAT, 0.001, 0), new Ply(CLOTH, 0.001, 30), new Ply(FOAM, c, 0), new Ply(CLOTH, 0.001, 0)));
        assertThat(new Equivalence(solid(0.008), made).ratio(what)).isCloseTo(1, within(1e-10));
    }

    /** The thickness asked for does not depend on the thickness the ply has now. */
    @Test
    void theAnswerIsRecovered() {
        Laminate reference = sandwich(0.002, 0.0137);
        for (double start : new double[] {0.001, 0.0137, 0.3}) {
            PlyThickness answer =
                    new Equivalence(reference, sandwich(0.002, start)).thicknessOf(Stiffness.BENDING_X, 1);
            assertThat(answer.thickness().orElseThrow()).isCloseTo(0.0137, within(1e-11));
        }
        PlyThickness face = new Equivalence(reference, sandwich(0.002, 0.0137)).thicknessOf(Stiffness.BENDING_X, 2);
        assertThat(face.thickness().orElseThrow()).isCloseTo(0.002, within(1e-11));
        PlyThickness stretched =
                new Equivalence(solid(0.004), sandwich(0.001, 0.0137)).thicknessOf(Stiffness.STRETCHING_X, 1);
        assertThat(stretched.thickness().orElseThrow()).isCloseTo(0.002 * 7e9 / 80e6, within(1e-9));
    }

    @Test
    void noCoreIsNeededWhereTheFacesAloneAreStiffer() {
        PlyThickness answer = new Equivalence(solid(0.003), sandwich(0.002, 0.01)).thicknessOf(Stiffness.BENDING_X, 1);
        assertThat(answer.thickness()).isEmpty();
        assertThat(answer.ratioWithout()).isCloseTo(Math.pow(4 / 3.0, 3), within(1e-9));
    }

    @Test
    void noCoreIsThickEnough() {
        Lamina nothing = Lamina.isotropic(1, 0.33);
        Laminate candidate =
                Laminate.of(List.of(new Ply(MAT, 0.001, 0), new Ply(nothing, 0.01, 0), new Ply(MAT, 0.001, 0)));
        PlyThickness answer = new Equivalence(solid(0.006), candidate).thicknessOf(Stiffness.STRETCHING_X, 1);
        assertThat(answer.thickness()).isEmpty();
        assertThat(answer.ratioWithout()).isCloseTo(1 / 3.0, within(1e-9));
    }

    /** For one material mass follows thickness, so equal stiffness weighs the same. */
    @Test
    void massAtEqualStiffness() {
        Equivalence equivalence = new Equivalence(solid(0.006), solid(0.004));
        assertThat(Equivalence.massRatio(9, 6)).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(equivalence.massRatioAtEqual(Stiffness.BENDING_X, 9, 6)).isCloseTo(1, within(1e-12));
        assertThat(equivalence.massRatioAtEqual(Stiffness.SHEAR, 9, 3)).isCloseTo(0.5, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatMustBePositive(double bad) {
        String shown = String.valueOf(bad);
        for (Runnable call : List.<Runnable>of(
                () -> Equivalence.massRatio(bad, 1),
                () -> Equivalence.massRatio(1, bad),
                () -> new StiffnessRatios(bad, 1, 1),
                () -> new StiffnessRatios(1, bad, 1),
                () -> new StiffnessRatios(1, 1, bad))) {
            assertThatIllegalArgumentException().isThrownBy(call::run).withMessageContaining(shown);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 3})
    void thePlyIsOneOfTheCandidate(int ply) {
        Equivalence equivalence = new Equivalence(solid(0.006), sandwich(0.001, 0.01));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> equivalence.thicknessOf(Stiffness.TWIST, ply))
                .withMessageContaining("from 0 to 2, was " + ply);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Equivalence(solid(1), solid(1)).thicknessOf(Stiffness.TWIST, 0))
                .withMessageContaining("several");
    }

    /** All plies together: the closed form; one ply: its thickness; both faces of a sandwich: as stiff when laid so. */
    @ParameterizedTest
    @EnumSource(
            value = Stiffness.class,
            names = {"BENDING_X", "BENDING_Y", "TWIST"})
    void oneFactorOnAnyChoiceOfPliesMakesItEqual(Stiffness what) {
        Equivalence equivalence = new Equivalence(solid(0.012), sandwich(0.001, 0.010));
        assertThat(equivalence.thicknessFactor(what, ply -> true)).hasValue(equivalence.thicknessFactor(what));
        double core = equivalence.thicknessOf(what, 1).thickness().orElseThrow();
        assertThat(equivalence.thicknessFactor(what, ply -> ply == 1)).hasValueCloseTo(core / 0.010, within(1e-12));
        double faces = equivalence.thicknessFactor(what, ply -> ply != 1).orElseThrow();
        assertThat(new Equivalence(solid(0.012), sandwich(0.001 * faces, 0.010)).ratio(what))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void noFactorIsFoundWhereTheRestIsStiffEnoughOrNothingIsChanged() {
        Equivalence easy = new Equivalence(solid(0.001), sandwich(0.002, 0.010));
        assertThat(easy.thicknessFactor(Stiffness.BENDING_X, ply -> ply == 1)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> easy.thicknessFactor(Stiffness.BENDING_X, ply -> false))
                .withMessage("no ply of the candidate is to be changed");
    }
}
