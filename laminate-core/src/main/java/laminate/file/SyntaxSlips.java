package laminate.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Says in a user's words what the YAML scanner found wrong. The scanner's problem mark is where it noticed; where the
 * slip lies further up (a quote never closed), its context mark is the place to point at.
 */
final class SyntaxSlips {

    /**
     * A kind of slip.
     *
     * @param problem a part of the scanner's own words for it
     * @param pointsBack whether the slip lies where the scanner began rather than where it noticed
     * @param message what to tell the user
     */
    private record Slip(String problem, boolean pointsBack, Function<SyntaxSlips, String> message) {}

    /** The first that fits tells; the last fits always. */
    private static final List<Slip> SLIPS = List.of(
            new Slip("found character", false, SyntaxSlips::badStart),
            new Slip(
                    "found unexpected end of stream",
                    true,
                    slip -> "the quote opened here is never closed; end the text with the same quote"),
            new Slip(
                    "found unknown escape character",
                    false,
                    slip -> "after \\ in double quotes only YAML's escapes are accepted; write \\\\ for a \\ itself"),
            new Slip(
                    "could not find expected ':'",
                    true,
                    slip -> "this line lacks ':'; 'key: value' or '- entry' is accepted"),
            new Slip(
                    "unexpected character found",
                    true,
                    slip -> "anchors (&) and aliases (*) are not accepted; put text with & or * in front in quotes"),
            new Slip("mapping values are not allowed", false, SyntaxSlips::strayColon),
            new Slip("expected ',' or", false, SyntaxSlips::unclosed),
            new Slip(
                    "expected <block end>, but found ':'",
                    false,
                    slip -> "a key is missing before ':'; write 'key: value'"),
            new Slip("expected <block end>", false, SyntaxSlips::misaligned),
            new Slip(
                    "expected the node content",
                    false,
                    slip -> "a value cannot begin with " + slip.written() + "; put text in quotes"),
            new Slip(
                    "<document start>",
                    false,
                    slip -> "more text follows the end of the document; a file holds one document"),
            new Slip(
                    "",
                    false,
                    slip -> "a part of this line is no 'key: value' and no '- entry'; put text with unusual "
                            + "characters in quotes"));

    private final MarkedYAMLException slip;
    private final SourceText source;
    private final String problem;

    private SyntaxSlips(MarkedYAMLException slip, SourceText source) {
        this.slip = slip;
        this.source = source;
        this.problem = Optional.ofNullable(slip.getProblem()).orElse("");
    }

    /**
     * Complains of what ended the reading.
     *
     * @param last where the parser stood
     */
    static void complain(JsonProcessingException e, Position last, SourceText source, Complaints complaints) {
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            new SyntaxSlips(marked, source).complain(complaints);
        } else if (e instanceof StreamConstraintsException) {
            complaints.at(
                    last,
                    "lists and groups lie deeper in each other than " + YamlTree.DEEPEST + "; no file needs that");
        } else {
            complaints.at(
                    last,
                    "a key must be a single text; lists, groups and aliases (*) are accepted as values "
                            + "only, and text with * in front in quotes");
        }
    }

    private void complain(Complaints complaints) {
        int line = slip.getProblemMark().getLine() + 1;
        String before = source.line(line);
        String indent =
                before.substring(0, before.length() - before.stripLeading().length());
        int tab = indent.indexOf('\t');
        if (tab >= 0) {
            complaints.at(new Position(source.name(), line, tab + 1), "a tab indents this line; use spaces");
        } else {
            explain(complaints);
        }
    }

    private void explain(Complaints complaints) {
        Slip known = SLIPS.stream()
                .filter(candidate -> problem.contains(candidate.problem()))
                .findFirst()
                .orElseThrow();
        complaints.at(
                known.pointsBack() ? begun() : position(slip.getProblemMark()),
                known.message().apply(this));
    }

    /** Where the thing began that the scanner could not finish. */
    private Position begun() {
        return position(Optional.ofNullable(slip.getContextMark()).orElse(slip.getProblemMark()));
    }

    private String badStart() {
        return written().equals("'\t'")
                ? "a tab stands before this value; use a space"
                : "a value cannot begin with " + written() + "; put the text in quotes";
    }

    private String strayColon() {
        return lineBeforeProblem().contains(": ")
                ? "a second ': ' stands in this line; put text that holds ': ' in quotes"
                : "this line is indented as if it went on with the one above; indent it like its neighbours";
    }

    private String unclosed() {
        String closing = problem.contains("']'") ? "]" : "}";
        String opening = closing.equals("]") ? "[" : "{";
        return String.format(
                Locale.ROOT,
                "the '%s' of line %d, column %d is still open here; ',' or '%s' is accepted",
                opening,
                begun().line(),
                begun().column(),
                closing);
    }

    private String misaligned() {
        return lineBeforeProblem().isBlank()
                ? "this line does not stand under its neighbours; indent the entries of a list, or the keys of a group, alike"
                : "text follows a finished value; quote the whole value, or begin a new line";
    }

    private String lineBeforeProblem() {
        Mark mark = slip.getProblemMark();
        String line = source.line(mark.getLine() + 1);
        int column = Math.min(mark.getColumn(), line.codePointCount(0, line.length()));
        return line.substring(0, line.offsetByCodePoints(0, column));
    }

    /** The character at the problem mark, in quotes. */
    private String written() {
        int index = source.index(slip.getProblemMark().getIndex());
        return index < source.text().length()
                ? "'" + Character.toString(source.text().codePointAt(index)) + "'"
                : "the end of the file";
    }

    private Position position(Mark mark) {
        return new Position(source.name(), mark.getLine() + 1, mark.getColumn() + 1);
    }
}
