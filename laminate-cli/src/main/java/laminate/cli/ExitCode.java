package laminate.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the program tells the shell when it ends. Scripts rely on these numbers. */
final class ExitCode {

    /** The work is done. */
    static final int DONE = 0;

    /** The input cannot be used: a file is missing, or wrong. Also a fault of the program itself. */
    static final int UNUSABLE_INPUT = 1;

    /** Wrong usage: an unknown command or option, or one that is missing. */
    static final int WRONG_USAGE = 2;

    /** The input is sound, but a requirement that it sets itself is not met. */
    static final int REQUIREMENT_NOT_MET = 3;

    private ExitCode() {}

    /** What the codes mean to a command whose input may set requirements, for its help. */
    static Map<String, String> meanings(String done, String unusable, String notMet) {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put("  " + DONE, done);
        meanings.put("  " + UNUSABLE_INPUT, unusable);
        meanings.put("  " + WRONG_USAGE, "wrong usage");
        meanings.put("  " + REQUIREMENT_NOT_MET, notMet);
        return meanings;
    }
}
