package laminate.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * Reads a YAML file, or a JSON file, which is YAML too, whole into a tree of {@link Node}s, before anything asks what the values mean: a slip in the layout
 * of a file would otherwise be reported as a missing value somewhere else.
 *
 * <p>Of YAML only keys, lists and single values are accepted, one document a file. What would make a file mean something
 * other than it seems to (anchors, aliases, merge keys, tags, a key given twice, a value left out) is complained of.
 */
final class YamlTree {

    /** Lists and groups inside each other; a part file's stages in schedules in zones take about ten. */
    static final int DEEPEST = 50;

    private static final String MERGE = "<<";
    private static final Pattern LEADING_DIGIT = Pattern.compile("[0-9]");
    private static final char NO_BREAK_SPACE = '\u00A0';

    private static final YAMLFactory YAML = yaml();
    /** JSON is YAML too, and read several times as fast by a parser of its own. */
    private static final JsonFactory JSON =
            JsonFactory.builder().streamReadConstraints(constraints()).build();

    private final JsonParser parser;
    private final SourceText source;
    private final Complaints complaints;

    private YamlTree(JsonParser parser, SourceText source, Complaints complaints) {
        this.parser = parser;
        this.source = source;
        this.complaints = complaints;
    }

    private static YAMLFactory yaml() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(SourceFile.LARGEST);
        return YAMLFactory.builder()
                .loaderOptions(options)
                .streamReadConstraints(constraints())
                .build();
    }

    private static StreamReadConstraints constraints() {
        return StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build();
    }

    /**
     * Reads a file.
     *
     * @param root what the file should be, for the message about an empty one
     * @return the tree, or empty if a complaint has been made because of which there is none
     */
    static Optional<Node> read(Path path, Keys root, Complaints complaints) {
        complaints.reading(path);
        return SourceFile.load(path, root, complaints).flatMap(source -> read(source, root, complaints));
    }

    /** Reads a text; the name stands for a file's in the complaints. */
    static Optional<Node> read(String sourceName, String text, Keys root, Complaints complaints) {
        return read(new SourceText(sourceName, text), root, complaints);
    }

    private static Optional<Node> read(SourceText source, Keys root, Complaints complaints) {
        if (InvisibleText.complain(source, complaints)) {
            return Optional.empty();
        }
        JsonFactory format = source.name().endsWith(".json") ? JSON : YAML;
        try (JsonParser parser = format.createParser(new StringReader(source.text()))) {
            return new YamlTree(parser, source, complaints).documentOrSlip(root);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private Optional<Node> documentOrSlip(Keys root) throws IOException {
        try {
            return document(root);
        } catch (JsonProcessingException e) {
            SyntaxSlips.complain(e, here(), source, complaints);
            return Optional.empty();
        }
    }

    private Optional<Node> document(Keys root) throws IOException {
        JsonToken first = parser.nextToken();
        if (first == null || isEmptyScalar(first)) {
            complaints.at(
                    new Position(source.name(), 1, 1),
                    "the file is empty; " + root.aKind() + " starts with " + root.first() + ":");
            return Optional.empty();
        }
        Node node = node(first, "");
        if (parser.nextToken() != null) {
            complaints.at(here(), "a second document starts here; a file holds one, without a line '---' inside");
        }
        return Optional.of(node);
    }

    private Node node(JsonToken token, String name) throws IOException {
        Position position = here();
        boolean refused = refusesMarks(position, name);
        Node node = switch (token) {
            case START_OBJECT -> mapping(name, position, refused);
            case START_ARRAY -> sequence(name, position);
            default -> scalar(name, position);
        };
        return refused ? new Node.Flawed(name, position) : node;
    }

    private Node sequence(String name, Position position) throws IOException {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            String itemName = (name.isEmpty() ? "" : name + ", ") + "entry " + (items.size() + 1);
            items.add(isNull(token) ? nothing(here(), itemName, "'-'") : node(token, itemName));
        }
        return new Node.Sequence(name, position, items);
    }

    private Node mapping(String name, Position position, boolean refused) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        boolean merges = false;
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_OBJECT; token = parser.nextToken()) {
            Node.Scalar key = key();
            // A block mapping begins where its first key does: one anchor there is complained of once.
            if (!(refused && key.position().equals(position))) {
                refusesMarks(key.position(), "");
            }
            Node value = value(key);
            merges |= key.text().equals(MERGE);
            if (acceptsKey(key, entries.get(key.text()))) {
                entries.put(key.text(), new Node.Entry(key, value));
            }
        }
        return merges ? new Node.Flawed(name, position) : new Node.Mapping(name, position, entries);
    }

    private Node.Scalar key() throws IOException {
        Position position = here();
        String text = parser.currentName();
        if (text.indexOf(NO_BREAK_SPACE) < 0) {
            return new Node.Scalar("", position, text, lead(text));
        }
        String meant = text.replace(NO_BREAK_SPACE, ' ').strip();
        complaints.at(
                position,
                "a no-break space (U+00A0) stands in the key " + Complaints.shown(meant) + "; use ordinary spaces");
        return new Node.Scalar("", position, meant, -1);
    }

    private Node value(Node.Scalar key) throws IOException {
        boolean afterComma = source.before(index()) == ',';
        JsonToken token = parser.nextToken();
        if (isNull(token) && afterComma && LEADING_DIGIT.matcher(key.text()).lookingAt()) {
            complaints.at(
                    key,
                    "a comma parts " + Complaints.shown(key.text()) + " from what stands before it; write a "
                            + "decimal point, as in 0.45");
            return new Node.Flawed(key.text(), key.position());
        }
        return isNull(token) ? nothing(key.position(), key.text(), key.text() + ":") : node(token, key.text());
    }

    private boolean acceptsKey(Node.Scalar key, Node.Entry earlier) {
        if (key.text().equals(MERGE)) {
            complaints.at(key, "merging with '<<' is not accepted; write the keys out");
        } else if (key.text().isBlank()) {
            complaints.at(key, "a key is missing before ':'; write 'key: value'");
        } else if (earlier != null) {
            complaints.at(
                    key,
                    "the key " + Complaints.shown(key.text()) + " is given twice, first in line "
                            + earlier.key().position().line() + "; a key may stand once");
        } else {
            return true;
        }
        return false;
    }

    private Node scalar(String name, Position position) throws IOException {
        String text = parser.getText();
        return new Node.Scalar(name, position, text, lead(text));
    }

    /** Complains that nothing stands behind a key or dash, or a word that YAML takes for nothing. */
    private Node nothing(Position position, String name, String behind) throws IOException {
        String written = parser.getText();
        complaints.at(
                position,
                (written.isEmpty() ? "nothing stands after " + behind : written + " after " + behind + " is no value")
                        + "; give a value or take the line out");
        return new Node.Flawed(name, position);
    }

    /** Anchors, aliases and tags, each known by the character it begins with, as plain text cannot begin with it. */
    private boolean refusesMarks(Position position, String name) {
        String message = switch (source.at(index())) {
            case '&' ->
                "an anchor (&) is not accepted; write the value out where it is needed, or quote text with & in front";
            case '*' -> "an alias (*) is not accepted; write the value out, or quote text with * in front";
            case '!' -> "a tag (!) is not accepted; write the value alone, or quote text with ! in front";
            default -> "";
        };
        if (!message.isEmpty()) {
            complaints.at(new Node.Flawed(name, position), message);
        }
        return !message.isEmpty();
    }

    /** Whether nothing, null or ~ stands there; in quotes they would be text. */
    private boolean isNull(JsonToken token) throws IOException {
        return token == JsonToken.VALUE_NULL || isEmptyScalar(token);
    }

    private boolean isEmptyScalar(JsonToken token) throws IOException {
        if (token == JsonToken.VALUE_NULL) {
            return parser.getText().isEmpty();
        }
        boolean empty = token == JsonToken.VALUE_STRING && parser.getText().isEmpty();
        return empty && "\"'|>&*!".indexOf(source.at(index())) < 0;
    }

    /** See {@link Node.Scalar#lead()}. */
    private int lead(String text) {
        int index = index();
        char first = source.at(index);
        int lead = first == '"' || first == '\'' ? 1 : 0;
        return source.text().startsWith(text, index + lead) ? lead : -1;
    }

    private int index() {
        return source.index((int) parser.currentTokenLocation().getCharOffset());
    }

    private Position here() {
        JsonLocation location = parser.currentTokenLocation();
        return new Position(source.name(), location.getLineNr(), location.getColumnNr());
    }
}
