package laminate.file;

import java.util.Comparator;

/**
 * One thing that is wrong in an input file, said so that the user can mend it from the message alone.
 *
 * @param file the file's name as the user gave it
 * @param line the line, counted from 1, or 0 where the file as a whole is meant
 * @param column the character of the line, counted from 1 in Unicode code points, or 0 where the whole file is meant
 * @param message "what is wrong; what is accepted", without a full stop
 */
public record Complaint(String file, int line, int column, String message) implements Comparable<Complaint> {

    private static final Comparator<Complaint> ORDER = Comparator.comparing(Complaint::file)
            .thenComparingInt(Complaint::line)
            .thenComparingInt(Complaint::column)
            .thenComparing(Complaint::message);

    /**
     * Checks that the complaint says something about some file.
     *
     * @param file the file's name
     * @param line the line, or 0
     * @param column the column, or 0
     * @param message the message
     * @throws IllegalArgumentException if the file or the message is blank, or the line or column negative
     */
    public Complaint {
        if (file.isBlank() || message.isBlank() || line < 0 || column < 0) {
            throw new IllegalArgumentException("not a complaint: " + file + ":" + line + ":" + column + ": " + message);
        }
    }

    /** Orders by file, line, column, message. */
    @Override
    public int compareTo(Complaint other) {
        return ORDER.compare(this, other);
    }

    /**
     * Gives {@code file:line:column: message}, the form that editors make a link of; {@code file: message} where the
     * file as a whole is meant.
     */
    @Override
    public String toString() {
        return line == 0 ? file + ": " + message : file + ":" + line + ":" + column + ": " + message;
    }
}
