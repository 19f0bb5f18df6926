package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.estimate.PriceList;

/** Reads the prices and the workshop of a part or project file, whether they stand in it or in files of their own. */
final class YardReader {

    private final Beside beside;
    private final Overrides overrides;
    private final SharedFiles shared;
    private final MadeHere madeHere;

    YardReader(Beside beside, Overrides overrides, SharedFiles shared, MadeHere madeHere) {
        this.beside = beside;
        this.overrides = overrides;
        this.shared = shared;
        this.madeHere = madeHere;
    }

    Yard yard(Fields in, Stock stock) {
        Optional<Path> priceFile = file(in, "prices", overrides.prices(), madeHere.prices());
        Term<PriceList> statedPrices = prices(in, stock, priceFile);
        Optional<PriceList> prices = madeHere.prices(in, statedPrices.value());
        Optional<Path> workshopFile = file(in, "workshop", overrides.workshop(), madeHere.workshop());
        Term<WorkshopFile> statedWorkshop = workshop(in, stock, Yard.currency(prices), workshopFile);
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
                : asked(in, "prices", overrides.prices(), new Prices(stock));
    }

    private Term<WorkshopFile> workshop(Fields in, Stock stock, Optional<String> currency, Optional<Path> file) {
        return isKnown(madeHere.workshop(), file)
                ? known(in, "workshop", madeHere.workshop())
                : asked(in, "workshop", overrides.workshop(), new Workshop(stock, currency));
    }

    private static boolean isKnown(OfYard<?> known, Optional<Path> file) {
        return known.isOfTheProject() || known.in(file).isPresent();
    }

    private static <T> Term<T> known(Fields in, String key, OfYard<T> known) {
        in.known(key);
        return known.value().isPresent() ? Term.of(known.value().get(), in.node()) : Term.nothing();
    }

    /** What stands in the file that was asked for, else in the one that the part names, else in the part itself. */
    private static <T> Term<T> asked(Fields in, String key, Optional<Path> asked, FileOrHere<T> reading) {
        if (asked.isEmpty()) {
            return in.stated(key, reading);
        }
        in.known(key);
        Optional<T> value = reading.ofFile(asked.get(), in.complaints());
        in.given(value);
        return value.isEmpty() ? Term.flaw() : Term.of(value.get(), in.node());
    }

    /** Reads what stands in a file that is named, or in place of its name. */
    private abstract class FileOrHere<T> implements Reading<T> {

        abstract Optional<T> ofFile(Path file, Complaints complaints);

        abstract Reading<T> here();

        @Override
        public Optional<T> read(Node node, Complaints complaints) {
            if (!(node instanceof Node.Scalar)) {
                return here().read(node, complaints);
            }
            Optional<Path> path = beside.read(node, complaints);
            return path.isEmpty() ? Optional.empty() : ofFile(path.get(), complaints);
        }
    }

    private final class Prices extends FileOrHere<PriceList> {

        private final Stock stock;

        Prices(Stock stock) {
            this.stock = stock;
        }

        @Override
        Optional<PriceList> ofFile(Path file, Complaints complaints) {
            return shared.prices(file, stock, complaints);
        }

        @Override
        Reading<PriceList> here() {
            return new PriceReader(stock).prices();
        }
    }

    private final class Workshop extends FileOrHere<WorkshopFile> {

        private final Stock stock;
        private final Optional<String> currency;

        Workshop(Stock stock, Optional<String> currency) {
            this.stock = stock;
            this.currency = currency;
        }

        @Override
        Optional<WorkshopFile> ofFile(Path file, Complaints complaints) {
            return shared.workshop(file, stock, currency, complaints);
        }

        @Override
        Reading<WorkshopFile> here() {
            return new WorkshopReader(stock, currency).workshop();
        }
    }
}
