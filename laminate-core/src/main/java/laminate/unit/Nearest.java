package laminate.unit;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that a mistyped one was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /**
     * The known word nearest to the given one, if it is near enough to be worth a "did you mean".
     *
     * <p>The distance is that of Damerau and Levenshtein in its restricted form (optimal string alignment): letters
     * inserted, removed, replaced, or exchanged with their neighbour, no letter touched twice. Case is ignored at first
     * and breaks ties; the order of the known words breaks what ties remain. Near enough is a third of the length,
     * rounded: 1 for a word of 2 to 4 letters, 2 for 5 to 7, and nothing but another case for a single letter.
     *
     * @param word the word as it was written
     * @param known the words that would be accepted, in an order that is always the same
     * @return the nearest, or empty if none is near enough
     */
    public static Optional<String> of(String word, Collection<String> known) {
        int limit = (word.length() + 1) / 3;
        String folded = word.toLowerCase(Locale.ROOT);
        String best = null;
        int bestScore = Integer.MAX_VALUE;
        for (String candidate : known) {
            if (Math.abs(candidate.length() - word.length()) > limit) {
                continue;
            }
            int distance = distance(folded, candidate.toLowerCase(Locale.ROOT));
            int score = distance * (word.length() + limit + 1) + differingCase(word, candidate);
            if (distance <= limit && score < bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int differingCase(String word, String candidate) {
        int differing = 0;
        for (int i = 0; i < Math.min(word.length(), candidate.length()); i++) {
            differing += word.charAt(i) == candidate.charAt(i) ? 0 : 1;
        }
        return differing;
    }

    /** Row by row over the table of distances between the beginnings of both words; three rows suffice. */
    static int distance(String a, String b) {
        int[] beforePrevious = new int[b.length() + 1];
        int[] previous = new int[b.length() + 1];
        int[] current = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            current[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] spare = beforePrevious;
            beforePrevious = previous;
            previous = current;
            current = spare;
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(replaced, 1 + Math.min(previous[j], current[j - 1]));
                if (exchanged(a, i, b, j)) {
                    current[j] = Math.min(current[j], beforePrevious[j - 2] + 1);
                }
            }
        }
        return current[b.length()];
    }

    private static boolean exchanged(String a, int i, String b, int j) {
        return i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    }
}
