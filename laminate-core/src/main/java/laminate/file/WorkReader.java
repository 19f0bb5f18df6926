package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
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
import laminate.unit.Dimension;
import laminate.unit.Nearest;
import laminate.unit.PriceBasis;
import laminate.unit.Quantity;
import laminate.unit.UnitPrice;

/** Reads what work takes: labour and consumables. */
final class WorkReader {

    private static final List<String> COUNTED_BY_LAYER =
            List.of(Operation.LAY_UP, Operation.DRY_LAY_UP, Operation.CORE);
    private static final int LARGEST_CREW = 100;
    private static final String PER_LAYER = "per layer";
    private static final String PER_COAT = "per coat";
    private static final List<Dimension> TIMES =
            List.of(Dimension.TIME, Dimension.TIME_PER_AREA, Dimension.TIME_PER_LENGTH);
    private static final String NO_TIME = " is no time of an operation; one like 0.2 h/m² per layer, 0.1 h/m² per coat,"
            + " 0.5 h/m², 0.15 h/m or 1 h is accepted, zero or more";
    private static final String NO_AMOUNT =
            " is no amount of a consumable; an area, length, mass, volume or a number of"
                    + " pieces is accepted, as in 1.15 m² or 2 pieces";
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
     * What work takes, and how many do it together.
     *
     * @param labour rate and times
     * @param crew how many laminate together
     */
    record Hands(Labour labour, int crew) {

        static final Hands USUAL = new Hands(Labour.USUAL, ShopFloor.USUAL.crew());
    }

    Promise<Hands> labour(Fields in) {
        return in.orElse("labour", mapping(Keys.LABOUR, this::ownLabour), Hands.USUAL);
    }

    private Hands ownLabour(Fields in) {
        var rate = in.optional("rate", rate());
        var crew = in.orElse("crew", wholeNumber(1, LARGEST_CREW), Hands.USUAL.crew());
        var times = in.orElse("operations", new Operations(), List.<Operation>of());
        in.requireSound();
        Labour usual = Labour.USUAL.with(times.get());
        return new Hands(rate.get().isPresent() ? usual.at(rate.get().get()) : usual, crew.get());
    }

    private Reading<UnitPrice> rate() {
        return price(currency).map(rate -> {
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
        List<String> usual = usualNames();
        Optional<String> near = usual.contains(name) ? Optional.empty() : Nearest.of(name, usual);
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

    /** A time and the words behind it, if any: "0.2 h/m² per layer". */
    private record Time(double seconds, Dimension dimension, String suffix) {

        Operation of(String name) {
            boolean byLayer = COUNTED_BY_LAYER.contains(name);
            boolean byCoat = name.equals(Operation.GELCOAT);
            if (suffix.equals(PER_LAYER) && !byLayer || suffix.equals(PER_COAT) && !byCoat) {
                throw new IllegalArgumentException("the time of " + name + " is not counted " + suffix
                        + "; a time like 0.2 h/m², 0.15 h/m or 1 h is wanted");
            }
            return new Operation(name, basis(byLayer || byCoat), Figure.stated(seconds));
        }

        private Operation.Basis basis(boolean byLayer) {
            return switch (dimension) {
                case TIME_PER_AREA -> byLayer ? Operation.Basis.LAYER_AREA : Operation.Basis.AREA;
                case TIME_PER_LENGTH -> Operation.Basis.EDGE;
                default -> Operation.Basis.MOULDING;
            };
        }
    }

    private static Time time(String time) {
        String suffix = time.endsWith(PER_LAYER) ? PER_LAYER : time.endsWith(PER_COAT) ? PER_COAT : "";
        String number = time.substring(0, time.length() - suffix.length()).strip();
        Quantity quantity = quantityOr(number, time, NO_TIME);
        Dimension dimension = quantity.unit().dimension();
        boolean isTime = TIMES.contains(dimension);
        if (!isTime || quantity.value() < 0 || !suffix.isEmpty() && dimension != Dimension.TIME_PER_AREA) {
            throw new IllegalArgumentException(Complaints.shown(time) + NO_TIME);
        }
        return new Time(quantity.si(), dimension, suffix);
    }

    private static Quantity quantityOr(String text, String written, String otherwise) {
        try {
            return Quantity.parse(text);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(Complaints.shown(written) + otherwise);
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
        Quantity quantity = quantityOr(written, written, NO_AMOUNT);
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
