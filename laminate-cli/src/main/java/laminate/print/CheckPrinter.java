package laminate.print;

import java.io.IOException;
import java.util.List;

/** Prints checks in one format. */
public interface CheckPrinter {

    /**
     * Prints checks, one after the other.
     *
     * @param parts the checked parts
     * @param out takes the text
     * @throws IOException if that fails
     */
    void print(List<CheckedPart> parts, Appendable out) throws IOException;
}
