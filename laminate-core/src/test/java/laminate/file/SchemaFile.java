package laminate.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import laminate.testing.Json;

/**
 * A JSON Schema of the files, as tests look into it.
 *
 * @param name the kind of file: part, project, workshop, prices, stock, material
 * @param root the schema
 */
record SchemaFile(String name, Map<String, Object> root) {

    static List<SchemaFile> all() {
        return Stream.of("part", "project", "workshop", "prices", "stock", "material")
                .map(name -> new SchemaFile(name, Json.resource("/laminate/schema/" + name + ".schema.json")))
                .toList();
    }

    /** A definition by its name, of whichever file has it. */
    static Map<String, Object> definition(String name) {
        return all().stream()
                .filter(file -> file.definitions().containsKey(name))
                .findFirst()
                .map(file -> file.definitions().get(name))
                .orElseThrow(() -> new AssertionError("no schema defines " + name));
    }

    /** The pattern of a definition that is a text. */
    static Pattern pattern(String name) {
        return Pattern.compile((String) definition(name).get("pattern"));
    }

    Map<String, Map<String, Object>> definitions() {
        return mappings(root.get("$defs"));
    }

    /** The mappings with a fixed set of keys, by the name of their definition. */
    Map<String, Map<String, Object>> closedMappings() {
        Map<String, Map<String, Object>> closed = new LinkedHashMap<>(definitions());
        closed.values().removeIf(definition -> !Boolean.FALSE.equals(definition.get("additionalProperties")));
        return closed;
    }

    /** The names of the definitions that anything in the file refers to. */
    List<String> references() {
        List<String> names = new ArrayList<>();
        collectReferences(root, names);
        return names;
    }

    static Map<String, Map<String, Object>> properties(Map<String, Object> definition) {
        return mappings(definition.get("properties"));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Map<String, Object>> mappings(Object value) {
        return (Map<String, Map<String, Object>>) value;
    }

    private static void collectReferences(Object value, List<String> names) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, held) -> {
                if (key.equals("$ref")) {
                    names.add(((String) held).replaceFirst("^#/\\$defs/", ""));
                }
                collectReferences(held, names);
            });
        } else if (value instanceof List<?> list) {
            list.forEach(held -> collectReferences(held, names));
        }
    }
}
