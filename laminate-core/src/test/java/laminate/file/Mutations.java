package laminate.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Slips of many kinds, made at random in a good text. */
final class Mutations {

    static final String[] PIECES = {
        "\t",
        " ",
        "  ",
        "\n",
        "\r",
        "\r\n",
        ":",
        ": ",
        "-",
        "- ",
        "#",
        " #",
        "[",
        "]",
        "{",
        "}",
        ",",
        "'",
        "\"",
        "\\",
        "|",
        ">",
        "&a ",
        "*a",
        "!",
        "!!int ",
        "%",
        "@",
        "`",
        "?",
        "? ",
        "<<: ",
        "---\n",
        "...\n",
        "~",
        "null",
        "\u0000",
        "\u0007",
        "\u0085",
        "\u00A0",
        "\u2028",
        "\u200B",
        "\uFEFF",
        "\uD83D",
        "𝄞",
        "²",
        "0x",
        "010",
        "1_0",
        ".inf",
        "1e999",
        "-",
        "%YAML 1.1\n---\n",
        "\"\\x",
        "\"\\u12",
        "|9\n",
        "!<",
        "=",
        "0b1",
        "0o8",
        "1:30",
        "+",
        "2001-01-01",
        "[[[[",
        "{{{{",
        "kg",
        "m²",
        "%TAG ! x\n"
    };

    private Mutations() {}

    static String mutated(String text, Random random) {
        int at = random.nextInt(text.length() + 1);
        int to = Math.min(text.length(), at + random.nextInt(6));
        return switch (random.nextInt(5)) {
            case 0 -> text.substring(0, at) + text.substring(to);
            case 1 -> text.substring(0, at) + PIECES[random.nextInt(PIECES.length)] + text.substring(at);
            case 2 -> text.substring(0, at) + PIECES[random.nextInt(PIECES.length)] + text.substring(to);
            case 3 -> text.substring(0, to) + text.substring(at);
            default -> linesExchanged(text, random);
        };
    }

    private static String linesExchanged(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return "\n";
        }
        Collections.swap(lines, random.nextInt(lines.size()), random.nextInt(lines.size()));
        return String.join("\n", lines) + "\n";
    }

    /** Exchanges two words of a text, as a user does who confuses keys, ids or values. */
    static String wordsExchanged(String text, Random random) {
        List<String> words = new ArrayList<>(List.of(text.split("(?<=[\\s{}\\[\\],:])|(?=[\\s{}\\[\\],:])")));
        for (int swaps = 1 + random.nextInt(2); swaps > 0; swaps--) {
            int one = random.nextInt(words.size());
            int other = random.nextInt(words.size());
            if (random.nextBoolean()) {
                Collections.swap(words, one, other);
            } else {
                words.set(one, words.get(other));
            }
        }
        return String.join("", words);
    }
}
