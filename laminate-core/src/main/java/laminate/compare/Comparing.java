package laminate.compare;

import java.util.List;

/** Estimates, changes and checks every way to make a part. */
final class Comparing {
    private final CompareOptions options;

    Comparing(CompareOptions options) {
        this.options = options;
    }

    SideBySide compare(List<Candidate> candidates) {
        return new SideBySide(options, List.of(), List.of());
    }
}
