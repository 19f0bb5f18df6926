package laminate.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import laminate.unit.Dimension;
import laminate.unit.Money;
import laminate.unit.Nearest;
import laminate.unit.PriceBasis;
import laminate.unit.Quantity;
import laminate.unit.UnitPrice;

/** Readings of single values. Quoted and plain text are the same here. */
final class Scalars {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]{1,4})?");
    private static final Pattern WHOLE_NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");
    private static final List<String> YES = List.of("yes", "on", "true");
    private static final List<String> NO = List.of("no", "off", "false");

    private static final Reading<String> TEXT = new ScalarReading<>() {
        @Override
        String of(String text) {
            return text.strip();
        }
    };

    private static final Reading<String> ID = new IdReading();

    private static final Reading<Double> NUMBER = new ScalarReading<>() {
        @Override
        Double of(String text) {
            return decimal(text);
        }
    };

    private static final Reading<Boolean> FLAG = new ScalarReading<>() {
        @Override
        Boolean of(String text) {
            boolean known = text.equals("true") || text.equals("false");
            accepted(text, known, "is neither true nor false; " + truthHint(text) + "accepted: true, false");
            return text.equals("true");
        }
    };

    private Scalars() {}

    /** Any text but an empty one. */
    static Reading<String> text() {
        return TEXT;
    }

    /** A name by which a result is told from others, so that it is taken only once. */
    static Reading<String> name(Set<String> taken) {
        return new ScalarReading<>() {
            @Override
            String of(String text) {
                String name = text.strip();
                return accepted(
                        name, taken.add(name), "is taken by another before it; a name of its own for each is wanted");
            }
        };
    }

    /** The name by which a material or a schedule is called. */
    static Reading<String> id() {
        return ID;
    }

    /** One of several words, exactly as given. */
    static Reading<String> word(List<String> words) {
        return new ScalarReading<>() {
            @Override
            String of(String text) {
                return wordOf(text.strip(), words);
            }
        };
    }

    private static String wordOf(String text, List<String> words) {
        if (!words.contains(text)) {
            throw new IllegalArgumentException(Complaints.shown(text) + " is not known; "
                    + Nearest.of(text, words).map(Complaints::didYouMean).orElse("") + "accepted: "
                    + String.join(", ", words));
        }
        return text;
    }

    /** One of several values, each with its word. */
    static <E> Reading<E> oneOf(Function<? super E, String> word, E[] values) {
        List<String> words = new ArrayList<>();
        for (E value : values) {
            words.add(word.apply(value));
        }
        return new ScalarReading<>() {
            @Override
            E of(String text) {
                return values[words.indexOf(wordOf(text.strip(), words))];
            }
        };
    }

    /** A number with its unit, in SI. */
    static Reading<Double> quantity(Dimension dimension) {
        return new ScalarReading<>() {
            @Override
            Double of(String text) {
                return Quantity.parse(text, dimension);
            }
        };
    }

    /** A number with its unit, in SI and within a range. */
    static Reading<Double> quantity(Dimension dimension, Bounds range) {
        return range.limit(quantity(dimension));
    }

    /** A bare decimal number; what YAML or a compiler would read in a base of its own is refused. */
    static Reading<Double> number() {
        return NUMBER;
    }

    /**
     * The value of a bare decimal number.
     *
     * @throws IllegalArgumentException if the text is none
     */
    static double decimal(String text) {
        accepted(text, DECIMAL.matcher(text).matches(), "is not a number; " + decimalHint(text) + " is accepted");
        double value = Double.parseDouble(text);
        accepted(text, Double.isFinite(value), "is too large; a number below 1e308 is accepted");
        return value;
    }

    /** Whether a text is a bare decimal number. */
    static boolean isDecimal(String text) {
        return DECIMAL.matcher(text).matches();
    }

    /** What to say of a bare number, be it 0, where a unit is wanted: the number itself with each unit it may have. */
    static String needsUnit(String number, List<String> units) {
        List<String> written = new ArrayList<>();
        units.forEach(unit -> written.add(number + " " + unit));
        int last = written.size() - 1;
        return " needs its unit; write it like " + String.join(", ", written.subList(0, last)) + " or "
                + written.get(last);
    }

    /** A bare decimal number within a range. */
    static Reading<Double> number(Bounds range) {
        return range.limit(number());
    }

    /** How often or how many: a whole number from 1. */
    static Reading<Integer> count() {
        return new ScalarReading<>() {
            @Override
            Integer of(String text) {
                boolean whole = WHOLE_NUMBER.matcher(text).matches() && !text.equals("0");
                accepted(text, whole, "is not a count; a whole number from 1 to 999999999 is accepted");
                return Integer.valueOf(text);
            }
        };
    }

    /** How many, where more than a thousandfold is surely a slip: the product of several stays countable. */
    static Reading<Integer> pieces() {
        return wholeNumber(1, 10_000);
    }

    /** A whole number of a range that begins at 0 or later. */
    static Reading<Integer> wholeNumber(int from, int to) {
        return new ScalarReading<>() {
            @Override
            Integer of(String text) {
                int value = WHOLE_NUMBER.matcher(text).matches() ? Integer.parseInt(text) : -1;
                accepted(
                        text,
                        value >= from && value <= to,
                        "is outside; a whole number from " + from + " to " + to + " is accepted");
                return value;
            }
        };
    }

    /** A sum of money, zero or more, in the currency of the price list if there is one. */
    static Reading<Money> money(Optional<String> currency) {
        return new ScalarReading<>() {
            @Override
            Money of(String text) {
                Money sum = Money.parse(text);
                checkCurrency(sum.currency(), currency);
                accepted(text, sum.amount().signum() >= 0, "is negative; a price of zero or more is accepted");
                return sum;
            }
        };
    }

    /** A price per kg, m² and so on, in the currency of the price list if there is one. */
    static Reading<UnitPrice> price(Optional<String> currency) {
        return price(currency, PriceBasis.KG);
    }

    /** The same; messages show as an example one per what it usually is. */
    static Reading<UnitPrice> price(Optional<String> currency, PriceBasis usual) {
        return new ScalarReading<>() {
            @Override
            UnitPrice of(String text) {
                UnitPrice price = UnitPrice.parse(text, usual);
                checkCurrency(price.currency(), currency);
                return price;
            }
        };
    }

    private static void checkCurrency(String found, Optional<String> wanted) {
        if (wanted.isPresent() && !found.equals(wanted.get())) {
            throw new IllegalArgumentException(otherCurrency(found, wanted.get()));
        }
    }

    /** What is wrong with a price in another currency than that of the price list. */
    static String otherCurrency(String found, String wanted) {
        return "this is in " + found + " and the price list in " + wanted + "; one currency is accepted";
    }

    /** True or false. */
    static Reading<Boolean> flag() {
        return FLAG;
    }

    private static String accepted(String text, boolean ok, String otherwise) {
        if (!ok) {
            throw new IllegalArgumentException(Complaints.shown(text) + " " + otherwise);
        }
        return text;
    }

    private static String truthHint(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        return YES.contains(word)
                ? Complaints.didYouMean("true")
                : NO.contains(word) ? Complaints.didYouMean("false") : "";
    }

    private static String decimalHint(String text) {
        String mended = text.strip()
                .replace(',', '.')
                .replace("_", "")
                .replaceFirst("^([+-]?)0+(?=[0-9])", "$1")
                .replaceFirst("^([+-]?)\\.", "$10.")
                .replaceFirst("\\.$", "");
        return DECIMAL.matcher(mended).matches() ? mended : "a bare decimal number such as 0.28";
    }

    /** A number that may not stand, as the records of the library have it. */
    static OptionalDouble orNone(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }
}
