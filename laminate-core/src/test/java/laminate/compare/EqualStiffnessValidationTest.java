package laminate.compare;

import static laminate.compare.TestWays.by;
import static laminate.compare.TestWays.lid;
import static laminate.compare.TestWays.sheet;
import static laminate.compare.TestWays.sheets;
import static laminate.compare.TestWays.way;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import laminate.estimate.Estimator;
import laminate.estimate.ZoneEstimate;
import laminate.part.Bed;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.Process;
import laminate.theory.CoreStrength;
import laminate.theory.Equivalence.Stiffness;
import laminate.theory.Lamina;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal bending stiffness and equal weight against textbook formulas and independent laminates. */
class EqualStiffnessValidationTest {
    private static final CompareOptions STIFF = CompareOptions.USUAL.with(Basis.SAME_STIFFNESS);
    private static final CompareOptions HEAVY = CompareOptions.USUAL.with(Basis.SAME_WEIGHT);

    private static Adjustment only(CompareOptions options, Candidate reference, Candidate candidate) {
        SideBySide ways = SideBySide.of(List.of(reference, candidate), options);
        assertThat(ways.refusals()).isEmpty();
        return ways.alternatives().get(1).adjustments().get(0);
    }

    private static ZoneEstimate made(CompareOptions options, Candidate reference, Candidate candidate) {
        return SideBySide.of(List.of(reference, candidate), options)
                .alternatives()
                .get(1)
                .estimate()
                .zones()
                .get(0);
    }

    private static ZoneEstimate laid(Layer... layers) {
        return new Estimator(TestWays.PAID).lay(Zone.of("independent", 1, List.of(layers)));
    }

    /**
     * Isotropic sheets of equal bending stiffness, E t³ alike (textbook, for example Ashby, Materials Selection in Mechanical
     * Design, from memory): a sheet of modulus E2 in place of one of E1 is (E1/E2)^(1/3) times as thick. 3 mm of aluminium,
     * 69 GPa, 2700 kg/m³, is 6.43 mm of glass mat, 7 GPa, 1450 kg/m³, and that 15 % heavier; plywood, 9 GPa, 600 kg/m³, is
     * 5.92 mm, and 56 % lighter.
     */
    @ParameterizedTest
    @CsvSource({"7e9, 1450, 6.43238, 1.15148", "9e9, 600, 5.91548, 0.43818", "69e9, 2700, 3, 1"})
    void sheetsOfEqualStiffnessHaveTheCubeRootOfTheModulusRatio(
            double modulus, double density, double millimetres, double massRatio) {
        Candidate aluminium = way("aluminium", sheets("sheet", sheet(69e9, 2700, 0.003)));
        Candidate other = way("other", sheets("sheet", sheet(modulus, density, 0.005)));
        Adjustment adjustment = only(STIFF, aluminium, other);
        assertThat(adjustment.factor()).isCloseTo(0.003 * Math.cbrt(69e9 / modulus) / 0.005, within(1e-12));
        assertThat(adjustment.layers().get(0).thickness()).hasValueCloseTo(millimetres / 1000, within(5e-8));
        assertThat(adjustment.exactMassPerArea() / (0.003 * 2700)).isCloseTo(massRatio, within(5e-5));
        assertThat(adjustment.remaining()).isCloseTo(0, within(1e-9));
    }

    /** Sheets of equal weight: t2 = t1 ρ1/ρ2, and E t³ follows: aluminium's weight of plywood is 11.9 times as stiff. */
    @Test
    void sheetsOfEqualWeightHaveTheDensityRatio() {
        Candidate aluminium = way("aluminium", sheets("sheet", sheet(69e9, 2700, 0.003)));
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.006)));
        ZoneEstimate made = made(HEAVY, aluminium, plywood);
        assertThat(made.laminate().thickness()).isCloseTo(0.0135, within(1e-15));
        assertThat(Stiffness.BENDING_X.of(made.laminate()) / (69e9 * Math.pow(0.003, 3) / 12))
                .isCloseTo(9.0 / 69 * Math.pow(4.5, 3), within(1e-9));
        assertThat(made.massPerArea().planned()).isCloseTo(8.1, within(1e-12));
    }

    /** All areal weights by the factor, laid independently as mats of that weight: as stiff to 1e-9, before whole layers. */
    @ParameterizedTest
    @EnumSource(Process.class)
    void theFactorOnEveryArealWeightMakesASolidLayUpAsStiff(Process process) {
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.009)));
        Candidate grp = way("grp", Part.of("lid", List.of(Zone.of("lid", 1, TestWays.solid(process)))));
        double f = only(STIFF, plywood, grp).factor();
        ZoneEstimate exact = laid(TestWays.layers(
                        process,
                        mat(0.3 * f),
                        mat(0.45 * f),
                        roving(0.6 * f),
                        mat(0.45 * f),
                        roving(0.6 * f),
                        mat(0.45 * f),
                        roving(0.6 * f))
                .toArray(Layer[]::new));
        double wanted = 9e9 * Math.pow(0.009, 3) / 12;
        assertThat(Stiffness.BENDING_X.of(exact.laminate()) / wanted).isCloseTo(1, within(1e-9));
        Adjustment adjustment = only(STIFF, plywood, grp);
        assertThat(adjustment.exactThickness()).isCloseTo(exact.laminate().thickness(), within(1e-12));
        assertThat(adjustment.exactMassPerArea()).isCloseTo(exact.massPerArea().planned(), within(1e-12));
    }

    /** The faces of a sandwich by the factor, the core as it is. */
    @ParameterizedTest
    @EnumSource(Stiffness.class)
    void theFactorOnTheFacesMakesASandwichAsStiff(Stiffness along) {
        if (along != Stiffness.BENDING_X && along != Stiffness.BENDING_Y) {
            return;
        }
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.018)));
        Candidate lid = way("lid", lid(TestWays.sandwich(Process.HAND_LAY_UP)));
        Adjustment adjustment = only(STIFF.with(along), plywood, lid);
        double f = adjustment.factor();
        ZoneEstimate exact = laid(
                hand(mat(0.3 * f)),
                hand(roving(0.6 * f)),
                hand(mat(0.45 * f)),
                CoreLayer.of(PVC, 0.012, by(Process.HAND_LAY_UP)),
                hand(mat(0.45 * f)),
                hand(roving(0.6 * f)),
                hand(mat(0.3 * f)));
        double wanted = 9e9 * Math.pow(0.018, 3) / 12;
        assertThat(along.of(exact.laminate()) / wanted).isCloseTo(1, within(1e-9));
        assertThat(adjustment.exactThickness()).isCloseTo(exact.laminate().thickness(), within(1e-12));
    }

    private static ReinforcementLayer hand(laminate.material.Reinforcement reinforcement) {
        return ReinforcementLayer.of(reinforcement, by(Process.HAND_LAY_UP));
    }

    /**
     * A symmetric sandwich of isotropic faces E, t and core Ec, c of one Poisson's ratio, so that no ply hinders another
     * across the strip: EI = E ((c + 2 t)³ − c³)/12 + Ec c³/12 (textbook). The core thickness by Brent's method of a
     * general-purpose library.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.012, 0.020, 0.060})
    void theCoreThicknessIsThatOfTheTextbookSandwich(double sheetThickness) {
        double wanted = 9e9 * Math.pow(sheetThickness, 3) / 12;
        DoubleUnaryOperator stiffness = c -> (12e9 * (Math.pow(c + 0.004, 3) - c * c * c) + 80e6 * c * c * c) / 12;
        double core = new BrentSolver(1e-15, 1e-15).solve(1000, c -> stiffness.applyAsDouble(c) - wanted, 1e-4, 0.5);
        LaminaLayer face = sheet(12e9, 1500, 0.002);
        LaminaLayer foam = new LaminaLayer(
                Lamina.isotropic(80e6, 0.33)
                        .withStrength(new CoreStrength(1e6, 1e6, 1e6, java.util.OptionalDouble.empty())),
                80,
                0.010,
                0,
                "");
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, sheetThickness)));
        Candidate sandwich = way("sandwich", sheets("sheet", face, foam, face));
        Adjustment adjustment = only(STIFF.with(Means.CORE), plywood, sandwich);
        assertThat(adjustment.layers()).hasSize(1);
        assertThat(adjustment.layers().get(0).thickness().orElseThrow() / core).isCloseTo(1, within(1e-10));
        assertThat(adjustment.remaining()).isCloseTo(0, within(1e-9));
    }

    /** Mass per area with gelcoat: the factor falls on the layers alone, w (1 + resin to fibre), not on the gelcoat. */
    @Test
    void theFactorOfEqualWeightLeavesTheGelcoatAlone() {
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.012)));
        Candidate lid = way("lid", lid(TestWays.layers(Process.HAND_LAY_UP, mat(0.45), mat(0.45))));
        Adjustment adjustment = only(HEAVY, plywood, lid);
        ZoneEstimate given = new Estimator(TestWays.PAID).lay(lid.part().zones().get(0));
        double gelcoat = given.coatings().get(0).massPerArea().planned();
        double contentOfMat = given.layers().get(0).fibreMassFraction();
        assertThat(adjustment.factor()).isCloseTo((7.2 - gelcoat) / (0.9 / contentOfMat), within(1e-12));
        assertThat(adjustment.exactMassPerArea()).isCloseTo(7.2, within(1e-12));
        assertThat(adjustment.ratioAsGiven()).isCloseTo((gelcoat + 0.9 / contentOfMat) / 7.2, within(1e-12));
    }

    /** The core of equal weight: what it takes up of resin does not grow with it, what it weighs does. */
    @Test
    void theCoreOfEqualWeightMakesUpForTheFaces() {
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.018)));
        Candidate lid = way("lid", lid(TestWays.sandwich(Process.INFUSION)));
        ZoneEstimate made = made(HEAVY.with(Means.CORE), plywood, lid);
        assertThat(made.massPerArea().planned()).isCloseTo(10.8, within(1e-9));
        ZoneEstimate given = new Estimator(TestWays.PAID).lay(lid.part().zones().get(0));
        double lacking = 10.8 - given.massPerArea().planned();
        double core = ((CoreLayer) made.layers().get(3).layer()).thickness();
        assertThat(core).isCloseTo(0.012 + lacking / 80, within(1e-12));
    }

    /** A bed of paste stays as thick as it is; only the core on it grows. */
    @ParameterizedTest
    @EnumSource(
            value = Basis.class,
            names = {"SAME_STIFFNESS", "SAME_WEIGHT"})
    void theBedOfACoreStays(Basis basis) {
        Bed bed = new Bed(PASTE, Dose.usual(PASTE, MEKP), 0.001);
        CoreLayer bedded =
                new CoreLayer(PVC, 0.012, 0, CoreFinish.PLAIN, by(Process.HAND_LAY_UP), Optional.of(bed), "");
        Candidate plywood = way("plywood", sheets("sheet", sheet(9e9, 600, 0.018)));
        Candidate lid = way("lid", lid(List.of(hand(mat(0.9)), bedded, hand(mat(0.9)))));
        CompareOptions options = STIFF.with(basis).with(Means.CORE);
        assertThat(only(options, plywood, lid).remaining()).isCloseTo(0, within(1e-9));
        ZoneEstimate made = made(options, plywood, lid);
        assertThat(made.laminate().plies().get(1).thickness()).isEqualTo(0.001);
        assertThat(only(options, plywood, lid).exactThickness())
                .isCloseTo(made.laminate().thickness(), within(1e-12));
    }
}
