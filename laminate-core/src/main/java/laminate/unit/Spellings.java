package laminate.unit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The ways to write each unit, and the way back from a spelling to its unit. */
final class Spellings {
    /** A sign that a keyboard may lack, and what may be typed in its place; the sign itself is first. */
    private static final List<List<String>> VARIANTS = List.of(
            List.of("²", "2", "^2"),
            List.of("³", "3", "^3"),
            List.of("·", "⋅", ".", "*"),
            List.of("\u00B5", "\u03BC", "u"),
            List.of("°", "deg"));

    private Spellings() {}

    /** The symbol, then the symbol with each special sign replaced, then what else is read. */
    static List<String> of(String symbol, String... alsoRead) {
        Set<String> spellings = new LinkedHashSet<>(List.of(symbol));
        for (List<String> signs : VARIANTS) {
            for (String spelling : List.copyOf(spellings)) {
                for (String sign : signs) {
                    spellings.add(spelling.replace(signs.get(0), sign));
                }
            }
        }
        spellings.addAll(List.of(alsoRead));
        return List.copyOf(spellings);
    }

    static List<Unit> unitsOf(Dimension dimension) {
        return Tables.UNITS.get(dimension);
    }

    static List<String> spellingsOf(Dimension dimension) {
        return List.copyOf(Tables.BY_DIMENSION.get(dimension).keySet());
    }

    static Optional<Unit> find(String spelling, Dimension dimension) {
        for (Unit unit : Symbols.UNITS) {
            if (unit.dimension() == dimension && unit.isOftenWritten(spelling)) {
                return Optional.of(unit);
            }
        }
        return Optional.ofNullable(Tables.BY_DIMENSION.get(dimension).get(spelling));
    }

    static Optional<Unit> find(String spelling) {
        for (Unit unit : Symbols.UNITS) {
            if (unit.isOftenWritten(spelling)) {
                return Optional.of(unit);
            }
        }
        return Optional.ofNullable(Tables.ALL.get(spelling));
    }

    static Set<String> all() {
        return Tables.ALL.keySet();
    }

    /**
     * Most files write symbols or a short name such as d for a day, and a small job ends sooner without the tables of all
     * spellings. Apart from {@link Spellings}, like the tables, because the units have to exist first.
     */
    private static final class Symbols {
        static final Unit[] UNITS = Unit.values();

        private Symbols() {}
    }

    /** All spellings of all units. */
    private static final class Tables {
        static final Map<Dimension, List<Unit>> UNITS = new EnumMap<>(Dimension.class);
        static final Map<Dimension, Map<String, Unit>> BY_DIMENSION = new EnumMap<>(Dimension.class);
        /** A spelling of several dimensions stands for the first, so °C is a temperature before it is a difference. */
        static final Map<String, Unit> ALL = new LinkedHashMap<>();

        static {
            for (Dimension dimension : Dimension.values()) {
                UNITS.put(dimension, new ArrayList<>());
                BY_DIMENSION.put(dimension, new LinkedHashMap<>());
            }
            for (Unit unit : Unit.values()) {
                UNITS.get(unit.dimension()).add(unit);
                unit.spellings().forEach(spelling -> enter(spelling, unit));
            }
            UNITS.replaceAll((dimension, units) -> List.copyOf(units));
        }

        private Tables() {}

        private static void enter(String spelling, Unit unit) {
            if (BY_DIMENSION.get(unit.dimension()).put(spelling, unit) != null) {
                throw new IllegalStateException(spelling + " stands for two units of " + unit.dimension());
            }
            ALL.putIfAbsent(spelling, unit);
        }
    }
}
