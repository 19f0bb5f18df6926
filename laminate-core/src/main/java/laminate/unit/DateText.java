package laminate.unit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * Days and times of day as files and command lines write them. {@link LocalDate#parse(CharSequence)} reads the same, but
 * makes its formatters first, for which a small job would wait longer than for its price list.
 */
public final class DateText {
    private static final String DAY = "dddd-dd-dd";

    private DateText() {}

    /**
     * Reads a day of the calendar, ISO 8601 extended format with a year of four digits.
     *
     * @param text for example "2026-01-15"
     * @return the day
     * @throws DateTimeException if the text is no day
     */
    public static LocalDate day(String text) {
        require(text, DAY);
        return LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10));
    }

    /**
     * Reads a time of day in hours and minutes.
     *
     * @param text for example "08:00" or "8:00"
     * @return the time
     * @throws DateTimeException if the text is no time of day
     */
    public static LocalTime timeOfDay(String text) {
        int colon = text.indexOf(':');
        require(text, colon == 1 ? "d:dd" : "dd:dd");
        return LocalTime.of(number(text, 0, colon), number(text, colon + 1, text.length()));
    }

    /** A form is written with d for a digit; every other sign stands for itself. */
    private static void require(String text, String form) {
        boolean fits = text.length() == form.length();
        for (int i = 0; fits && i < form.length(); i++) {
            char c = text.charAt(i);
            fits = form.charAt(i) == 'd' ? c >= '0' && c <= '9' : c == form.charAt(i);
        }
        if (!fits) {
            throw new DateTimeException(text + " is not of the form " + form.replace('d', '0'));
        }
    }

    private static int number(String text, int from, int to) {
        return Integer.parseInt(text.substring(from, to));
    }
}
