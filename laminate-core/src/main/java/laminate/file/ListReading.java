package laminate.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a list with at least one entry to its end, whatever is wrong in it. */
final class ListReading<T> extends ShapedReading<Node.Sequence, List<T>> {

    private final Reading<T> entry;

    ListReading(Reading<T> entry) {
        super(Node.Sequence.class);
        this.entry = entry;
    }

    @Override
    Optional<List<T>> readShaped(Node.Sequence list, Complaints complaints) {
        if (list.items().isEmpty()) {
            complaints.at(list, "the list is empty; at least one entry is wanted, or leave the key out");
            return Optional.empty();
        }
        List<T> values = new ArrayList<>();
        for (Node item : list.items()) {
            entry.read(item, complaints).ifPresent(values::add);
        }
        return values.size() == list.items().size() ? Optional.of(List.copyOf(values)) : Optional.empty();
    }

    @Override
    String wanted() {
        return "a list is wanted, as in [a, b]";
    }

    /** Reads one entry alone as a list. */
    record OfOne<T>(Reading<T> entry) implements Reading<List<T>> {

        @Override
        public Optional<List<T>> read(Node node, Complaints complaints) {
            return entry.read(node, complaints).map(List::of);
        }
    }
}
