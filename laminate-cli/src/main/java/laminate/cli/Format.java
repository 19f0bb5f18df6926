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

    /** The word on the command line, which messages list. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
