package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Consumable;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.process.FibreContent;
import laminate.process.Loss;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The vocabulary of the files against that of the domain: neither has a word that the other lacks. */
class KeysTest {

    static Stream<Arguments> materials() {
        return Stream.of(
                Arguments.of(Keys.FIBRE, "type", Fibre.REQUIRED, Fibre.OPTIONAL),
                Arguments.of(Keys.RESIN, "family use waxed cure gel-time", Resin.REQUIRED, Resin.OPTIONAL),
                Arguments.of(Keys.CURING_AGENT, "", Agent.REQUIRED, Set.of()),
                Arguments.of(
                        Keys.REINFORCEMENT,
                        "form binder fibre plies measured",
                        Reinforcement.REQUIRED,
                        Reinforcement.OPTIONAL),
                Arguments.of(Keys.CORE, "type open-cell", Core.REQUIRED, Core.OPTIONAL),
                Arguments.of(Keys.BULKER, "", Bulker.REQUIRED, Bulker.OPTIONAL),
                Arguments.of(Keys.CONSUMABLE, "sold-by", Set.of(), Consumable.OPTIONAL));
    }

    @ParameterizedTest
    @MethodSource("materials")
    void materialHasAKeyForEachOfItsProperties(
            Keys keys, String others, Set<Property> required, Set<Property> optional) {
        Set<String> expected =
                new HashSet<>(List.of(("material kind name " + others).strip().split(" ")));
        Stream.concat(required.stream(), optional.stream()).map(Property::key).forEach(expected::add);
        assertThat(keys.names()).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void measuredPlyHasAKeyForEachOfItsProperties() {
        Set<String> expected = keysOf(Reinforcement.MEASURED_REQUIRED, Reinforcement.MEASURED_OPTIONAL);
        expected.removeAll(keysOf(Reinforcement.MEASURED_STRAINS, Set.of()));
        expected.add("strain-limits");
        assertThat(Keys.MEASURED_PLY.names()).isEqualTo(expected);
        assertThat(Keys.MEASURED_STRAINS.names()).isEqualTo(keysOf(Reinforcement.MEASURED_STRAINS, Set.of()));
    }

    @Test
    void everyLossAndEveryWayToStateAContentHasItsKey() {
        assertThat(Keys.LOSS.names())
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Loss.values()).map(Loss::key).toList());
        assertThat(Keys.REINFORCEMENT_LAYER.names())
                .containsAll(Arrays.stream(FibreContent.Basis.values())
                        .map(FibreContent.Basis::key)
                        .toList());
    }

    private static Set<String> keysOf(Set<Property> required, Set<Property> optional) {
        return Stream.concat(required.stream(), optional.stream())
                .map(Property::key)
                .collect(Collectors.toSet());
    }
}
