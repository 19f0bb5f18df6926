package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.unit.QuantityException;

/**
 * Collects what is wrong while a part file, and the files it names, are read on to their end. One collector serves one
 * reading; it is the only mutable thing in this package that outlives a method.
 */
final class Complaints {

    private static final int SHOWN = 40;

    private final List<Complaint> found = new ArrayList<>();
    private final Set<Path> files = new LinkedHashSet<>();

    boolean isEmpty() {
        return found.isEmpty();
    }

    /** Adds what was complained of, and read, elsewhere, each complaint once. */
    void add(Complaints others) {
        for (Complaint other : others.found) {
            if (!found.contains(other)) {
                found.add(other);
            }
        }
        files.addAll(others.files);
    }

    /** Takes note of a file that is read. */
    void reading(Path file) {
        files.add(file);
    }

    /** The files read so far. */
    List<Path> files() {
        return List.copyOf(files);
    }

    void at(Position position, String message) {
        found.add(new Complaint(position.file(), position.line(), position.column(), message));
    }

    /** Complains of a node, whose name goes before the message. */
    void at(Node node, String message) {
        at(node, node.position(), message);
    }

    /** Complains of what a domain type refused; a refused quantity is pointed at where its text goes wrong. */
    void at(Node node, IllegalArgumentException refusal) {
        if (refusal instanceof Refusal placed) {
            at(placed.node(), placed.getMessage());
            return;
        }
        Position place = node.position();
        if (refusal instanceof QuantityException quantity && node instanceof Node.Scalar scalar) {
            place = scalar.at(quantity.offset());
        }
        at(node, place, refusal.getMessage() == null ? "this is refused" : refusal.getMessage());
    }

    private void at(Node node, Position place, String message) {
        at(place, node.name().isEmpty() ? message : node.name() + ": " + message);
    }

    /**
     * Ends the reading: the value if all is well.
     *
     * @throws InputException if anything has been complained of
     */
    <T> T settle(Optional<? extends T> value) {
        if (!found.isEmpty()) {
            throw new InputException(found);
        }
        return value.orElseThrow(() -> new IllegalStateException("nothing was read, and nothing complained of"));
    }

    /** The beginning of what is accepted, where one word is close to what was written. */
    static String didYouMean(String word) {
        return "did you mean " + word + "? ";
    }

    /** A user's text as a message shows it: in quotes, on one line, cut where it is long. */
    static String shown(String text) {
        String line = text.replaceAll("\\s+", " ").strip();
        int length = line.codePointCount(0, line.length());
        return length <= SHOWN ? "'" + line + "'" : "'" + line.substring(0, line.offsetByCodePoints(0, SHOWN)) + "…'";
    }
}
