package laminate.plan;

import static laminate.plan.PlanParts.POLYESTER;
import static laminate.testing.TestMaterials.MEKP;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.process.Dose;
import org.junit.jupiter.api.Test;

/** The values of a plan refuse nonsense, and sum what they hold. */
class PlanValuesTest {

    @Test
    void aMixCoversItsNeed() {
        Mix mix = mix(0.5, 0.505, 0.0101);

        assertThat(mix.dose()).isCloseTo(0.02, within(1e-12));
        assertThat(mix.surplus()).isCloseTo(0.005, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> mix(0.5, 0.495, 0.01))
                .withMessage("a mix of 0.495 kg does not cover 0.5 kg");
    }

    @Test
    void aMixHasMassesAboveZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> mix(0, 0.5, 0.01)).withMessageContaining("0.0 kg");
        assertThatIllegalArgumentException().isThrownBy(() -> mix(0.5, 0.5, 0)).withMessageContaining("0.0 kg");
        assertThatIllegalArgumentException().isThrownBy(() -> mix(0.5, Double.POSITIVE_INFINITY, 0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> mix(0.5, 0.5, Double.NaN));
    }

    @Test
    void aResinHasMixesOrAReasonWhyNot() {
        StageResin resin = resin(List.of(mix(0.5, 0.505, 0.0101), mix(0.5, 0.505, 0.0101)), Optional.empty());

        assertThat(resin.mixed()).isCloseTo(1.01, within(1e-12));
        assertThat(resin.agent()).isCloseTo(0.0202, within(1e-12));
        assertThat(resin.surplus()).isCloseTo(0.01, within(1e-12));
        assertThat(resin.fits()).isTrue();
        assertThat(resin(List.of(), Optional.of("too late")).fits()).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> resin(List.of(), Optional.empty()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> resin(List.of(mix(0.5, 0.5, 0.01)), Optional.of("too late")));
    }

    @Test
    void aSuggestionChangesSomething() {
        assertThat(new Suggestion(OptionalDouble.of(0.01), OptionalInt.empty(), 3).mixes())
                .isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Suggestion(OptionalDouble.empty(), OptionalInt.empty(), 3));
        assertThat(new Suggestion(OptionalDouble.of(0.01), OptionalInt.of(2), 3).mixes())
                .isEqualTo(3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Suggestion(OptionalDouble.of(0.01), OptionalInt.empty(), 0));
    }

    private static StageResin resin(List<Mix> mixes, Optional<String> problem) {
        return new StageResin(
                POLYESTER,
                new Dose(MEKP, 0.02),
                "laminate",
                1,
                600,
                OptionalDouble.empty(),
                Optional.empty(),
                "unknown",
                mixes,
                problem,
                List.of());
    }

    private static Mix mix(double needed, double resin, double catalyst) {
        return new Mix(
                1,
                "polyester-ortho",
                "mekp",
                needed,
                resin,
                resin / 1110,
                catalyst,
                catalyst / 1170,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                60);
    }
}
