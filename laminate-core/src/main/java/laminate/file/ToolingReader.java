package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.money;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.wholeNumber;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import laminate.part.Tooling;
import laminate.process.Process;
import laminate.unit.Dimension;

/** Reads the moulds and set-up of a part. */
final class ToolingReader {

    private static final int LONGEST_LIFE = 1_000_000;

    private final Optional<String> currency;
    private final Set<Optional<Process>> taken = new HashSet<>();

    /**
     * Makes a reader.
     *
     * @param currency the currency of the price list, if there is one: that of the prices here must be the same
     */
    ToolingReader(Optional<String> currency) {
        this.currency = currency;
    }

    Reading<List<Tooling>> tooling() {
        return listOf(mapping(Keys.TOOLING, this::tooling));
    }

    private Tooling tooling(Fields in) {
        var process = in.optional("process", Words.PROCESS);
        var price = in.optional("price", money(currency));
        var life = in.optional("life", wholeNumber(1, LONGEST_LIFE));
        var setUp = in.orElse("set-up", quantity(Dimension.TIME, Bounds.NOT_NEGATIVE), 0.0);
        var setUpPrice = in.optional("set-up-price", money(currency));
        if (in.stands("life") && !in.stands("price")) {
            in.complain("life", "this says nothing without the price of the mould; add price:");
        }
        in.requireSound();
        if (!taken.add(process.get())) {
            throw in.refusal(
                    "process",
                    "tooling for " + process.get().map(Process::word).orElse("any process")
                            + " stands before this; one for each is accepted");
        }
        if (price.get().isEmpty() && setUpPrice.get().isEmpty() && !in.stands("set-up")) {
            throw new IllegalArgumentException("nothing is stated here; price, set-up or set-up-price is wanted");
        }
        OptionalInt parts = life.get().isPresent() ? OptionalInt.of(life.get().get()) : OptionalInt.empty();
        return new Tooling(process.get(), price.get(), parts, setUp.get(), setUpPrice.get());
    }
}
