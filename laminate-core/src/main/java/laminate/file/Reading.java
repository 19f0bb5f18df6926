package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * How a kind of value is read from the tree. A reading gives the value, or complains and gives nothing: never both, never
 * neither. Readings are put together from the ones in {@link Scalars} by the methods here.
 *
 * @param <T> the type of the value
 */
@FunctionalInterface
interface Reading<T> {

    /** The value, or empty if a complaint has been made of this node or something in it. */
    Optional<T> read(Node node, Complaints complaints);

    /** The value of a file, which is to begin with a mapping of such keys. */
    default Optional<T> read(Path file, Keys root, Complaints complaints) {
        Optional<Node> node = YamlTree.read(file, root, complaints);
        return node.isEmpty() || FileKind.isOther(root, node.get(), complaints)
                ? Optional.empty()
                : read(node.get(), complaints);
    }

    /** One of several words with what it leads to. */
    record Choice<T>(String word, Reading<? extends T> reading) {

        Optional<T> read(Node node, Complaints complaints) {
            return widened(reading.read(node, complaints));
        }

        static List<String> words(List<? extends Choice<?>> choices) {
            List<String> words = new ArrayList<>();
            for (Choice<?> choice : choices) {
                words.add(choice.word());
            }
            return words;
        }
    }

    static <T> Choice<T> choice(String word, Reading<? extends T> reading) {
        return new Choice<>(word, reading);
    }

    /** Goes on with the value; what the function refuses with an IllegalArgumentException becomes a complaint. */
    default <R> Reading<R> map(Function<? super T, ? extends R> onward) {
        return new Mapped<>(this, onward);
    }

    /** A reading with what is made of its value. */
    record Mapped<S, T>(Reading<S> first, Function<? super S, ? extends T> onward) implements Reading<T> {

        @Override
        public Optional<T> read(Node node, Complaints complaints) {
            Optional<S> value = first.read(node, complaints);
            if (value.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(onward.apply(value.get()));
            } catch (IllegalArgumentException e) {
                complaints.at(node, e);
                return Optional.empty();
            }
        }
    }

    /**
     * A mapping with its declared keys. The function asks for the values, then {@linkplain Fields#requireSound requires}
     * all of them to be sound, and makes the whole of them.
     */
    static <T> Reading<T> mapping(Keys keys, Function<Fields, T> whole) {
        return new MappingReading.Of<>(keys, whole);
    }

    /** A list with at least one entry; it is read to its end whatever is wrong in it. */
    static <T> Reading<List<T>> listOf(Reading<T> entry) {
        return new ListReading<>(entry);
    }

    /** A list, or one entry alone. */
    static <T> Reading<List<T>> oneOrList(Reading<T> entry) {
        return shortOrFull(new ListReading.OfOne<>(entry), listOf(entry));
    }

    /** A mapping whose keys are the user's own words, in the order of the file. */
    static <K, V> Reading<Map<K, V>> mapOf(Reading<K> key, Reading<V> value) {
        return new MapReading<>(key, value);
    }

    /** A value that may be written short, as a single word, or in full. */
    static <T> Reading<T> shortOrFull(Reading<? extends T> asScalar, Reading<? extends T> inFull) {
        return new ShortOrFull<>(asScalar, inFull);
    }

    /** Two ways of writing a value. */
    record ShortOrFull<T>(Reading<? extends T> asScalar, Reading<? extends T> inFull) implements Reading<T> {

        @Override
        public Optional<T> read(Node node, Complaints complaints) {
            return widened((node instanceof Node.Scalar ? asScalar : inFull).read(node, complaints));
        }
    }

    /**
     * A reading that is made only where a value stands, so that a file without it does not load what reads it. It is to be
     * given as a lambda, as a method reference would load the class at once.
     */
    static <T> Reading<T> later(Supplier<Reading<T>> reading) {
        return (node, complaints) -> reading.get().read(node, complaints);
    }

    /** A mapping whose kind shows in which of several keys it holds, as a layer's does: reinforcement, core or stage. */
    static <T> Reading<T> byKey(String kind, List<Choice<T>> choices) {
        return new ChoiceReading.ByKey<>(kind, choices);
    }

    /** A mapping whose kind is told by the word after one key, as a material's is by {@code kind:}. */
    static <T> Reading<T> byWord(String key, List<Choice<T>> choices) {
        return new ChoiceReading.ByWord<>(key, choices);
    }

    private static <T> Optional<T> widened(Optional<? extends T> value) {
        return value.isPresent() ? Optional.of(value.get()) : Optional.empty();
    }
}
