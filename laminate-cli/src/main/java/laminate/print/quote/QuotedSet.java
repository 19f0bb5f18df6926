package laminate.print.quote;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.quote.SetQuote;

/**
 * What is quoted together: the mouldings of a project, which share moulds and plugs, or parts each by itself.
 *
 * @param project what the project is called, empty for parts by themselves
 * @param parts the parts, one at least; of a project each counts in its quote what is in a set
 * @param batches the moulds and plugs of each number of sets offered, empty for parts by themselves
 */
public record QuotedSet(Optional<String> project, List<QuotedPart> parts, List<SetQuote.Batch> batches) {

    /**
     * Checks that all of a project is offered in the same numbers of sets.
     *
     * @throws IllegalArgumentException if there is no part, or a part of a project has not an offer for each number of sets
     */
    public QuotedSet {
        Objects.requireNonNull(project, "project");
        parts = List.copyOf(parts);
        batches = List.copyOf(batches);
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a quote of no parts says nothing");
        }
        for (QuotedPart part : parts) {
            int offers = part.quote().offers().size();
            if (project.isPresent() && offers != batches.size()) {
                throw new IllegalArgumentException(
                        part.name() + " has " + offers + " offers for " + batches.size() + " numbers of sets");
            }
        }
    }

    /**
     * Parts that are quoted each by itself.
     *
     * @param parts the parts
     * @return what is quoted
     * @throws IllegalArgumentException if there is none
     */
    public static QuotedSet of(List<QuotedPart> parts) {
        return new QuotedSet(Optional.empty(), parts, List.of());
    }

    /** The currency of all offers of a project. */
    String currency() {
        return parts.get(0).currency();
    }
}
