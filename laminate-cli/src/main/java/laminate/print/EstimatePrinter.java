package laminate.print;

import java.io.IOException;
import java.util.List;
import laminate.estimate.PartEstimate;

/** Prints estimates in one format. */
public interface EstimatePrinter {

    /**
     * Prints estimates, one after the other.
     *
     * @param estimates the estimates
     * @param out takes the text
     * @throws IOException if that fails
     */
    void print(List<PartEstimate> estimates, Appendable out) throws IOException;
}
