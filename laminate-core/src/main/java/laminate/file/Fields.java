package laminate.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import laminate.unit.Nearest;

/**
 * The fields of one mapping while it is read. Each is asked for once and answered with a promise, so that reading goes on
 * to the end whatever is wrong; {@link #build} keeps the promises only if every field is sound. A reader therefore is a
 * list of fields and a constructor call, and cannot make a half-valid object:
 *
 * <pre>{@code
 * static final Reading<Trim> TRIM = mapping(Keys.TRIM, in -> {
 *     var edge = in.required("edge", quantity(LENGTH, POSITIVE));
 *     var width = in.required("width", quantity(LENGTH, POSITIVE));
 *     return () -> new Trim(edge.get(), width.get());
 * });
 * }</pre>
 */
final class Fields {

    private final Node.Mapping mapping;
    private final Keys keys;
    private final Complaints complaints;
    private final Set<String> asked = new HashSet<>();
    private final Set<String> meant = new HashSet<>();
    private boolean sound = true;

    Fields(Node.Mapping mapping, Keys keys, Complaints complaints) {
        this.mapping = mapping;
        this.keys = keys;
        this.complaints = complaints;
        for (Node.Entry entry : mapping.entries().values()) {
            if (!keys.names().contains(entry.key().text())) {
                complainOfUnknown(entry);
            }
        }
    }

    private void complainOfUnknown(Node.Entry entry) {
        sound = false;
        Node.Scalar key = entry.key();
        if (entry.value() instanceof Node.Flawed) {
            return;
        }
        List<String> free = keys.names().stream()
                .filter(name -> !mapping.entries().containsKey(name))
                .toList();
        Optional<String> near = Nearest.of(key.text(), free);
        near.ifPresent(meant::add);
        complaints.at(
                key,
                Complaints.shown(key.text()) + " is not a key of " + keys.aKind() + "; "
                        + near.map(Complaints::didYouMean).orElse("") + "accepted: " + String.join(", ", keys.names()));
    }

    /** The value of a key that must stand. */
    <T> Supplier<T> required(String key, Reading<T> reading) {
        Optional<Node> node = ask(key);
        if (node.isEmpty()) {
            complainOfMissing(
                    List.of(key), "this " + keys.kind() + " has no " + key + "; add " + key + ": with its value");
        }
        return promise(node.flatMap(held -> read(held, reading)));
    }

    /** The value of a key that may be left out. */
    <T> Supplier<Optional<T>> optional(String key, Reading<T> reading) {
        Optional<Supplier<T>> value = ask(key).map(held -> promise(read(held, reading)));
        return () -> value.map(Supplier::get);
    }

    /** The value of a key that may be left out, or what it is then. */
    <T> Supplier<T> orElse(String key, Reading<T> reading, T otherwise) {
        Supplier<Optional<T>> value = optional(key, reading);
        return () -> value.get().orElse(otherwise);
    }

    /** The value of the one key that stands out of several. */
    <T> Supplier<T> exactlyOne(List<Reading.Choice<T>> choices) {
        Supplier<Optional<T>> value = atMostOne(choices);
        if (!anyStands(choices)) {
            List<String> words = choices.stream().map(Reading.Choice::word).toList();
            complainOfMissing(
                    words,
                    "this " + keys.kind() + " has none of " + String.join(", ", words)
                            + "; exactly one of them is wanted");
        }
        return () -> promise(value.get()).get();
    }

    /** The value of the one key that stands out of several, if one does. */
    <T> Supplier<Optional<T>> atMostOne(List<Reading.Choice<T>> choices) {
        List<T> values = new ArrayList<>();
        List<String> standing = new ArrayList<>();
        for (Reading.Choice<T> choice : choices) {
            ask(choice.word()).ifPresent(node -> {
                standing.add(choice.word());
                read(node, choice::read).ifPresent(values::add);
            });
        }
        if (standing.size() > 1) {
            complaints.at(
                    mapping.entries().get(standing.get(1)).key(),
                    String.join(" and ", standing) + " stand together; only one of them is accepted");
            sound = false;
        }
        return () -> values.stream().findFirst();
    }

    /** Whether one of several keys stands, be its value sound or not. */
    boolean anyStands(List<? extends Reading.Choice<?>> choices) {
        return choices.stream().map(Reading.Choice::word).anyMatch(mapping.entries()::containsKey);
    }

    /** A value that is wanted before the whole is made, with its place; whether it is sound counts as for any other. */
    <T> Term<T> stated(String key, Reading<T> reading) {
        Term<T> term =
                ask(key).map(node -> Term.read(node, reading, complaints)).orElseGet(Term::nothing);
        sound &= !term.flawed();
        return term;
    }

    /** A value made elsewhere; if it is empty, that has been complained of there. */
    <T> Supplier<T> given(Optional<T> value) {
        sound &= value.isPresent();
        return promise(value);
    }

    /** Notes whether values go together, where that was found elsewhere; if not, that has been complained of there. */
    void agreed(boolean together) {
        sound &= together;
    }

    /** Complains of a key, or of the mapping if the key does not stand, for values that do not go together. */
    void complain(String key, String message) {
        complaints.at(mapping, refusal(key, message));
        sound = false;
    }

    /** Where the mapping stands, for what is wrong with it as a whole. */
    Node node() {
        return mapping;
    }

    /** The collector, for what is read beside the fields. */
    Complaints complaints() {
        return complaints;
    }

    /** Tells that a key has been read by whoever chose this reading by it. */
    void known(String key) {
        ask(key);
    }

    /**
     * A refusal to throw while the whole is made, which points at a key rather than at the whole mapping: for values that
     * do not go together.
     */
    Refusal refusal(String key, String message) {
        return new Refusal(
                Optional.ofNullable(mapping.entries().get(key))
                        .map(Node.Entry::value)
                        .orElse(mapping),
                message);
    }

    /**
     * Refuses the first key that stands of several, while the whole is made.
     *
     * @throws Refusal at that key
     */
    void refuseAnyOf(List<String> names, String message) {
        names.stream().filter(mapping.entries()::containsKey).findFirst().ifPresent(key -> {
            throw refusal(key, message);
        });
    }

    /** Makes the whole if all fields are sound; what its constructor refuses becomes a complaint. */
    <T> Optional<T> build(Supplier<T> make) {
        if (!sound) {
            return Optional.empty();
        }
        requireAllAsked();
        try {
            return Optional.of(make.get());
        } catch (IllegalArgumentException e) {
            complaints.at(mapping, e);
        }
        return Optional.empty();
    }

    /** A declared key that no code asks for would be accepted and forgotten: a slip of ours, not of the user. */
    private void requireAllAsked() {
        for (String key : mapping.entries().keySet()) {
            if (!asked.contains(key)) {
                throw new IllegalStateException("the key " + key + " of " + keys + " is declared but not read");
            }
        }
    }

    private Optional<Node> ask(String key) {
        if (!keys.names().contains(key)) {
            throw new IllegalStateException("the key " + key + " is not declared in " + keys);
        }
        asked.add(key);
        return Optional.ofNullable(mapping.entries().get(key)).map(Node.Entry::value);
    }

    private <T> Optional<T> read(Node node, Reading<T> reading) {
        Optional<T> value = reading.read(node, complaints);
        sound &= value.isPresent();
        return value;
    }

    /** A key that was probably meant by an unknown one has been complained of already. */
    private void complainOfMissing(List<String> wanted, String message) {
        if (wanted.stream().noneMatch(meant::contains)) {
            complaints.at(mapping, message);
        }
        sound = false;
    }

    private static <T> Supplier<T> promise(Optional<T> value) {
        return () -> value.orElseThrow(() -> new IllegalStateException("asked for a value that could not be read"));
    }
}
