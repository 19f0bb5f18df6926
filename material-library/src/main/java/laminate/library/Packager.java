package laminate.library;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Packs the library while it is built: the YAML in which the materials are written becomes JSON, which is read several
 * times as fast, and the ids are listed, so that no file is opened to know what there is. No part of the library itself.
 */
final class Packager {
    private static final String WRITTEN = ".yaml";

    private Packager() {}

    /**
     * Packs a folder.
     *
     * @param args the folder of the materials as written, and the one to pack them into
     */
    public static void main(String[] args) throws IOException {
        Path from = Path.of(args[0]);
        Path to = Files.createDirectories(Path.of(args[1]));
        List<String> ids = ids(from);
        for (String id : ids) {
            pack(from.resolve(id + WRITTEN), to.resolve(id + ".json"));
        }
        Files.writeString(to.resolve("ids.txt"), String.join("\n", ids) + "\n");
    }

    private static List<String> ids(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(WRITTEN))
                    .map(name -> name.substring(0, name.length() - WRITTEN.length()))
                    .sorted()
                    .toList();
        }
    }

    /** Every single value becomes text: what a number is, the reader of a field tells. */
    private static void pack(Path yaml, Path json) throws IOException {
        try (JsonParser in = new YAMLFactory().createParser(yaml.toFile());
                JsonGenerator out = new JsonFactory().createGenerator(json.toFile(), JsonEncoding.UTF8)) {
            for (JsonToken token = in.nextToken(); token != null; token = in.nextToken()) {
                switch (token) {
                    case START_OBJECT -> out.writeStartObject();
                    case END_OBJECT -> out.writeEndObject();
                    case START_ARRAY -> out.writeStartArray();
                    case END_ARRAY -> out.writeEndArray();
                    case FIELD_NAME -> out.writeFieldName(in.currentName());
                    default -> out.writeString(in.getText());
                }
            }
        }
    }
}
