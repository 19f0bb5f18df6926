package laminate.theory.beam;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What beams and their loads refuse. */
class BeamValuesTest {
    private static void refused(ThrowingCallable call, String shown) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(shown);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void stiffnessesAndSpansArePositive(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> BeamSection.of(bad, 1), shown);
        refused(() -> BeamSection.of(1, bad), shown);
        refused(() -> new Beam(BeamSection.of(1, 1), bad, Supports.CLAMPED), shown);
        refused(() -> BeamLoad.threePoint(1, bad), shown);
        refused(() -> BeamLoad.fourPoint(1, bad, 0), shown);
    }

    @Test
    void loadsStandOnTheBeam() {
        refused(() -> new PointLoad(1, -0.1), "-0.1");
        refused(() -> new PointLoad(Double.NaN, 0), "NaN");
        refused(() -> BeamLoad.uniform(Double.NaN), "NaN");
        refused(() -> BeamLoad.fourPoint(1, 1, 1.1), "1.1");
        refused(() -> BeamLoad.fourPoint(1, 1, -0.1), "-0.1");
        Beam beam = new Beam(BeamSection.of(1, 1), 1, Supports.CANTILEVER);
        refused(() -> beam.under(new BeamLoad(List.of(new PointLoad(1, 1.01)), 0)), "1.01");
        BeamResponse r = beam.under(BeamLoad.uniform(1));
        refused(() -> r.momentAt(1.01), "1.01");
        refused(() -> r.shearForceAt(-0.01), "-0.01");
        refused(() -> r.deflectionAt(Double.NaN), "NaN");
    }

    /** What no number can hold is refused and not answered by infinity or what is not a number. */
    @ParameterizedTest
    @EnumSource
    void noAnswerIsBeyondAllNumbers(Supports supports) {
        Beam beam = new Beam(BeamSection.of(100, 1e5), 1, supports);
        BeamLoad huge = BeamLoad.uniform(1e308);
        refused(() -> beam.under(huge.plus(huge)).largestDeflection(), "Infinity");
        refused(
                () -> new Beam(BeamSection.of(1e-200, 1), 1, supports)
                        .under(huge)
                        .largestDeflection(),
                "must be a");
        refused(() -> new Beam(BeamSection.of(1, 1), 1e200, supports).under(BeamLoad.uniform(1e200)), "must be a");
        refused(() -> new Deflection(0, Double.NaN, 0), "NaN");
        refused(() -> new Peak(0, Double.NEGATIVE_INFINITY), "-Infinity");
    }
}
