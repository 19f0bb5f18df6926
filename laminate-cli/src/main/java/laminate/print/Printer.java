package laminate.print;

import java.io.IOException;
import java.util.List;

/**
 * Prints results in one format.
 *
 * @param <T> what is printed: an estimate, a check
 */
public interface Printer<T> {

    /**
     * Prints results, one after the other.
     *
     * @param results the results
     * @param out takes the text
     * @throws IOException if that fails
     */
    void print(List<T> results, Appendable out) throws IOException;
}
