package laminate.unit;

import java.util.Locale;

/**
 * The number at the beginning of a text, and what stands behind it.
 *
 * <p>A number is a decimal as JSON knows it, with a plus sign allowed: sign, digits without a leading zero, point and
 * digits, exponent. Whatever a lenient reader would guess at (octal, digit groups, decimal commas, NaN) is refused.
 *
 * @param text the whole text, for messages
 * @param number the number as written
 * @param start place of the number in the text
 * @param rest what stands behind it, inner runs of spaces reduced to one, outer ones removed; may be empty
 * @param restStart place of the rest in the text
 */
record NumberText(String text, String number, int start, String rest, int restStart) {
    private static final int SHOWN = 40;

    /**
     * Splits a text.
     *
     * @param text any text
     * @param example how the whole should be written, for the message
     * @throws QuantityException if the text does not begin with a number
     */
    static NumberText split(String text, String example) {
        int start = skipSpaces(text, 0);
        if (start == text.length()) {
            throw new QuantityException(
                    "nothing is written here; write a number with its unit, like " + example, start);
        }
        int end = skipExponent(text, skipDecimals(text, skipWhole(text, start, example)));
        refuseDigitGroups(text, end);
        int restStart = skipSpaces(text, end);
        return new NumberText(
                text, text.substring(start, end), start, singleSpaced(text.substring(restStart)), restStart);
    }

    /** The number as a double; refused where it is too large or too small for one. */
    double value() {
        double value = Double.parseDouble(number);
        if (Double.isInfinite(value) || value == 0 && hasSignificantDigit()) {
            throw new QuantityException(
                    quoted(number) + " is beyond what can be computed with; check its exponent", start);
        }
        return value + 0.0; // turns -0 into 0
    }

    boolean hasExponent() {
        return number.indexOf('e') >= 0 || number.indexOf('E') >= 0;
    }

    private boolean hasSignificantDigit() {
        return number.toLowerCase(Locale.ROOT).split("e", 2)[0].chars().anyMatch(c -> c >= '1' && c <= '9');
    }

    /** The text in quotes, shortened and without control characters, so that a message stays one line. */
    static String quoted(String text) {
        String shown = text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
        StringBuilder line = new StringBuilder("\"");
        shown.chars().forEach(c -> line.append(Character.isISOControl(c) ? '\uFFFD' : (char) c));
        return line.append('"').toString();
    }

    private static int skipWhole(String text, int start, String example) {
        int first = start + (hasAny(text, start, "+-") ? 1 : 0);
        int end = skipDigits(text, first);
        if (hasAny(text, start, "\u2212\u2013")) {
            throw new QuantityException(quoted(text) + " has a typographic minus; write a plain hyphen, -", start);
        }
        if (hasAny(text, first, ".") && hasDigit(text, first + 1)) {
            throw new QuantityException(quoted(text) + " begins with a point; write 0 before it", first);
        }
        if (end == first) {
            throw new QuantityException(
                    quoted(text) + " does not begin with a number; write it like " + example, first);
        }
        if (end - first > 1 && text.charAt(first) == '0') {
            throw new QuantityException(
                    quoted(text) + " begins with 0; write the number without the leading zero", first);
        }
        return end;
    }

    private static int skipDecimals(String text, int point) {
        if (!hasAny(text, point, ".")) {
            return point;
        }
        if (!hasDigit(text, point + 1)) {
            throw new QuantityException(
                    quoted(text) + " has no digit after its point; write one or leave the point out", point);
        }
        return skipDigits(text, point + 1);
    }

    private static int skipExponent(String text, int start) {
        if (!hasAny(text, start, "eE")) {
            return start;
        }
        int digits = start + (hasAny(text, start + 1, "+-") ? 2 : 1);
        return hasDigit(text, digits) ? skipDigits(text, digits) : start;
    }

    private static void refuseDigitGroups(String text, int end) {
        if (hasAny(text, end, ",")) {
            throw new QuantityException(
                    quoted(text) + " has a comma; write a decimal point, as in 0.45, and no thousands separators", end);
        }
        if (hasAny(text, end, "_'")) {
            throw new QuantityException(quoted(text) + " has separators in its number; write the digits alone", end);
        }
        if (hasAny(text, end, ".")) {
            throw new QuantityException(quoted(text) + " has a second point; write one decimal point", end);
        }
    }

    private static boolean hasAny(String text, int at, String characters) {
        return at < text.length() && characters.indexOf(text.charAt(at)) >= 0;
    }

    private static boolean hasDigit(String text, int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    private static int skipDigits(String text, int from) {
        int at = from;
        while (hasDigit(text, at)) {
            at++;
        }
        return at;
    }

    private static int skipSpaces(String text, int from) {
        int at = from;
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** Word processors put no-break and thin spaces before a unit; they count as spaces too. */
    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    private static String singleSpaced(String text) {
        StringBuilder spaced = new StringBuilder(text.length());
        for (char c : text.toCharArray()) {
            if (!isSpace(c)) {
                spaced.append(c);
            } else if (spaced.length() > 0 && spaced.charAt(spaced.length() - 1) != ' ') {
                spaced.append(' ');
            }
        }
        return spaced.toString().stripTrailing();
    }
}
