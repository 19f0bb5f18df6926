package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import laminate.theory.Worked.Term;
import org.junit.jupiter.api.Test;

/** A formula is told with the numbers that it was worked out with. */
class WorkedTest {
    private static final Term W = new Term("w", 0.45, "kg/m²");
    private static final Term PSI = new Term("ψ", 0.3, "1");
    private static final Term M = new Term("m", 1.05, "kg/m²");

    /** One mat of 450 g/m² at 30 % by mass: 0.45 · 0.7/0.3 = 1.05 kg/m² of resin. */
    @Test
    void theResinOfAMat() {
        assertThat(WorkedMixture.resinMass(0.45, 0.3).inputs()).containsExactly(W, PSI);
        assertThat(WorkedMixture.resinMass(0.45, 0.3).result().value()).isCloseTo(1.05, within(1e-15));
    }

    /** Glass of 2560 kg/m³ in resin of 1200 kg/m³, no voids: (0.3/2560)/(0.3/2560 + 0.7/1200) = 0.1673, 1.051 mm thick. */
    @Test
    void theThicknessOfAMat() {
        double vf =
                WorkedMixture.fibreVolumeFraction(0.3, 2560, 1200, 0).result().value();
        assertThat(vf).isCloseTo(0.1673, within(5e-5));
        assertThat(WorkedMixture.thickness(0.45, vf, 2560).result().value()).isCloseTo(1.051e-3, within(5e-7));
    }

    @Test
    void anEquationThatLacksATermIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Worked("resin", "m = w", List.of(W, PSI), M, "conservation of mass"))
                .withMessage("'m = w' lacks 'ψ'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Worked("resin", "w ψ", List.of(W, PSI), M, "conservation of mass"))
                .withMessage("'w ψ' does not begin with 'm = '");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Worked("resin", "m = w ψ", List.of(W, PSI), M, " "))
                .withMessageContaining("a source");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Term("w", Double.NaN, "kg/m²"))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Term("w", 1, " "))
                .withMessageContaining("a unit");
    }
}
