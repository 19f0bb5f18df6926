package laminate.estimate;

import static laminate.estimate.StrongLayers.LIBRARY;
import static laminate.estimate.StrongLayers.lay;
import static laminate.estimate.StrongLayers.strength;
import static laminate.estimate.StrongLayers.strong;
import static laminate.estimate.StrongLayers.strongEpoxy;
import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.hybridCloth;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.single;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Status;
import laminate.part.ReinforcementLayer;
import laminate.process.LayUp;
import laminate.process.StiffnessBasis;
import laminate.process.StrengthBasis;
import laminate.process.Workshop;
import laminate.theory.MatStrength;
import laminate.theory.Micromechanics;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Strengths of laid plies as measured. */
class MeasuredStrengthsTest {
    private static Reinforcement measured(Reinforcement plain, Figures more) {
        Figures ply = Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.3)
                .with(Property.E1, 15e9)
                .with(Property.E2, 14e9)
                .with(Property.G12, 3e9)
                .with(Property.NU12, 0.15);
        for (var figure : more.asMap().entrySet()) {
            ply = ply.with(figure.getKey(), figure.getValue());
        }
        return new Reinforcement(
                plain.id(),
                plain.name(),
                plain.form(),
                plain.plies(),
                plain.binder(),
                plain.figures(),
                Optional.of(ply));
    }

    private static Figures five() {
        Figures figures = Figures.none();
        double value = 320e6;
        for (Property property : List.of(Property.XT, Property.XC, Property.YT, Property.YC, Property.S)) {
            figures = figures.with(property, new Figure(value, "test sheet", Status.PRINTED));
            value -= 60e6;
        }
        return figures;
    }

    @ParameterizedTest
    @EnumSource(StrengthBasis.class)
    void measuredStrengthsWinUnderEitherBasis(StrengthBasis basis) {
        Workshop workshop = Workshop.USUAL.withStrength(basis);
        LaidLayer laid = lay(workshop, strong(measured(roving(0.6), five())));
        assertThat(strength(laid)).isEqualTo(PlyStrength.of(320e6, 260e6, 200e6, 140e6, 80e6));
        assertThat(laid.strengths())
                .containsExactly(StrengthOrigin.known("measured on roving-600: test sheet", Status.PRINTED));
    }

    @Test
    void measuredStrainsAndS23GoWithTheStrengths() {
        Figures figures = five().with(Property.S23, new Figure(40e6, "test sheet", Status.PRINTED));
        double strain = 0.01;
        for (Property property : Reinforcement.MEASURED_STRAINS) {
            figures = figures.with(property, strain);
            strain += 0.001;
        }
        PlyStrength strength = (PlyStrength) strength(lay(LIBRARY, strong(measured(roving(0.6), figures))));
        assertThat(strength.S23()).hasValue(40e6);
        StrainLimits limits = strength.strainLimits().orElseThrow();
        assertThat(new double[] {limits.e1t(), limits.e1c(), limits.e2t(), limits.e2c(), limits.g12()})
                .containsExactly(new double[] {0.010, 0.011, 0.012, 0.013, 0.014}, within(1e-12));
    }

    @Test
    void aMeasuredMatIsAsWeakAsItsWeakerDirection() {
        Figures figures = five().with(Property.S, new Figure(110e6, "the yard's own", Status.USER));
        LaidLayer laid = lay(LIBRARY, strong(measured(mat(0.45), figures)));
        assertThat(strength(laid)).isEqualTo(new MatStrength(200e6, 140e6, 110e6));
        assertThat(laid.strengths().get(0).text()).endsWith("test sheet; the yard's own");
        assertThat(laid.strengths().get(0).status()).contains(Status.USER);
    }

    @Test
    void measuredModuliWithoutStrengthsLeaveTheStrengthToTheBasis() {
        Workshop marine = LIBRARY.withStiffness(StiffnessBasis.usual(Micromechanics.MARINE_RULE));
        LaidLayer laid = lay(marine, strong(measured(single("c", Form.UNIDIRECTIONAL, CARBON, 0.3), Figures.none())));
        assertThat(laid.plies().get(0).lamina().E1()).isEqualTo(15e9);
        assertThat(laid.strengths().get(0).text()).startsWith("micromechanics of carbon");
    }

    @Test
    void aHybridClothHasNoStrengthUnlessMeasured() {
        LayUp epoxy = strongEpoxy();
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(hybridCloth(0.2), epoxy));
        assertThat(laid.plies()).hasSize(1);
        assertThat(laid.plies().get(0).lamina().strength()).isEmpty();
        assertThat(laid.strengths().get(0).text()).contains("wants measured strengths");
        LaidLayer tested = lay(LIBRARY, ReinforcementLayer.of(measured(hybridCloth(0.2), five()), epoxy));
        assertThat(tested.strengths()).hasSize(1).allMatch(StrengthOrigin::isKnown);
        assertThat(strength(tested)).isInstanceOf(PlyStrength.class);
    }
}
