package laminate.file;

import java.util.Iterator;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Characters in a file that nobody sees and that would be read as text. */
final class InvisibleText {

    /** Soft hyphen, zero-width space, line and paragraph separator, word joiner, byte order mark. */
    private static final String INVISIBLE = "\u00AD\u200B\u2028\u2029\u2060\uFEFF";

    private static final char NO_BREAK_SPACE = '\u00A0';

    private static final Pattern NO_BREAK_INDENT = Pattern.compile("[ \\t]*\u00A0");

    private InvisibleText() {}

    /**
     * Complains of characters that no editor shows and that would be read as text or end a line: control characters
     * (those that YAML 1.2, section 5.1, does not count as printable), invisible separators and joiners as they come with
     * pasted text, of all of which the first is named, and no-break spaces that indent.
     *
     * @return whether there are any
     */
    static boolean complain(SourceText source, Complaints complaints) {
        String text = source.text();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ((c < ' ' || c > '~') && c != '\n' && isInvisible(text.codePointAt(i))) {
                complaints.at(
                        source.position(i),
                        String.format(
                                Locale.ROOT,
                                "an invisible character (U+%04X) stands here; only visible text is accepted",
                                text.codePointAt(i)));
                return true;
            }
            i += Character.isHighSurrogate(c) ? 1 : 0;
        }
        return text.indexOf(NO_BREAK_SPACE) >= 0 && complainOfIndent(source, complaints);
    }

    private static boolean complainOfIndent(SourceText source, Complaints complaints) {
        boolean found = false;
        int number = 0;
        for (Iterator<String> lines = source.text().lines().iterator(); lines.hasNext(); ) {
            number++;
            Matcher indent = NO_BREAK_INDENT.matcher(lines.next());
            if (indent.lookingAt()) {
                complaints.at(
                        new Position(source.name(), number, indent.end()),
                        "a no-break space (U+00A0) indents this line; use ordinary spaces");
                found = true;
            }
        }
        return found;
    }

    private static boolean isInvisible(int c) {
        return !isPrintable(c) || INVISIBLE.indexOf(c) >= 0;
    }

    private static boolean isPrintable(int c) {
        return c >= ' ' && c <= '~'
                || c == '\t'
                || c == '\n'
                || c == '\r'
                || c >= 0xA0 && c <= 0xD7FF
                || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }
}
