package laminate.print.order;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.order.OrderLine;
import laminate.order.packs.PackCount;
import laminate.print.Measures;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.Unit;

/** What readers of an order are told, in words. */
final class OrderWords {
    /** Digits and point of a number that was set. */
    private static final int LONGEST = 6;

    private final Measures measures;

    OrderWords(Measures measures) {
        this.measures = measures;
    }

    /** The unit in which the reader is told amounts of a measure; pieces have none. */
    Optional<Unit> unit(PriceBasis measure) {
        return switch (measure) {
            case KG -> Optional.of(measures.mass());
            case M2 -> Optional.of(measures.area());
            case M -> Optional.of(measures.longLength());
            case LITRE -> Optional.of(measures.volume());
            default -> Optional.empty();
        };
    }

    /** The name of that unit. */
    String symbol(PriceBasis measure) {
        return unit(measure).map(Unit::symbol).orElse("pieces");
    }

    /** An amount in that unit. */
    String amount(double amount, PriceBasis measure) {
        Optional<Unit> unit = unit(measure);
        return unit.isEmpty()
                ? Measures.count(amount)
                : Measures.number(measure.unit().orElseThrow().toSi(amount), unit.get());
    }

    /** The same, nothing for zero. */
    String unlessZero(double amount, PriceBasis measure) {
        return amount == 0 ? "" : amount(amount, measure);
    }

    /** What is ordered, with the thickness of a sheet of core. */
    String name(OrderLine line) {
        return line.need().quantity().thickness().isPresent()
                ? line.material() + ", "
                        + set(line.need().quantity().thickness().getAsDouble(), measures.length())
                : line.material();
    }

    /** What is bought: so many packs, or how it is sold without them. */
    String packs(OrderLine line) {
        if (line.bought() == 0) {
            return "in stock";
        }
        if (line.packs().isEmpty()) {
            return line.cost().isEmpty() ? "no price" : "loose";
        }
        List<String> packs =
                line.packs().stream().map(pack -> packs(pack, line.measure())).toList();
        return String.join(" + ", packs);
    }

    private String packs(PackCount packs, PriceBasis measure) {
        String name = packs.count() + " × " + packs.pack().name();
        if (measure == PriceBasis.PIECE && packs.pack().name().equals("piece")) {
            return packs.count() == 1 ? "1 piece" : packs.count() + " pieces";
        }
        double amount = packs.pack().amount().doubleValue();
        Optional<Unit> unit = unit(measure);
        String inside = unit.isEmpty()
                ? Measures.count(amount)
                : set(measure.unit().orElseThrow().toSi(amount), unit.get());
        return name + " of " + inside;
    }

    /** A size or content that was set: as it was set, or to three figures in units in which it was not. */
    static String set(double si, Unit unit) {
        String plain = Measures.plain(unit.fromSi(si));
        return (plain.length() > LONGEST ? Measures.number(si, unit) : plain) + " " + unit.symbol();
    }

    static String money(Optional<Money> money) {
        return money.map(paid -> paid.amount().toPlainString()).orElse("");
    }

    static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    static String days(OptionalInt days) {
        return days.isEmpty() ? "" : Integer.toString(days.getAsInt());
    }
}
