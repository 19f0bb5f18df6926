package laminate.file;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tells a file of another kind than the wanted one by its keys, so that one complaint says all that is wrong with it. */
final class FileKind {
    private static final List<Keys> KINDS = List.of(Keys.PART, Keys.WORKSHOP, Keys.PRICES, Keys.STOCK, Keys.MATERIALS);

    private FileKind() {}

    /** Whether the keys of a file are those of another kind; complains if so. */
    static boolean isOther(Keys wanted, Node root, Complaints complaints) {
        Set<String> keys =
                root instanceof Node.Mapping mapping ? mapping.entries().keySet() : Set.of();
        if (wanted.names().containsAll(keys)) {
            return false;
        }
        Optional<Keys> other =
                KINDS.stream().filter(kind -> kind.names().containsAll(keys)).findFirst();
        other.ifPresent(kind ->
                complaints.at(root, "these are the keys of " + kind.aKind() + "; " + wanted.aKind() + " is wanted"));
        return other.isPresent();
    }
}
