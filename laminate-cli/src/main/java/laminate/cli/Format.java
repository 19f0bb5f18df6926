package laminate.cli;

import java.util.Locale;

/** The formats that results are printed in. */
enum Format {
    /** For reading. */
    TEXT,
    /** For programs. */
    JSON,
    /** For spreadsheets. */
    CSV,
    /** For reports. */
    MARKDOWN;

    /** Reads a format. */
    static Words<Format> words() {
        return new Words<>(values(), format -> format.name().toLowerCase(Locale.ROOT));
    }
}
