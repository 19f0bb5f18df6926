package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.money;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.wholeNumber;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.unit.Dimension;
import laminate.unit.Money;

/** Reads the moulds and set-up of a part. */
final class ToolingReader {

    private static final int LONGEST_LIFE = 1_000_000;

    /** Fifty years of one worker: what is longer is a slip. */
    private static final Bounds SET_UP = Bounds.between(0, 100_000 * 3600.0, "0 h to 100000 h");

    private static final List<String> COSTS = List.of("price", "part");
    private static final List<String> STATEMENTS = List.of("price", "part", "set-up", "set-up-price");

    private final Optional<String> currency;
    private final Reading<Part> mould;
    private final ReadOnce once;
    private final Set<Optional<Process>> taken = new HashSet<>();

    /**
     * Makes a reader.
     *
     * @param currency the currency of the price list, if there is one: that of the prices here must be the same
     * @param mould reads the part file of a mould
     * @param once takes note of what is stated
     */
    ToolingReader(Optional<String> currency, Reading<Part> mould, ReadOnce once) {
        this.currency = currency;
        this.mould = mould;
        this.once = once;
    }

    Reading<List<Tooling>> tooling() {
        return listOf(mapping(Keys.TOOLING, this::tooling));
    }

    private Tooling tooling(Fields in) {
        var process = in.optional("process", Words.PROCESS);
        var made = in.optional("part", mould);
        Stated stated = stated(in, currency);
        for (String key : List.of("life", "planned-pulls")) {
            if (in.stands(key) && standing(in, COSTS) == 0) {
                in.complain(key, "this says nothing without what the mould costs; add price: or part:");
            }
        }
        in.requireSound();
        if (!taken.add(process.get())) {
            throw in.refusal(
                    "process",
                    "tooling for " + process.get().map(Process::word).orElse("any process")
                            + " stands before this; one for each is accepted");
        }
        if (standing(in, STATEMENTS) == 0) {
            throw new IllegalArgumentException("nothing is stated here; price, part, set-up or set-up-price is wanted");
        }
        return once.noted(stated.of(process.get(), made.get()), in);
    }

    /** What is stated of a mould in a part file and in a project alike. */
    record Stated(
            Promise<Optional<Money>> price,
            Promise<Optional<Integer>> life,
            Promise<Optional<Integer>> planned,
            Promise<Double> setUp,
            Promise<Optional<Money>> setUpPrice) {

        Tooling of(Optional<Process> process, Optional<Part> mould) {
            return new Tooling(
                    process,
                    price.get(),
                    orNone(life.get()),
                    setUp.get(),
                    setUpPrice.get(),
                    orNone(planned.get()),
                    mould);
        }
    }

    static Stated stated(Fields in, Optional<String> currency) {
        Stated stated = new Stated(
                in.optional("price", money(currency)),
                in.optional("life", wholeNumber(1, LONGEST_LIFE)),
                in.optional("planned-pulls", pieces()),
                in.orElse("set-up", quantity(Dimension.TIME, SET_UP), 0.0),
                in.optional("set-up-price", money(currency)));
        if (standing(in, COSTS) == COSTS.size()) {
            in.complain("part", "price and part stand together; a mould is bought or made, only one is accepted");
        }
        return stated;
    }

    private static int standing(Fields in, List<String> keys) {
        int standing = 0;
        for (String key : keys) {
            standing += in.stands(key) ? 1 : 0;
        }
        return standing;
    }

    private static OptionalInt orNone(Optional<Integer> value) {
        return value.isPresent() ? OptionalInt.of(value.get()) : OptionalInt.empty();
    }
}
