package laminate.theory.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.theory.CoreStrength;
import laminate.theory.Deformation;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.Ply;
import laminate.theory.Resultants;
import laminate.theory.Vector3;
import laminate.theory.beam.StripWidth;
import laminate.theory.sandwich.BendingParts.Layer;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which plies are face and core, the properties of a core, and the parts of bending stiffness. */
class SandwichTest {
    private static final Lamina GLASS = Lamina.of(20e9, 9e9, 3e9, 0.25);
    private static final Lamina FOAM = Lamina.of(80e6, 80e6, 30e6, 0.33)
            .withTransverseShear(30e6, 20e6)
            .withStrength(new CoreStrength(1.1e6, 1.0e6, 1.4e6, OptionalDouble.empty()));

    private static Laminate laminate(String letters) {
        List<Ply> plies = new ArrayList<>();
        for (char letter : letters.toCharArray()) {
            plies.add(letter == 'c' ? new Ply(FOAM, 0.01, 0) : new Ply(GLASS, 0.001, 0));
        }
        return Laminate.of(plies);
    }

    private static void refused(ThrowingCallable call, String shown) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(shown);
    }

    @ParameterizedTest
    @ValueSource(strings = {"g", "ggg", "c", "cg", "gc", "cgc", "gcc"})
    void noCoreWithAFaceOnEitherSide(String letters) {
        assertThat(Sandwich.in(laminate(letters))).isEmpty();
    }

    @Test
    void coresAreFoundByTheirStrength() {
        Laminate one = laminate("gggcg");
        assertThat(Sandwich.in(one)).containsExactly(new Sandwich(one, 0, 3, 4, 5));
        Laminate thick = laminate("gccgg");
        assertThat(Sandwich.in(thick)).containsExactly(new Sandwich(thick, 0, 1, 3, 5));
        Laminate two = laminate("ggcgccg");
        assertThat(Sandwich.in(two)).containsExactly(new Sandwich(two, 0, 2, 3, 4), new Sandwich(two, 3, 4, 6, 7));
        Laminate bare = laminate("cggcg");
        assertThat(Sandwich.in(bare)).containsExactly(new Sandwich(bare, 1, 3, 4, 5));
    }

    @Test
    void aCoreMayBeNamed() {
        Laminate laminate = laminate("ggccg");
        assertThat(Sandwich.withCore(laminate, 2, 3)).isEqualTo(new Sandwich(laminate, 0, 2, 4, 5));
        refused(() -> Sandwich.withCore(laminate, 0, 3), "0");
        refused(() -> Sandwich.withCore(laminate, 2, 4), "5");
        refused(() -> Sandwich.withCore(laminate, 3, 2), "3");
        refused(() -> new Sandwich(laminate, -1, 2, 3, 4), "-1");
        refused(() -> new Sandwich(laminate, 0, 2, 3, 6), "6");
    }

    @Test
    void facesAndDistances() {
        Sandwich sandwich = Sandwich.in(laminate("ggcg")).get(0);
        assertThat(sandwich.face(Face.MOULD_FACE)).isEqualTo(laminate("gg"));
        assertThat(sandwich.face(Face.INNER_FACE)).isEqualTo(laminate("g"));
        assertThat(sandwich.core()).isEqualTo(laminate("c"));
        assertThat(sandwich.facesThickness()).isCloseTo(0.003, within(1e-15));
        assertThat(sandwich.faceDistance()).isCloseTo(0.0115, within(1e-15));
    }

    /** The faces' forces, the core's added, are N; their lever d carries all but a little of M. */
    @Test
    void meanStressesCarryTheLoad() {
        Laminate laminate = laminate("ggcg");
        Sandwich sandwich = Sandwich.in(laminate).get(0);
        Vector3 N = new Vector3(1000, -300, 200);
        Deformation stretched = laminate.deformationUnder(new Resultants(N, new Vector3(3, 1, -2)));
        Vector3 mould = sandwich.meanStress(Face.MOULD_FACE, stretched).times(0.002);
        Vector3 inner = sandwich.meanStress(Face.INNER_FACE, stretched).times(0.001);
        Vector3 core = laminate.plies().get(2).stress(stretched.at(0.0005)).times(0.01);
        Vector3 all = mould.plus(inner).plus(core);
        assertThat(all.x()).isCloseTo(N.x(), within(1e-6));
        assertThat(all.y()).isCloseTo(N.y(), within(1e-6));
        assertThat(all.xy()).isCloseTo(N.xy(), within(1e-6));

        Deformation bent = laminate.deformationUnder(new Resultants(Vector3.ZERO, new Vector3(100, 0, 0)));
        double thin = SandwichFormulas.faceStress(100, 1, 0.001, sandwich.faceDistance());
        assertThat(sandwich.meanStress(Face.INNER_FACE, bent).x()).isCloseTo(thin, within(0.02 * thin));
        assertThat(sandwich.meanStress(Face.MOULD_FACE, bent).x()).isCloseTo(-thin / 2, within(0.02 * thin));
        LaminateLoad load = LaminateLoad.of(new Resultants(N, new Vector3(3, 1, -2)));
        Vector3 again = sandwich.meanStress(Face.MOULD_FACE, laminate.responseTo(load));
        assertThat(again.times(0.002).minus(mould).x()).isCloseTo(0, within(1e-6));
        assertThat(again.times(0.002).minus(mould).y()).isCloseTo(0, within(1e-6));
        refused(() -> sandwich.meanStress(Face.MOULD_FACE, laminate("gcg").responseTo(load)), "was of 3");
    }

    @Test
    void aCoreOfOnePlyKeepsItsModuliAndTurns() {
        SandwichCore along = SandwichCore.of(laminate("c"), 85e6);
        assertThat(along)
                .isEqualTo(new SandwichCore(
                        0.01, 85e6, along.Gxz(), along.Gyz(), 0, OptionalDouble.of(1.4e6), OptionalDouble.empty()));
        assertThat(along.Gxz()).isCloseTo(30e6, within(1.0));
        assertThat(along.Gyz()).isCloseTo(20e6, within(1.0));
        for (double turn : new double[] {0, 30, 45, 90, 137}) {
            SandwichCore turned = SandwichCore.of(laminate("c").turnedBy(turn), 85e6);
            assertThat(turned.shearModulus(turn)).isCloseTo(30e6, within(1.0));
            assertThat(turned.shearModulus(turn + 90)).isCloseTo(20e6, within(1.0));
            assertThat(turned.shearModulus(turn - 45)).isCloseTo(25e6, within(1.0));
            assertThat(turned.shearModulus(turn + 30)).isCloseTo(27.5e6, within(1.0));
        }
    }

    /** Two foams one on another: 1/G = (c1/G1 + c2/G2)/c; the weaker counts. */
    @Test
    void aCoreOfTwoPliesAddsTheirCompliances() {
        Lamina dense = Lamina.of(160e6, 160e6, 60e6, 0.33)
                .withTransverseShear(60e6, 60e6)
                .withStrength(new CoreStrength(2e6, 2e6, 3e6, OptionalDouble.empty()));
        SandwichCore core = SandwichCore.of(Laminate.of(List.of(new Ply(dense, 0.03, 0), new Ply(FOAM, 0.01, 0))), 1e8);
        assertThat(core.Gxz()).isCloseTo(0.04 / (0.03 / 60e6 + 0.01 / 30e6), within(1.0));
        assertThat(core.Gyz()).isCloseTo(0.04 / (0.03 / 60e6 + 0.01 / 20e6), within(1.0));
        assertThat(core.compressiveStrength()).hasValue(1.4e6);
        assertThat(core.thickness()).isCloseTo(0.04, within(1e-15));
        Lamina unknown = Lamina.isotropic(1e8, 0.3);
        Laminate half = Laminate.of(List.of(new Ply(unknown, 0.03, 0), new Ply(FOAM, 0.01, 0)));
        assertThat(SandwichCore.of(half, 1e8).compressiveStrength()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aCoreHasPositiveProperties(double bad) {
        String shown = String.valueOf(bad);
        SandwichCore core = SandwichCore.of(1, 1, 1);
        refused(() -> SandwichCore.of(bad, 1, 1), shown);
        refused(() -> SandwichCore.of(1, bad, 1), shown);
        refused(() -> SandwichCore.of(1, 1, bad), shown);
        refused(() -> core.withCellSize(bad), shown);
        refused(() -> core.withCompressiveStrength(bad), shown);
        refused(() -> new SandwichCore(1, 1, 2, 2, 2, OptionalDouble.empty(), OptionalDouble.empty()), "determinant");
    }

    static Stream<Random> seeds() {
        return IntStream.range(0, 20).mapToObj(i -> new Random(400 + i));
    }

    /** Poisson ratios zero: the three layers of the board are the narrow strip of laminate theory, faces unequal. */
    @ParameterizedTest
    @MethodSource("seeds")
    void thePartsMakeUpTheStiffnessOfTheLaminate(Random random) {
        List<Ply> plies = new ArrayList<>();
        List<Layer> layers = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double E = (i == 1 ? 1e8 : 1e10) * (1 + random.nextDouble());
            double t = (i == 1 ? 0.01 : 0.001) * (1 + 2 * random.nextDouble());
            plies.add(new Ply(Lamina.of(E, E, E / 2, 0), t, 0));
            layers.add(new Layer(E, t));
        }
        double parts = BendingParts.of(0.3, layers.get(0), layers.get(1), layers.get(2))
                .total();
        double strip = 0.3 * StripWidth.NARROW.bendingStiffness(Laminate.of(plies));
        assertThat(parts).isCloseTo(strip, within(1e-9 * strip));
    }

    /** Without a core the faces are a solid beam of twice the thickness; without one face the core's own axis is left. */
    @Test
    void thinAndZeroCores() {
        Layer face = new Layer(20e9, 0.002);
        BendingParts solid = BendingParts.of(0.1, face, new Layer(0, 0), face);
        double expected = 20e9 * 0.1 * Math.pow(0.004, 3) / 12;
        assertThat(solid.total()).isCloseTo(expected, within(1e-12 * expected));
        assertThat(solid.core()).isZero();
        Layer nothing = new Layer(0, 0);
        BendingParts alone = BendingParts.of(0.1, nothing, new Layer(1e8, 0.02), nothing);
        assertThat(alone.total()).isCloseTo(1e8 * 0.1 * 8e-6 / 12, within(1e-12));
        assertThat(alone.core()).isEqualTo(alone.total());
        refused(() -> BendingParts.of(0.1, nothing, nothing, nothing), "0.0");
        refused(() -> BendingParts.of(0, face, nothing, face), "0.0");
        refused(() -> new Layer(-1, 1), "-1.0");
        refused(() -> new Layer(1, Double.NaN), "NaN");
    }

    /** As faces thin out the outer-fibre stress becomes M/(b t d). */
    @Test
    void thinFaceStressIsTheLimitOfBendingTheory() {
        double before = Double.POSITIVE_INFINITY;
        for (double t : new double[] {0.002, 0.0002, 0.00002}) {
            Layer face = new Layer(20e9, t);
            double D = BendingParts.of(1, face, new Layer(0, 0.02), face).total();
            double outer = SandwichFormulas.stressAtHeight(100, 20e9, 0.01 + t, D);
            double difference = outer / SandwichFormulas.faceStress(100, 1, t, 0.02 + t) - 1;
            assertThat(difference).isPositive().isLessThan(1.1 * t / 0.02).isLessThan(before);
            before = difference;
        }
    }
}
