package laminate.file;

/**
 * A value with the place where it stands, for complaints that come only when it meets another value.
 *
 * @param value the value
 * @param node where it stands
 */
record Located<T>(T value, Node node) {

    /** The reading that remembers the place. */
    static <T> Reading<Located<T>> of(Reading<T> reading) {
        return (node, complaints) -> reading.read(node, complaints).map(value -> new Located<>(value, node));
    }
}
