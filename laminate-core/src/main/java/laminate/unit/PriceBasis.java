package laminate.unit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a price is for one of. */
public enum PriceBasis {
    /** A kilogram. */
    KG("kg", List.of("kg")),
    /** A square metre. */
    M2("m²", Unit.SQUARE_METRE.spellings()),
    /** A metre, off the roll. */
    M("m", List.of("m")),
    /** A litre. */
    LITRE("l", Unit.LITRES.spellings()),
    /** An hour of work. */
    HOUR("h", List.of("h")),
    /** A piece. */
    PIECE("piece", List.of("piece")),
    /** A whole roll. */
    ROLL("roll", List.of("roll"));

    private final String symbol;
    private final List<String> spellings;

    PriceBasis(String symbol, List<String> spellings) {
        this.symbol = symbol;
        this.spellings = spellings;
    }

    /**
     * The basis as it is printed behind the stroke.
     *
     * @return for example "m²"
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Every way to write this basis that is read, its symbol first.
     *
     * @return the spellings, unmodifiable
     */
    public List<String> spellings() {
        return spellings;
    }

    /**
     * Finds a basis by one of its spellings.
     *
     * @param spelling as {@link #spellings()} lists it
     * @return the basis, or empty if none has that spelling
     */
    public static Optional<PriceBasis> find(String spelling) {
        return Arrays.stream(values())
                .filter(basis -> basis.spellings.contains(spelling))
                .findFirst();
    }

    /**
     * The accepted bases as a phrase for messages.
     *
     * @return "kg, m², m, l, h, piece or roll"
     */
    public static String accepted() {
        List<String> symbols = new ArrayList<>();
        Arrays.stream(values()).forEach(basis -> symbols.add(basis.symbol));
        return Dimension.alternatives(symbols);
    }

    @Override
    public String toString() {
        return symbol;
    }
}
