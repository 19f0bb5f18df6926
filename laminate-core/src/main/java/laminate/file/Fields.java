package laminate.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.unit.Nearest;

/**
 * The fields of one mapping while it is read. Each is asked for once and answered with a {@link Promise}, so that reading
 * goes on to the end whatever is wrong; {@link #requireSound} ends it unless every field is sound. A reader therefore is a
 * list of fields and a constructor call, and cannot make a half-valid object:
 *
 * <pre>{@code
 * static final Reading<Trim> TRIM = mapping(Keys.TRIM, in -> {
 *     var edge = in.required("edge", quantity(LENGTH, POSITIVE));
 *     var width = in.required("width", quantity(LENGTH, POSITIVE));
 *     in.requireSound();
 *     return new Trim(edge.get(), width.get());
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
    <T> Promise<T> required(String key, Reading<T> reading) {
        Optional<Node> node = ask(key);
        if (node.isEmpty()) {
            complainOfMissing(
                    List.of(key), "this " + keys.kind() + " has no " + key + "; add " + key + ": with its value");
            return Promise.broken();
        }
        return new Promise<>(read(node.get(), reading));
    }

    /** The value of a key that may be left out. */
    <T> Promise<Optional<T>> optional(String key, Reading<T> reading) {
        Optional<Node> node = ask(key);
        if (node.isEmpty()) {
            return Promise.of(Optional.empty());
        }
        Optional<T> value = read(node.get(), reading);
        return value.isPresent() ? Promise.of(value) : Promise.broken();
    }

    /** The value of a key that may be left out, or what it is then. */
    <T> Promise<T> orElse(String key, Reading<T> reading, T otherwise) {
        Optional<Node> node = ask(key);
        return node.isEmpty() ? Promise.of(otherwise) : new Promise<>(read(node.get(), reading));
    }

    /** The value of the one key that stands out of several. */
    <T> Promise<T> exactlyOne(List<Reading.Choice<T>> choices) {
        if (!anyStands(choices)) {
            List<String> words = Reading.Choice.words(choices);
            complainOfMissing(
                    words,
                    "this " + keys.kind() + " has none of " + String.join(", ", words)
                            + "; exactly one of them is wanted");
        }
        return new Promise<>(atMostOne(choices).get());
    }

    /** The value of the one key that stands out of several, if one does; empty also where it has been complained of. */
    <T> Promise<Optional<T>> atMostOne(List<Reading.Choice<T>> choices) {
        Optional<T> value = Optional.empty();
        List<String> standing = new ArrayList<>();
        for (Reading.Choice<T> choice : choices) {
            Optional<Node> node = ask(choice.word());
            if (node.isPresent()) {
                standing.add(choice.word());
                Optional<T> read = choice.read(node.get(), complaints);
                sound &= read.isPresent();
                value = value.isPresent() ? value : read;
            }
        }
        if (standing.size() > 1) {
            complaints.at(
                    mapping.entries().get(standing.get(1)).key(),
                    String.join(" and ", standing) + " stand together; only one of them is accepted");
            sound = false;
        }
        return Promise.of(value);
    }

    /** Whether a key stands, be its value sound or not. */
    boolean stands(String key) {
        return mapping.entries().containsKey(key);
    }

    /** Whether one of several keys stands, be its value sound or not. */
    boolean anyStands(List<? extends Reading.Choice<?>> choices) {
        return !Collections.disjoint(
                Reading.Choice.words(choices), mapping.entries().keySet());
    }

    /** A value that is wanted before the whole is made, with its place; whether it is sound counts as for any other. */
    <T> Term<T> stated(String key, Reading<T> reading) {
        Optional<Node> node = ask(key);
        Term<T> term = node.isEmpty() ? Term.nothing() : Term.read(node.get(), reading, complaints);
        sound &= !term.flawed();
        return term;
    }

    /** A value made elsewhere; if it is empty, that has been complained of there. */
    <T> Promise<T> given(Optional<T> value) {
        sound &= value.isPresent();
        return new Promise<>(value);
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

    /** Complains of a mapping that has none of several keys, unless one of them was probably meant by an unknown one. */
    void missing(List<String> wanted, String message) {
        complainOfMissing(wanted, message);
    }

    /** The single value of a key as it is written, if one stands; the key has to be asked for all the same. */
    Optional<String> word(String key) {
        Node.Entry entry = mapping.entries().get(key);
        return entry != null && entry.value() instanceof Node.Scalar scalar
                ? Optional.of(scalar.text())
                : Optional.empty();
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
        Node.Entry entry = mapping.entries().get(key);
        return new Refusal(entry == null ? mapping : entry.value(), message);
    }

    /**
     * Refuses the first key that stands of several, while the whole is made.
     *
     * @throws Refusal at that key
     */
    void refuseAnyOf(List<String> names, String message) {
        for (String key : names) {
            if (mapping.entries().containsKey(key)) {
                throw refusal(key, message);
            }
        }
    }

    /**
     * Ends the reading unless all fields are sound; behind this call every promise is kept.
     *
     * @throws Unsound if something has been complained of
     */
    void requireSound() {
        if (!sound) {
            throw new Unsound();
        }
        requireAllAsked();
    }

    /** Thrown where a whole cannot be made, of which all there is to say has been said; it never leaves the package. */
    static final class Unsound extends RuntimeException {

        private static final long serialVersionUID = 1L;

        Unsound() {
            super("what was read is not sound", null, false, false);
        }
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
        Node.Entry entry = mapping.entries().get(key);
        return entry == null ? Optional.empty() : Optional.of(entry.value());
    }

    private <T> Optional<T> read(Node node, Reading<T> reading) {
        Optional<T> value = reading.read(node, complaints);
        sound &= value.isPresent();
        return value;
    }

    /** A key that was probably meant by an unknown one has been complained of already. */
    private void complainOfMissing(List<String> wanted, String message) {
        if (Collections.disjoint(wanted, meant)) {
            complaints.at(mapping, message);
        }
        sound = false;
    }
}
