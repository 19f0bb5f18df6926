package laminate.theory.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the formulas scale, and what they refuse. */
class SandwichFormulasTest {
    private static void refused(ThrowingCallable call, String shown) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(shown);
    }

    private static void isTimes(double factor, double more, double once) {
        assertThat(more / once).isCloseTo(factor, within(1e-12 * Math.abs(factor)));
    }

    @Test
    void howStressesScale() {
        isTimes(2, Wrinkling.DESIGN.stress(8e9, 1e8, 3e7), Wrinkling.DESIGN.stress(1e9, 1e8, 3e7));
        isTimes(2, Wrinkling.DESIGN.stress(1e9, 8e8, 3e7), Wrinkling.DESIGN.stress(1e9, 1e8, 3e7));
        isTimes(2, Wrinkling.DESIGN.stress(1e9, 1e8, 24e7), Wrinkling.DESIGN.stress(1e9, 1e8, 3e7));
        isTimes(9, SandwichFormulas.dimplingStress(1, 0, 3, 1), SandwichFormulas.dimplingStress(1, 0, 1, 1));
        isTimes(0.25, SandwichFormulas.dimplingStress(1, 0, 1, 2), SandwichFormulas.dimplingStress(1, 0, 1, 1));
        isTimes(2, SandwichFormulas.dimplingStress(1, 0.5, 1, 1), SandwichFormulas.dimplingStress(1, 0, 1, 1));
        isTimes(4, SandwichFormulas.flexuralCrushing(-2, 1, 1), SandwichFormulas.flexuralCrushing(1, 1, 1));
        isTimes(-2, SandwichFormulas.faceStress(-2, 1, 1, 1), SandwichFormulas.faceStress(1, 1, 1, 1));
        isTimes(2, Indentation.elasticFaceLoad(1, 2, 1, 1), Indentation.elasticFaceLoad(1, 1, 1, 1));
        isTimes(3, Indentation.elasticFaceLoad(1, 1, 9, 1), Indentation.elasticFaceLoad(1, 1, 1, 1));
        isTimes(16, Indentation.depth(2, 1, 1, 1, 1), Indentation.depth(1, 1, 1, 1, 1));
        assertThat(Wrinkling.THEORY.coefficient() / Wrinkling.DESIGN.coefficient())
                .isEqualTo(1.82);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatMustBePositive(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> Wrinkling.DESIGN.stress(bad, 1, 1), shown);
        refused(() -> Wrinkling.DESIGN.stress(1, bad, 1), shown);
        refused(() -> Wrinkling.DESIGN.stress(1, 1, bad), shown);
        refused(() -> Wrinkling.decayDepth(bad, 1, 1, 1), shown);
        refused(() -> SandwichFormulas.shearStiffness(bad, 1, 1, 1), shown);
        refused(() -> SandwichFormulas.crimpingLoad(bad, 1, 1), shown);
        refused(() -> SandwichFormulas.crimpingLoad(1, bad, 1), shown);
        refused(() -> SandwichFormulas.crimpingLoad(1, 1, bad), shown);
        refused(() -> SandwichFormulas.crimpingStress(1, 1, 1, bad), shown);
        refused(() -> SandwichFormulas.faceStress(1, bad, 1, 1), shown);
        refused(() -> SandwichFormulas.faceStress(1, 1, bad, 1), shown);
        refused(() -> SandwichFormulas.faceStress(1, 1, 1, bad), shown);
        refused(() -> SandwichFormulas.coreShear(1, bad, 1), shown);
        refused(() -> SandwichFormulas.coreShear(1, 1, bad), shown);
        refused(() -> SandwichFormulas.stressAtHeight(1, bad, 1, 1), shown);
        refused(() -> SandwichFormulas.stressAtHeight(1, 1, 1, bad), shown);
        refused(() -> SandwichFormulas.dimplingStress(bad, 0, 1, 1), shown);
        refused(() -> SandwichFormulas.dimplingStress(1, 0, bad, 1), shown);
        refused(() -> SandwichFormulas.dimplingStress(1, 0, 1, bad), shown);
        refused(() -> SandwichFormulas.flexuralCrushing(1, bad, 1), shown);
        refused(() -> SandwichFormulas.flexuralCrushing(1, 1, bad), shown);
        refused(() -> AstmC393.MID_SPAN.faceStress(1, bad, 1, 1, 1), shown);
        refused(() -> AstmC393.MID_SPAN.faceStress(1, 1, bad, 1, 1), shown);
        refused(() -> AstmC393.coreShear(1, 1, bad, 1), shown);
        refused(() -> AstmC393.coreShear(1, 1, 1, bad), shown);
        refused(() -> Indentation.foundationModulus(bad, 1), shown);
        refused(() -> Indentation.foundationModulus(1, bad), shown);
        refused(() -> Indentation.beta(bad, 1, 1), shown);
        refused(() -> Indentation.beta(1, bad, 1), shown);
        refused(() -> Indentation.beta(1, 1, bad), shown);
        refused(() -> Indentation.coreYieldLoad(1, bad, 1), shown);
        refused(() -> Indentation.faceBendingStress(1, 1, 1, bad), shown);
        refused(() -> Indentation.elasticFaceLoad(1, 1, bad, 1), shown);
        refused(() -> Indentation.elasticFaceLoad(1, 1, 1, bad), shown);
        refused(() -> Indentation.depth(bad, 1, 1, 1, 1), shown);
        refused(() -> Indentation.depth(1, 1, 1, 1, bad), shown);
    }

    @Test
    void whatMustBeFiniteOrInRange() {
        refused(() -> SandwichFormulas.faceStress(Double.NaN, 1, 1, 1), "NaN");
        refused(() -> SandwichFormulas.coreShear(Double.NaN, 1, 1), "NaN");
        refused(() -> SandwichFormulas.stressAtHeight(1, 1, Double.NaN, 1), "NaN");
        refused(() -> SandwichFormulas.flexuralCrushing(Double.NaN, 1, 1), "NaN");
        refused(() -> SandwichFormulas.dimplingStress(1, 1, 1, 1), "1.0");
        refused(() -> SandwichFormulas.dimplingStress(1, -0.1, 1, 1), "-0.1");
        refused(() -> Indentation.plasticHingeLoad(1, 1, 1, 1, -0.1), "-0.1");
        refused(() -> AstmC393.coreShear(Double.NaN, 1, 1, 1), "NaN");
    }

    /** Arguments that are finite each, but whose product is not, are refused too. */
    @Test
    void nothingInfiniteComesOut() {
        double big = 1e200;
        double small = 1e-200;
        refused(() -> SandwichFormulas.crimpingLoad(big, big, 1), "Infinity");
        refused(() -> SandwichFormulas.shearStiffness(big, big, 1, 1), "Infinity");
        refused(() -> SandwichFormulas.crimpingStress(big, 1, 1, small), "Infinity");
        refused(() -> SandwichFormulas.faceStress(1, small, small, 1), "Infinity");
        refused(() -> SandwichFormulas.stressAtHeight(big, big, 1, 1), "Infinity");
        refused(() -> SandwichFormulas.coreShear(1, small, small), "Infinity");
        refused(() -> SandwichFormulas.dimplingStress(1, 0, big, 1), "Infinity");
        refused(() -> SandwichFormulas.flexuralCrushing(big, 1, 1), "Infinity");
        refused(() -> AstmC393.THIRD_POINT.faceStress(big, big, 1, 1, 1), "Infinity");
        refused(() -> AstmC393.coreShear(big, small, 1, 1), "Infinity");
        refused(() -> Wrinkling.decayDepth(1, 1e300, 1e300, 1e-300), "Infinity");
        refused(() -> Indentation.foundationModulus(big, small), "Infinity");
        refused(() -> Indentation.beta(1, 1, small), "Infinity");
        refused(() -> Indentation.coreYieldLoad(big, big, 1), "Infinity");
        refused(() -> Indentation.faceBendingStress(1, 1, small, 1), "Infinity");
        refused(() -> Indentation.elasticFaceLoad(big, big, 1, 1), "Infinity");
        refused(() -> Indentation.depth(big, 1, 1, 1, 1), "Infinity");
        refused(() -> Indentation.plasticHingeLoad(big, big, 1, 1, 0), "Infinity");
    }
}
