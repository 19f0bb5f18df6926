package laminate.file;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown once, after an input has been read to its end, with everything that is wrong in it. */
public final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Records are not serializable by themselves; a deserialised exception keeps its message. */
    private final transient List<Complaint> complaints;

    /**
     * Gathers complaints into one exception, whose message has a line for each.
     *
     * @param complaints all that is wrong, at least one, in any order
     * @throws IllegalArgumentException if there is none
     */
    public InputException(List<Complaint> complaints) {
        super(complaints.stream().sorted().distinct().map(Complaint::toString).collect(Collectors.joining("\n")));
        if (complaints.isEmpty()) {
            throw new IllegalArgumentException("an input without complaints is not an exception");
        }
        this.complaints = complaints.stream().sorted().distinct().toList();
    }

    /**
     * Gives all complaints.
     *
     * @return the complaints in the order of files, lines and columns, without repeats; empty only if the exception has
     *     been serialised on its way here, when the message alone tells them
     */
    public List<Complaint> complaints() {
        return complaints == null ? List.of() : complaints;
    }
}
