package laminate.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A piece of a YAML file with its place. All scalars are text as the user wrote it: what a number or a quantity is, only
 * the reader of a field can tell, and YAML's own notions (010 is eight, no is false) are traps.
 */
sealed interface Node {

    /** How a message calls this node: the key it stands under, "layers, entry 2" in a list, empty for a whole file. */
    String name();

    /** Where the node begins. */
    Position position();

    /**
     * A single value.
     *
     * @param name see {@link Node#name()}
     * @param position where it begins, at its opening quote if it has one
     * @param text the text without quotes and comment
     * @param lead the characters between the position and the text's first one; negative where the file does not hold
     *     the text letter by letter (escapes, folded lines)
     */
    record Scalar(String name, Position position, String text, int lead) implements Node {

        /** The place of a character of the text; the beginning where the file does not hold the text letter by letter. */
        Position at(int offset) {
            if (lead < 0 || offset < 0 || offset > text.length()) {
                return position;
            }
            return position.right(lead + text.codePointCount(0, offset));
        }
    }

    /** A list in the order of the file. */
    record Sequence(String name, Position position, List<Node> items) implements Node {

        public Sequence {
            items = List.copyOf(items);
        }
    }

    /** Keys with their values in the order of the file. */
    record Mapping(String name, Position position, Map<String, Entry> entries) implements Node {

        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }
    }

    /** A value about which a complaint has been made already: readers pass over it in silence. */
    record Flawed(String name, Position position) implements Node {}

    /** A key and what stands after it. */
    record Entry(Scalar key, Node value) {}
}
