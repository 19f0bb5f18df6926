package laminate.file;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import laminate.unit.Dimension;
import laminate.unit.Money;
import laminate.unit.Nearest;
import laminate.unit.Quantity;
import laminate.unit.UnitPrice;

/** Readings of single values. Quoted and plain text are the same here. */
final class Scalars {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]{1,4})?");
    private static final Pattern WHOLE_NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");
    private static final Pattern ID = Pattern.compile("[a-z0-9]+([-.][a-z0-9]+)*");
    private static final Map<String, String> TRUTHS =
            Map.of("yes", "true", "on", "true", "true", "true", "no", "false", "off", "false", "false", "false");

    private Scalars() {}

    /** Any text but an empty one. */
    static Reading<String> text() {
        return Reading.shaped(Node.Scalar.class, "a single value is wanted", (scalar, complaints) -> {
            if (scalar.text().isBlank()) {
                complaints.at(scalar, "the text is empty; at least one letter is wanted");
                return Optional.empty();
            }
            return Optional.of(scalar.text().strip());
        });
    }

    /** A name by which a result is told from others, so that it is taken only once. */
    static Reading<String> name(Set<String> taken) {
        return text().map(name ->
                accepted(name, taken.add(name), "is taken by another before it; a name of its own for each is wanted"));
    }

    /** The name by which a material or a schedule is called. */
    static Reading<String> id() {
        return id(text -> "");
    }

    /** The same, with a hint at what was meant for a text that is no id. */
    static Reading<String> id(UnaryOperator<String> hint) {
        return text().map(text -> {
            if (ID.matcher(text).matches()) {
                return text;
            }
            throw new IllegalArgumentException(Complaints.shown(text) + " is no id; " + hint.apply(text)
                    + "lower-case letters and digits joined by hyphens are accepted, as in mat-300");
        });
    }

    /** One of several words, exactly as given. */
    static Reading<String> word(List<String> words) {
        return text().map(text -> {
            if (words.contains(text)) {
                return text;
            }
            throw new IllegalArgumentException(Complaints.shown(text) + " is not known; "
                    + Nearest.of(text, words).map(Complaints::didYouMean).orElse("") + "accepted: "
                    + String.join(", ", words));
        });
    }

    /** One of several values, each with its word. */
    static <E> Reading<E> oneOf(Function<? super E, String> word, E[] values) {
        Map<String, E> byWord = Stream.of(values).collect(Collectors.toMap(word, value -> value));
        return word(Stream.of(values).map(word).toList()).map(byWord::get);
    }

    /** A number with its unit, in SI. */
    static Reading<Double> quantity(Dimension dimension) {
        return plain().map(text -> Quantity.parse(text, dimension));
    }

    /** A number with its unit, in SI and within a range. */
    static Reading<Double> quantity(Dimension dimension, Bounds range) {
        return range.limit(quantity(dimension));
    }

    /** A bare decimal number; what YAML or a compiler would read in a base of its own is refused. */
    static Reading<Double> number() {
        return plain().map(Scalars::decimal);
    }

    /**
     * The value of a bare decimal number.
     *
     * @throws IllegalArgumentException if the text is none
     */
    static double decimal(String text) {
        accepted(text, NUMBER.matcher(text).matches(), "is not a number; " + decimalHint(text) + " is accepted");
        double value = Double.parseDouble(text);
        accepted(text, Double.isFinite(value), "is too large; a number below 1e308 is accepted");
        return value;
    }

    /** A bare decimal number within a range. */
    static Reading<Double> number(Bounds range) {
        return range.limit(number());
    }

    /** How often or how many: a whole number from 1. */
    static Reading<Integer> count() {
        return plain().map(text -> {
            boolean whole = WHOLE_NUMBER.matcher(text).matches() && !text.equals("0");
            accepted(text, whole, "is not a count; a whole number from 1 to 999999999 is accepted");
            return Integer.valueOf(text);
        });
    }

    /** How many, where more than a thousandfold is surely a slip: the product of several stays countable. */
    static Reading<Integer> pieces() {
        return wholeNumber(1, 10_000);
    }

    /** A whole number of a range that begins at 1 or later. */
    static Reading<Integer> wholeNumber(int from, int to) {
        return plain().map(text -> {
            int value = WHOLE_NUMBER.matcher(text).matches() ? Integer.parseInt(text) : 0;
            accepted(
                    text,
                    value >= from && value <= to,
                    "is outside; a whole number from " + from + " to " + to + " is accepted");
            return value;
        });
    }

    /** A sum of money, in the currency of the price list if there is one. */
    static Reading<Money> money(Optional<String> currency) {
        return plain().map(Money::parse).map(sum -> {
            currency.ifPresent(wanted -> checkCurrency(sum.currency(), wanted));
            return sum;
        });
    }

    /** A price per kg, m² and so on, in the currency of the price list if there is one. */
    static Reading<UnitPrice> price(Optional<String> currency) {
        return plain().map(UnitPrice::parse).map(price -> {
            currency.ifPresent(wanted -> checkCurrency(price.currency(), wanted));
            return price;
        });
    }

    private static void checkCurrency(String found, String wanted) {
        if (!found.equals(wanted)) {
            throw new IllegalArgumentException(
                    "this is in " + found + " and the price list in " + wanted + "; one currency is accepted");
        }
    }

    /** True or false. */
    static Reading<Boolean> flag() {
        return plain().map(text -> {
            String meant = Optional.ofNullable(TRUTHS.get(text.toLowerCase(Locale.ROOT)))
                    .map(Complaints::didYouMean)
                    .orElse("");
            boolean known = text.equals("true") || text.equals("false");
            accepted(text, known, "is neither true nor false; " + meant + "accepted: true, false");
            return text.equals("true");
        });
    }

    /** The text unstripped, so that an offset in it is a place in the file. */
    private static Reading<String> plain() {
        return Reading.shaped(
                Node.Scalar.class,
                "a single value is wanted",
                (scalar, complaints) -> text().read(scalar, complaints).map(text -> scalar.text()));
    }

    private static String accepted(String text, boolean ok, String otherwise) {
        if (!ok) {
            throw new IllegalArgumentException(Complaints.shown(text) + " " + otherwise);
        }
        return text;
    }

    private static String decimalHint(String text) {
        String mended = text.strip()
                .replace(',', '.')
                .replace("_", "")
                .replaceFirst("^([+-]?)0+(?=[0-9])", "$1")
                .replaceFirst("^([+-]?)\\.", "$10.")
                .replaceFirst("\\.$", "");
        return NUMBER.matcher(mended).matches() ? mended : "a bare decimal number such as 0.28";
    }
}
