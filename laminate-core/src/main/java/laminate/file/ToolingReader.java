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

/** Reads the moulds and set-up of a part. */
final class ToolingReader {

    private static final int LONGEST_LIFE = 1_000_000;

    private static final List<String> COSTS = List.of("price", "part");
    private static final List<String> STATEMENTS = List.of("price", "part", "set-up", "set-up-price");

    private final Optional<String> currency;
    private final Reading<Part> mould;
    private final Set<Optional<Process>> taken = new HashSet<>();

    /**
     * Makes a reader.
     *
     * @param currency the currency of the price list, if there is one: that of the prices here must be the same
     * @param mould reads the part file of a mould
     */
    ToolingReader(Optional<String> currency, Reading<Part> mould) {
        this.currency = currency;
        this.mould = mould;
    }

    Reading<List<Tooling>> tooling() {
        return listOf(mapping(Keys.TOOLING, this::tooling));
    }

    private Tooling tooling(Fields in) {
        var process = in.optional("process", Words.PROCESS);
        var price = in.optional("price", money(currency));
        var made = in.optional("part", mould);
        var life = in.optional("life", wholeNumber(1, LONGEST_LIFE));
        var planned = in.optional("planned-pulls", pieces());
        var setUp = in.orElse("set-up", quantity(Dimension.TIME, Bounds.NOT_NEGATIVE), 0.0);
        var setUpPrice = in.optional("set-up-price", money(currency));
        if (standing(in, COSTS) == COSTS.size()) {
            in.complain("part", "price and part stand together; a mould is bought or made, only one is accepted");
        }
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
        return new Tooling(
                process.get(),
                price.get(),
                orNone(life.get()),
                setUp.get(),
                setUpPrice.get(),
                orNone(planned.get()),
                made.get());
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
