package laminate.unit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a price is for one of. */
public enum PriceBasis {
    /** A kilogram. */
    KG(Unit.KILOGRAM),
    /** A square metre. */
    M2(Unit.SQUARE_METRE),
    /** A metre, off the roll. */
    M(Unit.METRE),
    /** A litre. */
    LITRE(Unit.LITRES),
    /** A pound, as mats, resins and fillers are sold in the US. */
    POUND(Unit.POUNDS),
    /** A square foot, as core sheets are sold in the US. */
    FT2(Unit.SQUARE_FOOT),
    /** A square yard. */
    YD2(Unit.SQUARE_YARD),
    /** A foot. */
    FOOT(Unit.FEET),
    /** A yard off the roll. */
    YARD(Unit.YARDS),
    /** A US gallon. */
    US_GALLON(Unit.US_GALLON),
    /** An hour of work. */
    HOUR("h"),
    /** A piece. */
    PIECE("piece"),
    /** A whole roll. */
    ROLL("roll");

    private final String symbol;
    private final Optional<Unit> unit;

    PriceBasis(Unit unit) {
        this.symbol = unit.symbol();
        this.unit = Optional.of(unit);
    }

    PriceBasis(String symbol) {
        this.symbol = symbol;
        this.unit = Optional.empty();
    }

    /**
     * The unit that a material is measured by for this price.
     *
     * @return a unit of mass, area, length or volume; empty for hours, pieces and rolls
     */
    public Optional<Unit> unit() {
        return unit;
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
     * Whether amounts of a material are kept in it. An hour measures work, a roll is a package, and the units of the US are
     * for prices only.
     *
     * @return true for kg, m², m, l and piece
     */
    public boolean isMeasure() {
        return switch (this) {
            case KG, M2, M, LITRE, PIECE -> true;
            case POUND, FT2, YD2, FOOT, YARD, US_GALLON, HOUR, ROLL -> false;
        };
    }

    /**
     * The measure in which materials are kept that are measured so.
     *
     * @param dimension any dimension
     * @return kg, m², m or l; empty if materials are not kept by it
     */
    public static Optional<PriceBasis> measureOf(Dimension dimension) {
        for (PriceBasis basis : values()) {
            if (basis.isMeasure() && basis.unit.isPresent() && basis.unit.get().dimension() == dimension) {
                return Optional.of(basis);
            }
        }
        return Optional.empty();
    }

    /**
     * The measure in which a material is kept that is sold by this: kg for a price by the pound.
     *
     * @return kg, m², m, l or piece; empty for hours and rolls
     */
    public Optional<PriceBasis> measure() {
        return this == PIECE ? Optional.of(PIECE) : unit.flatMap(sold -> measureOf(sold.dimension()));
    }

    /**
     * Every way to write this basis that is read, its symbol first.
     *
     * @return the spellings, unmodifiable
     */
    public List<String> spellings() {
        return unit.map(Unit::spellings).orElseGet(() -> List.of(symbol));
    }

    /**
     * Finds a basis by one of its spellings.
     *
     * @param spelling as {@link #spellings()} lists it
     * @return the basis, or empty if none has that spelling
     */
    public static Optional<PriceBasis> find(String spelling) {
        for (PriceBasis basis : values()) {
            if (basis.symbol.equals(spelling)) {
                return Optional.of(basis);
            }
        }
        for (PriceBasis basis : values()) {
            if (basis.spellings().contains(spelling)) {
                return Optional.of(basis);
            }
        }
        return Optional.empty();
    }

    /**
     * The accepted bases as a phrase for messages.
     *
     * @return "kg, m², m, l, lb … h, piece or roll"
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
