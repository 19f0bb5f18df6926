package laminate.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LimitsTest {

    private static final long SEED = Long.getLong("seed", 20260115L);

    private static Limits random(Random random) {
        Map<ReserveKind, Double> factors = new EnumMap<>(ReserveKind.class);
        for (ReserveKind kind : ReserveKind.values()) {
            if (random.nextInt(3) == 0) {
                factors.put(kind, 1 + random.nextDouble());
            }
        }
        return new Limits(
                random.nextBoolean() ? Optional.of(DeflectionLimit.of(random.nextDouble() + 1e-3)) : Optional.empty(),
                factors,
                random.nextBoolean() ? OptionalDouble.of(random.nextDouble() + 1e-3) : OptionalDouble.empty(),
                random.nextBoolean() ? OptionalDouble.of(random.nextDouble() + 1e-3) : OptionalDouble.empty());
    }

    @Test
    void theNearestOfEachLimitWinsButForTheMass() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            Limits near = random(random);
            Limits around = random(random);
            Limits held = near.within(around);
            assertThat(held.deflection()).isEqualTo(near.deflection().or(around::deflection));
            assertThat(held.thickness()).isEqualTo(first(near.thickness(), around.thickness()));
            for (ReserveKind kind : ReserveKind.values()) {
                assertThat(held.reserveFactor(kind))
                        .isEqualTo(first(near.reserveFactor(kind), around.reserveFactor(kind)));
            }
            assertThat(held.mass()).isEqualTo(near.mass());
        }
    }

    private static OptionalDouble first(OptionalDouble near, OptionalDouble around) {
        return near.isPresent() ? near : around;
    }

    @Test
    void limitsAreHandedDownInAnyGrouping() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 200; i++) {
            Limits panel = random(random);
            Limits zone = random(random);
            Limits part = random(random);
            assertThat(panel.within(zone).within(part)).isEqualTo(panel.within(zone.within(part)));
            assertThat(panel.within(Limits.NONE)).isEqualTo(panel);
        }
    }

    @Test
    void nothingAskedIsNothingHandedDown() {
        assertThat(Limits.NONE.within(Limits.NONE)).isEqualTo(Limits.NONE);
        assertThat(Limits.NONE.isEmpty()).isTrue();
        assertThat(Limits.NONE.reserveFactor(ReserveKind.BUCKLING)).isEmpty();
        Limits mass = new Limits(Optional.empty(), Map.of(), OptionalDouble.empty(), OptionalDouble.of(25));
        assertThat(mass.isEmpty()).isFalse();
        assertThat(Limits.NONE.within(mass)).isEqualTo(Limits.NONE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLimitIsAboveZero(double value) {
        assertThatThrownBy(
                        () -> new Limits(Optional.empty(), Map.of(), OptionalDouble.of(value), OptionalDouble.empty()))
                .hasMessage("a limit of thickness must be above zero, not " + value);
        assertThatThrownBy(
                        () -> new Limits(Optional.empty(), Map.of(), OptionalDouble.empty(), OptionalDouble.of(value)))
                .hasMessage("a limit of mass must be above zero, not " + value);
        assertThatThrownBy(() -> new Limits(
                        Optional.empty(),
                        Map.of(ReserveKind.WRINKLING, value),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                .hasMessage("a limit of reserve factor wrinkling must be above zero, not " + value);
        assertThatThrownBy(() -> DeflectionLimit.of(value)).hasMessageContaining("above zero, not " + value);
    }

    @Test
    void aDeflectionIsALengthOrAShareOfTheSpan() {
        assertThat(DeflectionLimit.of(0.004).over(0.6)).isEqualTo(0.004);
        assertThat(DeflectionLimit.ofSpan(100).over(0.6)).isCloseTo(0.006, within(1e-15));
        assertThat(DeflectionLimit.ofSpan(62.5).value()).isCloseTo(0.016, within(1e-15));
        assertThatThrownBy(() -> DeflectionLimit.ofSpan(1)).hasMessageContaining("below the span, not 1.0 of it");
        assertThatThrownBy(() -> DeflectionLimit.ofSpan(-100)).hasMessageContaining("above zero, not -0.01");
    }
}
