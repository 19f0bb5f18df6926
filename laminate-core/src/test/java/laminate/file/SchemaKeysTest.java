package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The schemas know the very keys that the program reads. */
class SchemaKeysTest {

    private static String definitionOf(Keys keys) {
        return keys.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Map<String, Map<String, Object>> closedMappings() {
        Map<String, Map<String, Object>> all = new TreeMap<>();
        SchemaFile.all().forEach(file -> all.putAll(file.closedMappings()));
        return all;
    }

    @ParameterizedTest
    @EnumSource(Keys.class)
    void aMappingHasTheKeysThatAreRead(Keys keys) {
        Map<String, Map<String, Object>> mappings = closedMappings();

        assertThat(mappings).containsKey(definitionOf(keys));
        Set<String> known =
                SchemaFile.properties(mappings.get(definitionOf(keys))).keySet();
        assertThat(known).containsExactlyInAnyOrderElementsOf(keys.names());
    }

    @Test
    void noMappingIsOfTheSchemasAlone() {
        assertThat(closedMappings().keySet())
                .containsExactlyInAnyOrderElementsOf(Stream.of(Keys.values())
                        .map(SchemaKeysTest::definitionOf)
                        .toList());
    }
}
