package laminate.print;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a given width, counted in the columns that a terminal gives each character. */
final class Lines {
    private static final int NARROWEST = 4;
    /** The first combining mark; every character below takes one column. */
    private static final int FIRST_UNUSUAL = 0x300;

    private Lines() {}

    /**
     * The columns that a text takes on a terminal: none for a combining mark, two for an ideograph.
     *
     * @param text text without control characters
     * @return the number of columns
     */
    static int width(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= FIRST_UNUSUAL) {
                return widthOfAny(text);
            }
        }
        return text.length();
    }

    private static int widthOfAny(String text) {
        int width = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            width += width(text.codePointAt(i));
        }
        return width;
    }

    private static int width(int codePoint) {
        if (codePoint < FIRST_UNUSUAL) {
            return 1;
        }
        int type = Character.getType(codePoint);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = Character.isIdeographic(codePoint)
                || codePoint >= 0x1100 && codePoint <= 0x115F
                || codePoint >= 0x3000 && codePoint <= 0x30FF
                || codePoint >= 0xAC00 && codePoint <= 0xD7A3
                || codePoint >= 0xFF01 && codePoint <= 0xFF60
                || codePoint >= 0x1F300 && codePoint <= 0x1FAFF;
        return wide ? 2 : 1;
    }

    /**
     * A text of one line: a name in a file may hold what would move the cursor or change the colour of a terminal.
     *
     * @param text any text
     * @return the text with a space for every control character and every character that turns the direction of writing
     */
    static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            clean.append(isUnprintable(c) ? ' ' : c);
        }
        return clean.toString();
    }

    private static boolean isUnprintable(char c) {
        return c < ' '
                || c >= 0x7F && c < 0xA0
                || c == 0x2028
                || c == 0x2029
                || c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069;
    }

    /**
     * Breaks text at spaces; a word that is too long at its hyphens, and one without in its midst.
     *
     * @param text text of one line
     * @param width the most columns of a line, at least 4
     * @return the lines, at least one
     */
    static List<String> wrap(String text, int width) {
        if (width < NARROWEST) {
            throw new IllegalArgumentException("a line has at least " + NARROWEST + " columns, not " + width);
        }
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words(text)) {
            addWord(word, width, line, lines);
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= text.length(); i++) {
            if (i == text.length() || text.charAt(i) == ' ') {
                if (i > start) {
                    words.add(text.substring(start, i));
                }
                start = i + 1;
            }
        }
        return words;
    }

    private static void addWord(String word, int width, StringBuilder line, List<String> lines) {
        int space = line.length() == 0 ? 0 : 1;
        if (width(line.toString()) + space + width(word) <= width) {
            line.append(space == 0 ? "" : " ").append(word);
            return;
        }
        if (space == 1) {
            lines.add(line.toString());
            line.setLength(0);
        }
        String rest = word;
        while (width(rest) > width) {
            int cut = breakOf(rest, width);
            lines.add(rest.substring(0, cut));
            rest = rest.substring(cut);
        }
        line.append(rest);
    }

    /** Behind the last hyphen that fits, or else where the line is full. */
    private static int breakOf(String word, int width) {
        int used = 0;
        int hyphen = 0;
        int i = 0;
        while (i < word.length()) {
            int codePoint = word.codePointAt(i);
            if (used + width(codePoint) > width) {
                break;
            }
            used += width(codePoint);
            i += Character.charCount(codePoint);
            if (codePoint == '-' || codePoint == '/') {
                hyphen = i;
            }
        }
        return hyphen > 0 ? hyphen : i;
    }

    /** The longest piece that {@link #wrap} leaves whole if it can. */
    static int longestWord(String text) {
        int longest = 0;
        for (String word : words(text)) {
            longest = Math.max(longest, width(word));
        }
        return longest;
    }

    static String padRight(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - width(text))) + text;
    }
}
