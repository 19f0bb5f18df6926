package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.price;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;
import static laminate.file.Scalars.wholeNumber;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.material.Figure;
import laminate.process.ConsumableUse;
import laminate.process.Consumables;
import laminate.process.Labour;
import laminate.process.Operation;
import laminate.process.ShopFloor;
import laminate.quote.LearningCurve;
import laminate.quote.Terms;
import laminate.unit.Dimension;
import laminate.unit.Nearest;
import laminate.unit.PriceBasis;
import laminate.unit.Quantity;
import laminate.unit.UnitPrice;

/** Reads what work takes: labour and consumables. */
final class WorkReader {

    private static final List<String> COUNTED_BY_LAYER =
            List.of(Operation.LAY_UP, Operation.DRY_LAY_UP, Operation.CORE);
    private static final Bounds CURE = Bounds.between(0, 30 * 24 * 3600.0, "zero to 30 days");
    private static final String CURING = "cure";
    private static final List<Dimension> TIMES =
            List.of(Dimension.TIME, Dimension.TIME_PER_AREA, Dimension.TIME_PER_LENGTH);
    private static final String NO_TIME = " is no time of an operation; one like 0.2 h/m² per layer, 0.1 h/m² per coat,"
            + " 0.5 h/m², 0.15 h/m, 0.3 h per stage, 0.2 h per item or 1 h is accepted, zero or more";
    private static final String NO_AMOUNT =
            " is no amount of a consumable; an area, length, mass, volume or a number of"
                    + " pieces is accepted, as in 1.15 m² or 2 pieces";
    private static final List<String> UNITS_OF_TIMES = List.of("h", "h/m²", "h/m");
    private static final List<String> UNITS_OF_AMOUNTS = List.of("m²", "kg", "l", "pieces");
    /** Litres in a cubic metre. */
    private static final double LITRES = 1000;

    private static final List<String> PIECES = List.of("pieces", "piece");

    private final Stock stock;
    private final Optional<String> currency;

    WorkReader(Stock stock, Optional<String> currency) {
        this.stock = stock;
        this.currency = currency;
    }

    /**
     * What work takes, how many do it together, and what is paid for it.
     *
     * @param labour rate and times
     * @param crew how many laminate together
     * @param learning how the times fall with repeats
     * @param paid paid hours for an hour of work
     * @param cure how long a moulding stays in its mould with nobody at it (s)
     */
    record Hands(Labour labour, int crew, LearningCurve learning, double paid, double cure) {

        static final Hands USUAL = new Hands(
                Labour.USUAL,
                ShopFloor.USUAL.crew(),
                Terms.AT_COST.learning(),
                Terms.AT_COST.paid(),
                Terms.AT_COST.cure());
    }

    Promise<Hands> labour(Fields in) {
        return in.orElse("labour", mapping(Keys.LABOUR, this::ownLabour), Hands.USUAL);
    }

    private Hands ownLabour(Fields in) {
        var rate = in.optional("rate", rate());
        var crew = in.orElse("crew", wholeNumber(1, ShopFloor.LARGEST_CREW), Hands.USUAL.crew());
        var paid = in.orElse("paid", number(Bounds.between(1, 3, "1 to 3, paid hours for an hour of work")), 1.0);
        var learning = in.orElse("learning", later(() -> PricingReader.learning()), Hands.USUAL.learning());
        var cure = in.orElse("cure", quantity(Dimension.TIME, CURE), Hands.USUAL.cure());
        var times = in.orElse("operations", new Operations(), List.<Operation>of());
        in.requireSound();
        Labour usual = Labour.USUAL.with(times.get());
        return new Hands(
                rate.get().isPresent() ? usual.at(rate.get().get()) : usual,
                crew.get(),
                learning.get(),
                paid.get(),
                cure.get());
    }

    private Reading<UnitPrice> rate() {
        return price(currency, PriceBasis.HOUR).map(rate -> {
            if (rate.basis() != PriceBasis.HOUR) {
                throw new IllegalArgumentException(
                        "a labour rate is by the hour, not " + rate + "; write it like 28 GBP/h");
            }
            return rate;
        });
    }

    private static final class Operations extends ShapedReading<Node.Mapping, List<Operation>> {

        private final Reading<String> name = text().map(WorkReader::operationName);

        Operations() {
            super(Node.Mapping.class);
        }

        @Override
        Optional<List<Operation>> readShaped(Node.Mapping all, Complaints complaints) {
            List<Operation> read = new ArrayList<>();
            for (Node.Entry entry : all.entries().values()) {
                Optional<String> named = name.read(entry.key(), complaints);
                if (named.isPresent()) {
                    operation(named.get()).read(entry.value(), complaints).ifPresent(read::add);
                }
            }
            return read.size() == all.entries().size() ? Optional.of(read) : Optional.empty();
        }

        @Override
        String wanted() {
            return "a group of operations with their times is wanted";
        }
    }

    private static Reading<Operation> operation(String name) {
        return new ScalarReading<>() {
            @Override
            Operation of(String text) {
                return time(text.strip()).of(name);
            }
        };
    }

    /** A name that is nearly a usual one would add a second operation beside it. */
    private static String operationName(String name) {
        if (name.equals(CURING)) {
            throw new IllegalArgumentException("nobody works while a moulding cures; write cure: beside operations:,"
                    + " and the time to look after it as cure watch");
        }
        List<String> usual = usualNames();
        boolean known = usual.contains(name) || Operation.FURTHER.contains(name);
        Optional<String> near = known ? Optional.empty() : Nearest.of(name, usual);
        if (near.isPresent()) {
            throw new IllegalArgumentException(
                    Complaints.shown(name) + " is not known; " + Complaints.didYouMean(near.get()) + "accepted: "
                            + String.join(", ", usual) + ", and names of your own unlike these");
        }
        return name;
    }

    private static List<String> usualNames() {
        List<String> names = new ArrayList<>();
        for (Operation operation : Operation.USUAL) {
            names.add(operation.name());
        }
        return names;
    }

    /** The words behind a time, and what it is counted by with them. */
    private enum Counted {
        PER_LAYER("per layer", Dimension.TIME_PER_AREA, Operation.Basis.LAYER_AREA),
        PER_COAT("per coat", Dimension.TIME_PER_AREA, Operation.Basis.LAYER_AREA),
        PER_STAGE("per stage", Dimension.TIME, Operation.Basis.STAGE),
        PER_ITEM("per item", Dimension.TIME, Operation.Basis.ITEM);

        private final String words;
        private final Dimension time;
        private final Operation.Basis basis;

        Counted(String words, Dimension time, Operation.Basis basis) {
            this.words = words;
            this.time = time;
            this.basis = basis;
        }

        static Optional<Counted> of(String time) {
            for (Counted counted : values()) {
                if (time.endsWith(counted.words)) {
                    return Optional.of(counted);
                }
            }
            return Optional.empty();
        }

        /** Layers are counted for a name of the user's own too; what is usual keeps what its name counts. */
        boolean goesWith(String name) {
            return switch (this) {
                case PER_LAYER ->
                    COUNTED_BY_LAYER.contains(name) || !usualNames().contains(name);
                case PER_COAT -> name.equals(Operation.GELCOAT);
                case PER_STAGE, PER_ITEM -> true;
            };
        }
    }

    /** A time and the words behind it, if any: "0.2 h/m² per layer". */
    private record Time(double seconds, Dimension dimension, Optional<Counted> counted) {

        Operation of(String name) {
            if (counted.isPresent() && !counted.get().goesWith(name)) {
                throw new IllegalArgumentException("the time of " + name + " is not counted " + counted.get().words
                        + "; a time like 0.2 h/m², 0.15 h/m or 1 h is wanted");
            }
            return new Operation(name, basis(name), Figure.stated(seconds));
        }

        private Operation.Basis basis(String name) {
            if (counted.isPresent()) {
                return counted.get().basis;
            }
            boolean byLayer = COUNTED_BY_LAYER.contains(name) || name.equals(Operation.GELCOAT);
            return switch (dimension) {
                case TIME_PER_AREA -> byLayer ? Operation.Basis.LAYER_AREA : Operation.Basis.AREA;
                case TIME_PER_LENGTH -> Operation.Basis.EDGE;
                default -> Operation.Basis.MOULDING;
            };
        }
    }

    private static Time time(String time) {
        Optional<Counted> counted = Counted.of(time);
        int words = counted.isPresent() ? counted.get().words.length() : 0;
        Quantity quantity = quantityOr(time.substring(0, time.length() - words).strip(), time, NO_TIME, UNITS_OF_TIMES);
        Dimension dimension = quantity.unit().dimension();
        boolean isTime = counted.isPresent() ? dimension == counted.get().time : TIMES.contains(dimension);
        if (!isTime || quantity.value() < 0) {
            throw new IllegalArgumentException(Complaints.shown(time) + NO_TIME);
        }
        return new Time(quantity.si(), dimension, counted);
    }

    private static Quantity quantityOr(String text, String written, String otherwise, List<String> units) {
        try {
            return Quantity.parse(text);
        } catch (IllegalArgumentException e) {
            boolean bare = Scalars.isDecimal(written);
            throw new IllegalArgumentException(
                    Complaints.shown(written) + (bare ? Scalars.needsUnit(written, units) : otherwise));
        }
    }

    Promise<Consumables> consumables(Fields in) {
        Reading<Consumables> share = quantity(Dimension.FRACTION, Bounds.between(0, 1, "0 % to 100 %"))
                .map(Consumables::shareOfMaterials);
        Reading<Consumables> list =
                listOf(mapping(Keys.CONSUMABLE_USE, this::use)).map(Consumables::listed);
        return in.orElse("consumables", Reading.shortOrFull(share, list), Consumables.USUAL);
    }

    private ConsumableUse use(Fields in) {
        var material = in.required("material", stock.anyId());
        var amount = in.required("amount", text().map(WorkReader::amount));
        var per = in.required("per", Words.consumableBasis());
        in.requireSound();
        return new ConsumableUse(
                material.get(),
                Figure.stated(amount.get().value()),
                amount.get().measure(),
                per.get());
    }

    private record Amount(double value, PriceBasis measure) {}

    private static Amount amount(String written) {
        for (String pieces : PIECES) {
            if (written.endsWith(pieces)) {
                String number = written.substring(0, written.length() - pieces.length());
                return new Amount(notNegative(Scalars.decimal(number.strip()), written), PriceBasis.PIECE);
            }
        }
        Quantity quantity = quantityOr(written, written, NO_AMOUNT, UNITS_OF_AMOUNTS);
        double value = notNegative(quantity.si(), written);
        return switch (quantity.unit().dimension()) {
            case AREA -> new Amount(value, PriceBasis.M2);
            case LENGTH -> new Amount(value, PriceBasis.M);
            case MASS -> new Amount(value, PriceBasis.KG);
            case VOLUME -> new Amount(value * LITRES, PriceBasis.LITRE);
            default -> throw new IllegalArgumentException(Complaints.shown(written) + NO_AMOUNT);
        };
    }

    private static double notNegative(double value, String written) {
        if (value < 0) {
            throw new IllegalArgumentException(Complaints.shown(written) + " is below zero; zero or more is accepted");
        }
        return value;
    }
}
