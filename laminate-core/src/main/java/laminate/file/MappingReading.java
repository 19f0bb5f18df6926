package laminate.file;

import java.util.Optional;
import java.util.function.Function;

/** Reads a mapping with its declared keys. */
abstract class MappingReading<T> extends ShapedReading<Node.Mapping, T> {

    private final Keys keys;

    MappingReading(Keys keys) {
        super(Node.Mapping.class);
        this.keys = keys;
    }

    /**
     * Asks for the values, then {@linkplain Fields#requireSound requires} all of them to be sound, and makes the whole of
     * them.
     *
     * @throws Fields.Unsound if something has been complained of
     * @throws IllegalArgumentException if the values do not go together
     */
    abstract T whole(Fields in);

    @Override
    final Optional<T> readShaped(Node.Mapping mapping, Complaints complaints) {
        Fields in = new Fields(mapping, keys, complaints);
        try {
            T made = whole(in);
            in.requireSound();
            return Optional.of(made);
        } catch (Fields.Unsound e) {
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            complaints.at(mapping, e);
            return Optional.empty();
        }
    }

    @Override
    final String wanted() {
        return "a group of keys is wanted, " + keys.aKind() + " starting with " + keys.first() + ":";
    }

    /** A mapping read by a function. */
    static final class Of<T> extends MappingReading<T> {

        private final Function<Fields, T> whole;

        Of(Keys keys, Function<Fields, T> whole) {
            super(keys);
            this.whole = whole;
        }

        @Override
        T whole(Fields in) {
            return whole.apply(in);
        }
    }
}
