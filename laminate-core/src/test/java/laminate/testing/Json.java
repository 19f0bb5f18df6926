package laminate.testing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a JSON resource into maps, lists, strings, doubles and booleans; for reference data of tests only. */
public final class Json {
    private Json() {}

    /** The object in a resource on the class path. */
    @SuppressWarnings("unchecked")
    public static Map<String, Object> resource(String path) {
        try (InputStream in = Json.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalArgumentException("no such resource: " + path);
            }
            try (JsonParser parser = new JsonFactory().createParser(in)) {
                parser.nextToken();
                return (Map<String, Object>) value(parser);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            case VALUE_NULL -> "";
            default -> throw new IOException("unexpected " + parser.currentToken());
        };
    }

    private static Map<String, Object> object(JsonParser parser) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            parser.nextToken();
            map.put(key, value(parser));
        }
        return map;
    }

    private static List<Object> array(JsonParser parser) throws IOException {
        List<Object> list = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            list.add(value(parser));
        }
        return list;
    }
}
