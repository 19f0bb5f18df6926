package laminate.print;

/**
 * How a printer marks a line that stands out. Lines are measured before they are marked, so a mark may be an escape
 * sequence of a terminal.
 */
public interface Style {

    /** No marks: for files, pipes and whoever asks for no colour. */
    Style PLAIN = (mark, line) -> line;

    /** What a line is. */
    enum Mark {
        /** A heading. */
        HEADING,
        /** The heading of a table. */
        COLUMNS,
        /** A sum. */
        TOTAL,
        /** Something to mind. */
        CAUTION
    }

    /**
     * Marks a line.
     *
     * @param mark what the line is
     * @param line the line, already laid out
     * @return the line with its mark
     */
    String apply(Mark mark, String line);
}
