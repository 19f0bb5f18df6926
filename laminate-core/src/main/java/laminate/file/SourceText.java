package laminate.file;

import java.util.List;

/** The text of a file, addressed by the code points that the YAML scanner counts. */
final class SourceText {

    private final String name;
    private final String text;
    private final boolean isPlain;
    private int codePoint;
    private int index;

    SourceText(String name, String text) {
        this.name = name;
        // A byte order mark is no part of the text: editors on Windows write one, and it must not shift the columns.
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
        isPlain = this.text.codePointCount(0, this.text.length()) == this.text.length();
    }

    String name() {
        return name;
    }

    String text() {
        return text;
    }

    /** The index of a code point. Asked in rising order, all calls together take one pass over the text. */
    int index(int wanted) {
        if (isPlain) {
            return wanted;
        }
        if (wanted < codePoint) {
            codePoint = 0;
            index = 0;
        }
        index = text.offsetByCodePoints(index, wanted - codePoint);
        codePoint = wanted;
        return index;
    }

    /** The character at an index, or a blank at the end of the text. */
    char at(int index) {
        return index < text.length() ? text.charAt(index) : ' ';
    }

    /** The last character before an index that is no blank, or a blank if there is none in the line. */
    char before(int index) {
        int at = index - 1;
        while (at >= 0 && text.charAt(at) == ' ') {
            at--;
        }
        return at < 0 ? ' ' : text.charAt(at);
    }

    /** The text of a line, without its end; empty past the last one. Splits the whole text: for complaints only. */
    String line(int line) {
        List<String> lines = text.lines().skip(Math.max(0, line - 1L)).limit(1).toList();
        return lines.isEmpty() ? "" : lines.get(0);
    }

    /** The place of the character at an index, found by counting: for complaints only. */
    Position position(int index) {
        String before = text.substring(0, index);
        int lines = (int) (before + "|").lines().count();
        int lineStart = Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1;
        return new Position(name, lines, before.codePointCount(lineStart, before.length()) + 1);
    }
}
