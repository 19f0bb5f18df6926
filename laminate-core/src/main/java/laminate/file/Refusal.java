package laminate.file;

/**
 * Thrown while a value is made of others that do not go together, to point at the one to mend rather than at the whole.
 * It becomes a complaint and never leaves the package.
 */
final class Refusal extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient Node node;

    Refusal(Node node, String message) {
        super(message);
        this.node = node;
    }

    Node node() {
        return node;
    }
}
