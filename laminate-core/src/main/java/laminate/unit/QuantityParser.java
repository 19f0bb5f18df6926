package laminate.unit;

import java.util.ArrayList;
import java.util.Map;
import java.util.Optional;

/** Reads a quantity, and where it cannot, finds the most helpful thing to say. */
final class QuantityParser {
    private static final String ANY_EXAMPLE = "450 mm or 450 g/m²";

    /** What people write who know a unit by another name; suggested, never read. */
    private static final Map<String, Map<Dimension, String>> OTHER_NAMES = Map.ofEntries(
            Map.entry("gsm", Map.of(Dimension.AREAL_MASS, "g/m²")),
            Map.entry("micron", Map.of(Dimension.LENGTH, "µm")),
            Map.entry("microns", Map.of(Dimension.LENGTH, "µm")),
            Map.entry("thou", Map.of(Dimension.LENGTH, "mil")),
            Map.entry("cc", Map.of(Dimension.VOLUME, "ml")),
            Map.entry("gal", Map.of(Dimension.VOLUME, "US gal")),
            Map.entry("fl oz", Map.of(Dimension.VOLUME, "US fl oz")),
            Map.entry(
                    "oz",
                    Map.of(
                            Dimension.AREAL_MASS, "oz/yd² for cloth or, for mats, oz/ft²",
                            Dimension.VOLUME, "US fl oz")),
            Map.entry("lb", Map.of(Dimension.FORCE, "lbf")),
            Map.entry("cP", Map.of(Dimension.VISCOSITY, "mPa·s")),
            Map.entry("hr", Map.of(Dimension.TIME, "h")),
            Map.entry("hours", Map.of(Dimension.TIME, "h")),
            Map.entry("degrees", Map.of(Dimension.ANGLE, "°")),
            Map.entry("/K", Map.of(Dimension.EXPANSION, "1/K")),
            Map.entry("ppm/K", Map.of(Dimension.EXPANSION, "1e-6/K")));

    private QuantityParser() {}

    static Quantity read(String text) {
        NumberText split = NumberText.split(text, ANY_EXAMPLE);
        if (split.rest().isEmpty()) {
            throw new QuantityException(
                    NumberText.quoted(text) + " has no unit; write it like " + ANY_EXAMPLE, split.restStart());
        }
        Optional<Unit> unit = Unit.find(split.rest());
        if (unit.isEmpty()) {
            throw unknownUnit(split, Optional.empty());
        }
        return quantity(split, unit.get());
    }

    static Quantity read(String text, Dimension wanted) {
        NumberText split = NumberText.split(text, wanted.example());
        if (split.rest().isEmpty()) {
            return bare(split, wanted);
        }
        Optional<Unit> unit = Unit.find(split.rest(), wanted);
        if (unit.isEmpty()) {
            throw refusal(split, wanted);
        }
        return quantity(split, unit.get());
    }

    private static Quantity bare(NumberText split, Dimension wanted) {
        if (wanted == Dimension.ANGLE) {
            return quantity(split, Unit.DEGREE);
        }
        String example = wanted == Dimension.FRACTION ? percent(split) : wanted.written(split.number());
        throw new QuantityException(wanted.phrase() + " needs its unit; write it like " + example, split.restStart());
    }

    /** A bare 0.3 was surely meant as 30 %, a bare 30 too. */
    private static String percent(NumberText split) {
        double value = split.value();
        return Math.abs(value) < 1 ? JsonNumbers.format(Unit.PERCENT.fromSi(value)) + " %" : split.number() + " %";
    }

    private static Quantity quantity(NumberText split, Unit unit) {
        try {
            return new Quantity(split.value(), unit);
        } catch (QuantityException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new QuantityException(e.getMessage(), split.start());
        }
    }

    private static QuantityException refusal(NumberText split, Dimension wanted) {
        Optional<Unit> other = Unit.find(split.rest());
        if (other.isEmpty()) {
            return unknownUnit(split, Optional.of(wanted));
        }
        String message = split.rest() + " is the unit of "
                + other.get().dimension().phrase() + ", not of " + wanted.phrase() + "; accepted: " + wanted.accepted();
        String hint = otherName(split.rest(), Optional.of(wanted))
                .map(name -> "; write " + name)
                .orElse("");
        return new QuantityException(message + hint, split.restStart());
    }

    private static QuantityException unknownUnit(NumberText split, Optional<Dimension> wanted) {
        String unit = split.rest();
        String accepted =
                wanted.map(dimension -> "; accepted: " + dimension.accepted()).orElse("");
        String hint = hint(unit, wanted)
                .map(spelling -> "; did you mean " + spelling + "?")
                .orElse("");
        return new QuantityException(wrongness(unit, wanted) + accepted + hint, split.restStart());
    }

    private static String wrongness(String unit, Optional<Dimension> wanted) {
        if (unit.charAt(0) >= '0' && unit.charAt(0) <= '9') {
            return "a second number begins at " + NumberText.quoted(unit)
                    + "; write one number with one unit, no spaces between digits";
        }
        int space = unit.indexOf(' ');
        if (space > 0
                && hint(unit, wanted).isEmpty()
                && Unit.find(unit.substring(0, space)).isPresent()) {
            return "more text follows the unit " + unit.substring(0, space) + ": "
                    + NumberText.quoted(unit.substring(space + 1)) + "; write one number with one unit";
        }
        return "unknown unit " + NumberText.quoted(unit);
    }

    /** The spelling that was probably meant: another name of a unit, one written with spaces, or the nearest one. */
    private static Optional<String> hint(String unit, Optional<Dimension> wanted) {
        return otherName(unit, wanted)
                .or(() -> find(unit.replace(" ", ""), wanted).map(Unit::symbol))
                .or(() -> Nearest.of(
                        unit, wanted.map(Unit::spellings).orElseGet(() -> new ArrayList<>(Spellings.all()))));
    }

    private static Optional<Unit> find(String spelling, Optional<Dimension> wanted) {
        return wanted.isPresent() ? Unit.find(spelling, wanted.get()) : Unit.find(spelling);
    }

    /** Another name counts only where the unit it stands for is one that is wanted. */
    private static Optional<String> otherName(String unit, Optional<Dimension> wanted) {
        Map<Dimension, String> names = OTHER_NAMES.getOrDefault(unit, Map.of());
        return wanted.isPresent()
                ? Optional.ofNullable(names.get(wanted.get()))
                : names.values().stream().findFirst();
    }
}
