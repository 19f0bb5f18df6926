package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.estimate.PriceList;

/** Reads the prices and the workshop of a part or project file, whether they stand in it or in files of their own. */
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
        Optional<Path> priceFile = file(in, "prices", overrides.prices(), madeHere.prices());
        Term<PriceList> statedPrices = prices(in, stock, priceFile);
        Optional<PriceList> prices = madeHere.prices(in, statedPrices.value());
        Optional<Path> workshopFile = file(in, "workshop", overrides.workshop(), madeHere.workshop());
        WorkshopReader reader = new WorkshopReader(stock, Yard.currency(prices));
        Term<WorkshopFile> statedWorkshop = workshop(in, reader, workshopFile);
        WorkshopFile workshop = madeHere.workshop(in, statedWorkshop.value());
        boolean sound = !statedPrices.flawed() && !statedWorkshop.flawed();
        return new Yard(workshop, workshopFile, prices, priceFile, sound);
    }

    /** The file of the project, else the one that was asked for, else the one that the part names, whether it is there or not. */
    private Optional<Path> file(Fields in, String key, Optional<Path> asked, OfYard<?> known) {
        if (known.isOfTheProject()) {
            return known.file();
        }
        Optional<String> named = asked.isPresent() ? Optional.empty() : in.word(key);
        return named.isPresent() ? beside.path(named.get()) : asked;
    }

    private Term<PriceList> prices(Fields in, Stock stock, Optional<Path> file) {
        return isKnown(madeHere.prices(), file)
                ? known(in, "prices", madeHere.prices())
                : fileOr(in, "prices", overrides.prices(), Keys.PRICES, new PriceReader(stock).prices());
    }

    private Term<WorkshopFile> workshop(Fields in, WorkshopReader reader, Optional<Path> file) {
        return isKnown(madeHere.workshop(), file)
                ? known(in, "workshop", madeHere.workshop())
                : fileOr(in, "workshop", overrides.workshop(), Keys.WORKSHOP, reader.workshop());
    }

    private static boolean isKnown(OfYard<?> known, Optional<Path> file) {
        return known.isOfTheProject() || known.in(file).isPresent();
    }

    private static <T> Term<T> known(Fields in, String key, OfYard<T> known) {
        in.known(key);
        return known.value().isPresent() ? Term.of(known.value().get(), in.node()) : Term.nothing();
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
