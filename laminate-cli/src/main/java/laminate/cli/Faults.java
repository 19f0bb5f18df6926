package laminate.cli;

import java.util.ArrayList;
import java.util.List;
import laminate.file.InputException;

/** All that is wrong in the files of a command, each thing once. */
final class Faults {
    private final List<String> lines = new ArrayList<>();

    /**
     * Adds what is wrong.
     *
     * @param place where it is, with which each line begins; a reader of files tells it itself
     */
    void add(String place, RuntimeException wrong) {
        for (String line : wrong.getMessage().split("\\R")) {
            String told = wrong instanceof InputException ? line : place + line;
            if (!lines.contains(told)) {
                lines.add(told);
            }
        }
    }

    /**
     * Ends if anything is wrong.
     *
     * @throws UnusableInputException with all of it
     */
    void settle() {
        if (!lines.isEmpty()) {
            throw new UnusableInputException(String.join(System.lineSeparator(), lines));
        }
    }
}
