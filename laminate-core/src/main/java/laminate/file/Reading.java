package laminate.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import laminate.unit.Nearest;

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

    /** One of several words with what it leads to. */
    record Choice<T>(String word, Reading<? extends T> reading) {

        Optional<T> read(Node node, Complaints complaints) {
            return reading.read(node, complaints).map(value -> value);
        }
    }

    static <T> Choice<T> choice(String word, Reading<? extends T> reading) {
        return new Choice<>(word, reading);
    }

    /** Goes on with the value; what the function refuses with an IllegalArgumentException becomes a complaint. */
    default <R> Reading<R> map(Function<? super T, ? extends R> onward) {
        return (node, complaints) -> read(node, complaints).flatMap(value -> {
            try {
                return Optional.of(onward.apply(value));
            } catch (IllegalArgumentException e) {
                complaints.at(node, e);
                return Optional.empty();
            }
        });
    }

    /**
     * A mapping with its declared keys. The function asks for the values and says how the whole is made of them; it is
     * made only if all of them are sound.
     */
    static <T> Reading<T> mapping(Keys keys, Function<Fields, Supplier<T>> fields) {
        return shaped(
                Node.Mapping.class,
                "a group of keys is wanted, " + keys.aKind() + " starting with " + keys.first() + ":",
                (mapping, complaints) -> {
                    Fields in = new Fields(mapping, keys, complaints);
                    return in.build(fields.apply(in));
                });
    }

    /** A list with at least one entry; it is read to its end whatever is wrong in it. */
    static <T> Reading<List<T>> listOf(Reading<T> entry) {
        return shaped(Node.Sequence.class, "a list is wanted, as in [a, b]", (list, complaints) -> {
            if (list.items().isEmpty()) {
                complaints.at(list, "the list is empty; at least one entry is wanted, or leave the key out");
                return Optional.empty();
            }
            List<T> values = new ArrayList<>();
            list.items().forEach(item -> entry.read(item, complaints).ifPresent(values::add));
            return Optional.of(List.copyOf(values))
                    .filter(all -> all.size() == list.items().size());
        });
    }

    /** A list, or one entry alone. */
    static <T> Reading<List<T>> oneOrList(Reading<T> entry) {
        Reading<List<T>> list = listOf(entry);
        return (node, complaints) ->
                node instanceof Node.Scalar ? entry.read(node, complaints).map(List::of) : list.read(node, complaints);
    }

    /** A mapping whose keys are the user's own words, in the order of the file. */
    static <K, V> Reading<Map<K, V>> mapOf(Reading<K> key, Reading<V> value) {
        return shaped(Node.Mapping.class, "a group of keys is wanted", (mapping, complaints) -> {
            Map<K, V> values = new LinkedHashMap<>();
            for (Node.Entry entry : mapping.entries().values()) {
                Optional<K> name = key.read(entry.key(), complaints);
                Optional<V> held = value.read(entry.value(), complaints);
                if (name.isPresent() && held.isPresent() && values.put(name.get(), held.get()) != null) {
                    complaints.at(
                            entry.key(),
                            Complaints.shown(entry.key().text())
                                    + " is given before in other words; each may stand once");
                }
            }
            return Optional.of(values)
                    .filter(all -> all.size() == mapping.entries().size());
        });
    }

    /** A value that may be written short, as a single word, or in full. */
    static <T> Reading<T> shortOrFull(Reading<? extends T> asScalar, Reading<? extends T> inFull) {
        return (node, complaints) -> (node instanceof Node.Scalar ? asScalar : inFull)
                .read(node, complaints)
                .map(value -> value);
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
        List<String> words = words(choices);
        return shaped(Node.Mapping.class, "a group of keys is wanted", (mapping, complaints) -> {
            List<Choice<T>> held = choices.stream()
                    .filter(choice -> mapping.entries().containsKey(choice.word()))
                    .toList();
            if (held.size() == 1) {
                return held.get(0).read(mapping, complaints);
            }
            complaints.at(mapping, held.isEmpty() ? noneOf(kind, mapping, words) : together(held));
            return Optional.empty();
        });
    }

    /** A mapping whose kind is told by the word after one key, as a material's is by {@code kind:}. */
    static <T> Reading<T> byWord(String key, List<Choice<T>> choices) {
        Reading<String> word = Scalars.word(words(choices));
        return shaped(Node.Mapping.class, "a group of keys is wanted", (mapping, complaints) -> {
            Node.Entry entry = mapping.entries().get(key);
            if (entry == null) {
                complaints.at(
                        mapping,
                        key + " is missing; add " + key + ": with one of " + String.join(", ", words(choices)));
                return Optional.empty();
            }
            return word.read(entry.value(), complaints)
                    .flatMap(found -> choices.stream()
                            .filter(choice -> choice.word().equals(found))
                            .findFirst()
                            .flatMap(choice -> choice.read(mapping, complaints)));
        });
    }

    /** Reads nodes of one shape, complains of others, and passes over what has been complained of already. */
    static <N extends Node, T> Reading<T> shaped(Class<N> shape, String wanted, ShapedReading<N, T> reading) {
        return (node, complaints) -> {
            if (shape.isInstance(node)) {
                return reading.read(shape.cast(node), complaints);
            }
            if (!(node instanceof Node.Flawed)) {
                complaints.at(node, found(node) + " stands here; " + wanted);
            }
            return Optional.empty();
        };
    }

    private static String found(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return "a single value " + Complaints.shown(scalar.text());
        }
        return node instanceof Node.Sequence ? "a list" : "a group of keys";
    }

    /** A reading of nodes that are known to be of one shape. */
    @FunctionalInterface
    interface ShapedReading<N extends Node, T> {
        Optional<T> read(N node, Complaints complaints);
    }

    private static List<String> words(List<? extends Choice<?>> choices) {
        return choices.stream().map(Choice::word).toList();
    }

    private static String noneOf(String kind, Node.Mapping mapping, List<String> words) {
        Optional<String> meant = mapping.entries().keySet().stream()
                .flatMap(key -> Nearest.of(key, words).stream())
                .findFirst();
        return "no key tells what " + kind + " this is; "
                + meant.map(Complaints::didYouMean).orElse("") + "one of these is wanted: " + String.join(", ", words);
    }

    private static String together(List<? extends Choice<?>> held) {
        return held.stream().map(Choice::word).collect(Collectors.joining(" and "))
                + " stand together; only one of them is accepted";
    }
}
