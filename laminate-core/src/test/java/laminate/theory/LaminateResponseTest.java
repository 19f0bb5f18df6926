package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import laminate.theory.LaminateLoad.Term;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Mixed control, free strain, and shear across the thickness by what they must obey. */
class LaminateResponseTest {
    private static final int LAMINATES = 300;

    /** Take any response, hold some of its deformations instead of applying their resultants: nothing changes. */
    @Test
    void anySixOfTheTwelveGiveTheSameState() {
        Random random = new Random(7);
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            LaminateLoad forces = LaminateLoad.of(new Resultants(vector(random, 1e4), vector(random, 10)))
                    .withTemperatureChange(-60)
                    .withMoisture(moisture(laminate));
            LaminateResponse expected = laminate.responseTo(forces);
            LaminateLoad mixed = LaminateLoad.NONE.withTemperatureChange(-60).withMoisture(moisture(laminate));
            double[] values = twelve(expected);
            for (int i = 0; i < 6; i++) {
                Term term = Term.values()[random.nextBoolean() ? i : i + 6];
                mixed = mixed.with(term, values[term.ordinal()]);
            }
            double[] actual = twelve(laminate.responseTo(mixed));
            double[] size = sizes(laminate, values);
            for (int i = 0; i < 12; i++) {
                assertThat(actual[i]).as("%s of %s", Term.values()[i], laminate).isCloseTo(values[i], within(size[i]));
            }
        });
    }

    /** The cores of the sandwiches have no moisture expansion. */
    private static double moisture(Laminate laminate) {
        return laminate.moistureResultants().isPresent() ? 0.01 : 0;
    }

    /** 10⁻⁸ of what the other terms would make of it in a laminate of this stiffness. */
    private static double[] sizes(Laminate laminate, double[] v) {
        double h = laminate.thickness();
        double strain = 0;
        for (int i = 6; i < 12; i++) {
            strain = Math.max(strain, Math.abs(v[i]) * (i < 9 ? 1 : h));
        }
        double force = strain * laminate.membrane().scale();
        double[] sizes = new double[12];
        for (int i = 0; i < 12; i++) {
            sizes[i] = 1e-8 * (i < 3 ? force : i < 6 ? force * h : i < 9 ? strain : strain / h);
        }
        return sizes;
    }

    private static double[] twelve(LaminateResponse r) {
        Vector3 n = r.resultants().force();
        Vector3 m = r.resultants().moment();
        Vector3 e = r.deformation().strain();
        Vector3 k = r.deformation().curvature();
        return new double[] {n.x(), n.y(), n.xy(), m.x(), m.y(), m.xy(), e.x(), e.y(), e.xy(), k.x(), k.y(), k.xy()};
    }

    /** Simpson's rule over the three points of a ply is exact for N, and for M, whose integrand is quadratic. */
    @Test
    void stressesAddUpToTheResultants() {
        Random random = new Random(8);
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            LaminateLoad load = LaminateLoad.of(new Resultants(vector(random, 1e4), vector(random, 10)))
                    .withTemperatureChange(40)
                    .withMoisture(moisture(laminate));
            LaminateResponse response = laminate.responseTo(load);
            double force = 0;
            double moment = 0;
            double size = 0;
            for (PlyPoint p : response.points()) {
                double weight = laminate.plies().get(p.ply()).thickness() * (p.at() == PlyPoint.At.MIDDLE ? 4 : 1) / 6;
                force += weight * p.stress().xy();
                moment += weight * p.stress().x() * p.z();
                size += weight
                        * (Math.abs(p.stress().xy()) + Math.abs(p.stress().x()));
            }
            assertThat(force).isCloseTo(load.given().get(Term.NXY), within(1e-9 * size));
            assertThat(moment).isCloseTo(load.given().get(Term.MX), within(1e-9 * size * laminate.thickness()));
        });
    }

    /** τ is a parabola in each ply, so Simpson's rule gives Q; nothing arises in the other direction. */
    @Test
    void shearStressAddsUpToTheShearForces() {
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            LaminateResponse response = laminate.responseTo(LaminateLoad.NONE.withShear(700, -300));
            double xz = 0;
            double yz = 0;
            for (PlyPoint p : response.points()) {
                double weight = laminate.plies().get(p.ply()).thickness() * (p.at() == PlyPoint.At.MIDDLE ? 4 : 1) / 6;
                xz += weight * p.shear().xz();
                yz += weight * p.shear().yz();
            }
            assertThat(xz).isCloseTo(700, within(1e-6));
            assertThat(yz).isCloseTo(-300, within(1e-6));
            PlyPoint last = response.points().get(response.points().size() - 1);
            assertThat(response.points().get(0).shear()).isEqualTo(ShearStress.ZERO);
            assertThat(Math.abs(last.shear().xz()) + Math.abs(last.shear().yz()))
                    .isZero();
        });
    }

    @Test
    void shearStressIsContinuousBetweenPlies() {
        RandomLaminates.take(LAMINATES).forEach(laminate -> {
            List<PlyPoint> points =
                    laminate.responseTo(LaminateLoad.NONE.withShear(700, -300)).points();
            Offset<Double> rounding = within(1e-9 * 1000 / laminate.thickness());
            for (int i = 2; i + 1 < points.size(); i += 3) {
                assertThat(points.get(i).shear().xz())
                        .isCloseTo(points.get(i + 1).shear().xz(), rounding);
                assertThat(points.get(i).shear().yz())
                        .isCloseTo(points.get(i + 1).shear().yz(), rounding);
            }
        });
    }

    /** An angle ply on one side of a soft core turns part of a force along x into stress along y. */
    @Test
    void shearCouplingIsKept() {
        Lamina lamina = Lamina.of(40e9, 8e9, 3e9, 0.3);
        Laminate laminate = Laminate.of(List.of(new Ply(lamina, 0.001, 30), new Ply(lamina, 0.001, -30)));
        ShearStress stress = EquilibriumShear.of(laminate).at(1000, 0, -0.0005);
        assertThat(Math.abs(stress.yz())).isGreaterThan(0.05 * stress.xz());
        ShearStress turned = new ShearStress(3, 4);
        assertThat(Angle.ofDegrees(30).shearToPly(turned).xz()).isCloseTo(3 * Math.sqrt(0.75) + 2, within(1e-12));
        assertThat(Angle.ofDegrees(30).shearToPly(turned).yz()).isCloseTo(4 * Math.sqrt(0.75) - 1.5, within(1e-12));
        assertThat(Angle.ofDegrees(-90).shearToPly(turned).xz()).isIn(4.0, -4.0);
    }

    /** One material turned by 30°: 5/6 h of the turned moduli, G13 cos² + G23 sin² and so on. */
    @Test
    void shearStiffnessStoresTheEnergyOfTheShearStress() {
        Lamina lamina = Lamina.of(40e9, 8e9, 3e9, 0.3).withTransverseShear(4e9, 2e9);
        Laminate laminate = Laminate.of(List.of(new Ply(lamina, 0.001, 30), new Ply(lamina, 0.002, 30)));
        TransverseShearStiffness stiffness = TransverseShearStiffness.of(laminate);
        assertThat(stiffness.xx()).isCloseTo(2.5e-3 * 3.5e9, within(1.0));
        assertThat(stiffness.yy()).isCloseTo(2.5e-3 * 2.5e9, within(1.0));
        assertThat(stiffness.xy()).isCloseTo(2.5e-3 * 2e9 * Math.sqrt(3) / 4, within(1.0));
    }

    @Test
    void heldEverywhereALaminateAnswersAsItsStiffness() {
        Laminate laminate = RandomLaminates.take(1).findFirst().orElseThrow();
        LaminateLoad held = LaminateLoad.NONE;
        for (Term term : Term.values()) {
            held = term.isResultant() ? held : held.with(term, term == Term.KAPPA_X ? 2 : 0);
        }
        LaminateResponse response = laminate.responseTo(held);
        assertThat(response.resultants().moment().x())
                .isCloseTo(
                        2 * laminate.bending().m11(),
                        within(1e-9 * laminate.bending().scale()));
        assertThat(response.deformation().curvature()).isEqualTo(new Vector3(2, 0, 0));
        assertThat(response.load()).isEqualTo(held);
    }

    @Test
    void aLoadIsCheckedAndTakenApart() {
        LaminateLoad load = LaminateLoad.NONE
                .with(Term.NX, 100)
                .with(Term.EPS_Y, 0.001)
                .withShear(5, 6)
                .withTemperatureChange(-40)
                .withMoisture(0.02);
        assertThat(load.mechanical()).isEqualTo(new LaminateLoad(load.given(), 5, 6, 0, 0));
        assertThat(load.residual().given()).containsExactly(Map.entry(Term.NX, 0.0), Map.entry(Term.EPS_Y, 0.0));
        assertThat(load.residual().temperatureChange()).isEqualTo(-40);
        assertThat(load.residual().moisture()).isEqualTo(0.02);
        assertThat(load.residual().Qx() + load.residual().Qy()).isZero();
        assertThat(load.times(2).given()).containsEntry(Term.NX, 200.0).containsEntry(Term.EPS_Y, 0.002);
        assertThat(load.times(2).Qx()).isEqualTo(10);
        assertThat(load.times(2).Qy()).isEqualTo(12);
        assertThat(load.times(2).temperatureChange()).isEqualTo(-40);
        assertThat(Term.MXY.conjugate()).isEqualTo(Term.KAPPA_XY);
        assertThat(Term.KAPPA_XY.conjugate()).isEqualTo(Term.MXY);
        assertThat(Term.MXY.isResultant()).isTrue();
        assertThat(Term.EPS_X.isResultant()).isFalse();
        refused(() -> load.with(Term.EPS_X, 0.004), "0.004");
        refused(() -> load.with(Term.MX, Double.NaN), "NaN");
        refused(() -> load.withShear(Double.NaN, 0), "NaN");
        refused(() -> load.withShear(0, Double.NaN), "NaN");
        refused(() -> load.withMoisture(Double.NaN), "NaN");
        refused(() -> load.withTemperatureChange(Double.POSITIVE_INFINITY), "Infinity");
        refused(() -> new ShearStress(Double.NaN, 0), "NaN");
        refused(() -> new ShearStress(0, Double.NaN), "NaN");
    }

    @Test
    void anUnknownExpansionIsNeededOnlyForAChange() {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.of(40e9, 8e9, 3e9, 0.3), 0.001, 0)));
        assertThat(laminate.responseTo(LaminateLoad.NONE).deformation().strain())
                .isEqualTo(Vector3.ZERO);
        refused(() -> laminate.responseTo(LaminateLoad.NONE.withTemperatureChange(-30)), "ply 1", "-30");
        refused(() -> laminate.responseTo(LaminateLoad.NONE.withMoisture(0.01)), "moisture", "0.01");
    }

    /** Free to expand, a single ply is free of stress whatever the temperature and moisture. */
    @Test
    void aFreePlyHasNoResidualStress() {
        Lamina lamina = Lamina.of(40e9, 8e9, 3e9, 0.3).withExpansion(6e-6, 3e-5).withMoistureExpansion(0.02, 0.3);
        LaminateResponse response = Laminate.of(List.of(new Ply(lamina, 0.001, 30)))
                .responseTo(LaminateLoad.NONE.withTemperatureChange(-100).withMoisture(0.01));
        PlyPoint point = response.points().get(1);
        assertThat(point.plyStrain().x()).isCloseTo(-100 * 6e-6 + 0.01 * 0.02, within(1e-15));
        assertThat(point.plyStrain().y()).isCloseTo(-100 * 3e-5 + 0.01 * 0.3, within(1e-15));
        assertThat(Math.abs(point.stress().x()) + Math.abs(point.stress().xy())).isLessThan(1e-4);
    }

    @Test
    void strengthsAreChecked() {
        PlyStrength strength = PlyStrength.of(1, 2, 3, 4, 5);
        assertThat(strength.withS23(6).S23()).hasValue(6);
        StrainLimits limits = StrainLimits.linear(strength, Lamina.of(10, 5, 2, 0.1));
        assertThat(limits).isEqualTo(new StrainLimits(0.1, 0.2, 0.6, 0.8, 2.5));
        assertThat(strength.withStrainLimits(limits).strainLimits()).contains(limits);
        Lamina strong = Lamina.of(10, 5, 2, 0.1).withStrength(strength);
        assertThat(strong.scaledBy(0.5).withExpansion(1, 2).strength()).contains(strength);
        refused(() -> PlyStrength.of(-1, 2, 3, 4, 5), "Xt", "-1");
        refused(() -> PlyStrength.of(1, -2, 3, 4, 5), "Xc", "-2");
        refused(() -> PlyStrength.of(1, 2, -3, 4, 5), "Yt", "-3");
        refused(() -> PlyStrength.of(1, 2, 3, -4, 5), "Yc", "-4");
        refused(() -> PlyStrength.of(1, 2, 3, 4, -5), "S", "-5");
        refused(() -> strength.withS23(0), "S23");
        refused(() -> new StrainLimits(0, 1, 1, 1, 1), "e1t");
        refused(() -> new StrainLimits(1, 0, 1, 1, 1), "e1c");
        refused(() -> new StrainLimits(1, 1, 0, 1, 1), "e2t");
        refused(() -> new StrainLimits(1, 1, 1, 0, 1), "e2c");
        refused(() -> new StrainLimits(1, 1, 1, 1, 0), "g12");
        refused(() -> new MatStrength(80e6, 120e6, 40e6), "4.0E7");
        refused(() -> new MatStrength(0, 1, 1), "tension");
        refused(() -> new MatStrength(1, 0, 1), "compression");
        refused(() -> new MatStrength(1, 1, Double.NaN), "shear");
        refused(() -> new CoreStrength(0, 1, 1, java.util.OptionalDouble.empty()), "shear13");
        refused(() -> new CoreStrength(1, 0, 1, java.util.OptionalDouble.empty()), "shear23");
        refused(() -> new CoreStrength(1, 1, 0, java.util.OptionalDouble.empty()), "compression");
        refused(() -> new CoreStrength(1, 1, 1, java.util.OptionalDouble.of(-2)), "tension", "-2");
    }

    private static Vector3 vector(Random random, double size) {
        return new Vector3(size * random.nextGaussian(), size * random.nextGaussian(), size * random.nextGaussian());
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String... shown) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContainingAll(shown);
    }
}
