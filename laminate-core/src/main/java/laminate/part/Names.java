package laminate.part;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks of names by which results are told apart. */
final class Names {

    private Names() {}

    /** No two things have one name. */
    static void checkDistinct(String things, List<String> names) {
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!seen.add(name)) {
                throw new IllegalArgumentException(
                        "two " + things + " are called " + name + "; a name of its own for each is wanted");
            }
        }
    }
}
