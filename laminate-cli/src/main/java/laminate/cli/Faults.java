package laminate.cli;

import java.util.LinkedHashSet;
import java.util.Set;
import laminate.file.InputException;

/** All that is wrong in the files of a command, each thing once. */
final class Faults {
    private final Set<String> lines = new LinkedHashSet<>();

    /**
     * Adds what is wrong.
     *
     * @param place where it is, with which each line begins; a reader of files tells it itself
     */
    void add(String place, RuntimeException wrong) {
        for (String line : wrong.getMessage().split("\\R")) {
            lines.add(wrong instanceof InputException ? line : place + line);
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
