package laminate.print;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON and refuses duplicate keys, nulls, and anything behind the end. */
public final class StrictJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private StrictJson() {}

    @SuppressWarnings("unchecked")
    public static Map<String, Object> object(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            parser.nextToken();
            Map<String, Object> object = (Map<String, Object>) value(parser);
            if (parser.nextToken() != null) {
                throw new AssertionError("something follows the object");
            }
            return object;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A list of objects in an object. */
    @SuppressWarnings("unchecked")
    public static List<Map<String, Object>> list(Map<String, Object> object, String key) {
        return (List<Map<String, Object>>) object.get(key);
    }

    /** An object in an object. */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> child(Map<String, Object> object, String key) {
        return (Map<String, Object>) object.get(key);
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> members(parser);
            case START_ARRAY -> elements(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            default -> throw new AssertionError("a value cannot be " + parser.currentToken());
        };
    }

    private static Map<String, Object> members(JsonParser parser) throws IOException {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            members.put(key, value(parser));
        }
        return members;
    }

    private static List<Object> elements(JsonParser parser) throws IOException {
        List<Object> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(parser));
        }
        return elements;
    }
}
