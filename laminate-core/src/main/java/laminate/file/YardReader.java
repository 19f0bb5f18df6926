package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.estimate.PriceList;

/** Reads the prices and the workshop of a part file, whether they stand in it or in files of their own. */
final class YardReader {

    private final Beside beside;
    private final Overrides overrides;
    private final MadeHere madeHere;

    YardReader(Beside beside, Overrides overrides, MadeHere madeHere) {
        this.beside = beside;
        this.overrides = overrides;
        this.madeHere = madeHere;
    }

    Yard yard(Fields in, Stock stock) {
        Optional<Path> priceFile = file(in, "prices", overrides.prices());
        Term<PriceList> statedPrices = prices(in, stock, priceFile);
        Optional<PriceList> prices = madeHere.prices(in, statedPrices.value());
        Optional<Path> workshopFile = file(in, "workshop", overrides.workshop());
        WorkshopReader reader = new WorkshopReader(stock, Yard.currency(prices));
        Term<WorkshopFile> statedWorkshop = workshop(in, reader, workshopFile);
        WorkshopFile workshop = madeHere.workshop(in, statedWorkshop.value());
        boolean sound = !statedPrices.flawed() && !statedWorkshop.flawed();
        return new Yard(workshop, workshopFile, prices, priceFile, sound);
    }

    /** The file that was asked for, else the one that the part names, whether it is there or not. */
    private Optional<Path> file(Fields in, String key, Optional<Path> asked) {
        Optional<String> named = asked.isPresent() ? Optional.empty() : in.word(key);
        return named.isPresent() ? beside.path(named.get()) : asked;
    }

    private Term<PriceList> prices(Fields in, Stock stock, Optional<Path> file) {
        Optional<PriceList> known = madeHere.pricesOf(file);
        return known.isPresent()
                ? known(in, "prices", known.get())
                : fileOr(in, "prices", overrides.prices(), Keys.PRICES, new PriceReader(stock).prices());
    }

    private Term<WorkshopFile> workshop(Fields in, WorkshopReader reader, Optional<Path> file) {
        Optional<WorkshopFile> known = madeHere.workshopOf(file);
        return known.isPresent()
                ? known(in, "workshop", known.get())
                : fileOr(in, "workshop", overrides.workshop(), Keys.WORKSHOP, reader.workshop());
    }

    private static <T> Term<T> known(Fields in, String key, T value) {
        in.known(key);
        return Term.of(value, in.node());
    }

    /** What stands in the file that was asked for, else in the one that the part names, else in the part itself. */
    private <T> Term<T> fileOr(Fields in, String key, Optional<Path> asked, Keys root, Reading<T> reading) {
        if (asked.isPresent()) {
            in.known(key);
            Optional<T> value = reading.read(asked.get(), root, in.complaints());
            in.given(value);
            return value.isEmpty() ? Term.flaw() : Term.of(value.get(), in.node());
        }
        return in.stated(key, Reading.shortOrFull(new OfFile<>(root, reading), reading));
    }

    /** Reads the root of the file that is named. */
    private final class OfFile<T> implements Reading<T> {

        private final Keys root;
        private final Reading<T> reading;

        OfFile(Keys root, Reading<T> reading) {
            this.root = root;
            this.reading = reading;
        }

        @Override
        public Optional<T> read(Node node, Complaints complaints) {
            Optional<Path> path = beside.read(node, complaints);
            return path.isEmpty() ? Optional.empty() : reading.read(path.get(), root, complaints);
        }
    }
}
