package laminate.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.unit.Nearest;

/**
 * What was probably meant by a text that is no known id.
 *
 * @param ids every id that there is
 * @param isRight whether the material of an id would do here; asked of the few that are near only
 */
record IdHints(List<String> ids, Predicate<String> isRight) {
    private static final int MOST_SHOWN = 3;
    private static final Pattern TIMES = Pattern.compile("([0-9]+) *[x×*] *(.+)");
    private static final Pattern AMOUNT = Pattern.compile("[0-9][0-9.,]* *(%|m[lL]/kg)");

    /** What the trade also calls the first word of an id. */
    private static final Map<String, String> OTHER_WORDS = Map.of("csm", "mat", "wr", "roving");

    /** The hint, ready to stand before what is accepted; empty text where none can be given. */
    String of(String text) {
        if (AMOUNT.matcher(text).matches()) {
            return "an amount stands beside its id, as in {id: mekp, amount: " + text + "}; ";
        }
        Matcher times = TIMES.matcher(text);
        if (times.matches()) {
            String id = nearest(folded(times.group(2))).orElse("mat-300");
            return "write how often beside it, as in {reinforcement: " + id + ", times: " + times.group(1) + "}; ";
        }
        String id = folded(text);
        List<String> meant = nearest(id).map(List::of).orElseGet(() -> containing(id));
        return meant.isEmpty() ? "" : Complaints.didYouMean(String.join(" or ", meant));
    }

    /** As an id is written: small letters, hyphens, no quotes, the library's word for what has several. */
    private static String folded(String text) {
        String id = text.toLowerCase(Locale.ROOT).replaceAll("[\"'“”„‘’]", "").replaceAll("[\\s_]+", "-");
        return Stream.of(id.split("-"))
                .map(word -> OTHER_WORDS.getOrDefault(word, word))
                .collect(Collectors.joining("-"));
    }

    private Optional<String> nearest(String id) {
        List<String> candidates = new ArrayList<>(ids);
        Optional<String> near = Nearest.of(id, candidates);
        while (near.filter(found -> !isRight.test(found)).isPresent()) {
            candidates.remove(near.get());
            near = Nearest.of(id, candidates);
        }
        return near;
    }

    /** Ids of which the text is a whole word or several: ortho of polyester-ortho. */
    private List<String> containing(String part) {
        return ids.stream()
                .filter(id -> ("-" + id + "-").contains("-" + part + "-"))
                .filter(isRight)
                .limit(MOST_SHOWN)
                .toList();
    }
}
