package laminate.file;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.estimate.PriceList;
import laminate.material.Materials;

/**
 * The workshop, price and material files that several part files name, each of which is read once. What is wrong in one is
 * told to every part file that names it. For one run and by one thread: a file that changes meanwhile is not read again.
 *
 * <pre>{@code
 * SharedFiles shared = new SharedFiles();
 * for (Path file : files) {
 *     Work work = WorkFile.read(file, library, Overrides.NONE, shared);
 * }
 * }</pre>
 */
public final class SharedFiles {

    /** By what was asked for: the kind of file, its path, and all that its reading depends on. */
    private final Map<List<Object>, Outcome> known = new HashMap<>();

    /** What was read, empty if it could not be, and all that was complained of and read on the way. */
    private record Outcome(Optional<?> value, Complaints complaints) {}

    /** Nothing has been read yet. */
    public SharedFiles() {}

    /** The prices of a file; their materials are those of the stock. */
    Optional<PriceList> prices(Path file, Stock stock, Complaints complaints) {
        List<Object> asked = List.of(Keys.PRICES, file, stock);
        return known.containsKey(asked)
                ? told(asked, complaints)
                : read(asked, new PriceReader(stock).prices(), file, Keys.PRICES, complaints);
    }

    /** The workshop of a file; its materials are those of the stock, its money is in the currency of the prices. */
    Optional<WorkshopFile> workshop(Path file, Stock stock, Optional<String> currency, Complaints complaints) {
        List<Object> asked = List.of(Keys.WORKSHOP, file, stock, currency);
        return known.containsKey(asked)
                ? told(asked, complaints)
                : read(asked, new WorkshopReader(stock, currency).workshop(), file, Keys.WORKSHOP, complaints);
    }

    /**
     * What may be named beside material files.
     *
     * @param complete whether these are all the files that were meant
     */
    Stock stock(Materials library, List<Path> files, boolean complete, Complaints complaints) {
        List<Object> asked = List.of(Keys.MATERIALS, library, files, complete);
        if (known.containsKey(asked)) {
            return this.<Stock>told(asked, complaints).orElseThrow();
        }
        Complaints own = new Complaints();
        OwnMaterials materials = new OwnMaterials(library, own);
        if (!complete) {
            materials.miss();
        }
        for (Path file : files) {
            materials.add(file);
        }
        return note(asked, Optional.of(materials.stock()), own, complaints).orElseThrow();
    }

    private <T> Optional<T> read(List<Object> asked, Reading<T> reading, Path file, Keys root, Complaints complaints) {
        Complaints own = new Complaints();
        return note(asked, reading.read(file, root, own), own, complaints);
    }

    private <T> Optional<T> note(List<Object> asked, Optional<T> value, Complaints own, Complaints complaints) {
        known.put(asked, new Outcome(value, own));
        complaints.add(own);
        return value;
    }

    /** What was asked for is of the type that the kind of file stands for. */
    @SuppressWarnings("unchecked")
    private <T> Optional<T> told(List<Object> asked, Complaints complaints) {
        Outcome outcome = known.get(asked);
        complaints.add(outcome.complaints());
        return (Optional<T>) outcome.value();
    }
}
