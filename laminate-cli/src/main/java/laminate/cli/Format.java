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

    /** Reads one of some formats. */
    static Words<Format> words(Format... formats) {
        return new Words<>(formats, format -> format.name().toLowerCase(Locale.ROOT));
    }
}
