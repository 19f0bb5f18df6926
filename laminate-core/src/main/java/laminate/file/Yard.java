package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.estimate.PriceList;

/**
 * A workshop and its prices, each with the file that it is of, if it is of one.
 *
 * @param workshop the workshop, a usual one where none is stated
 * @param workshopFile its file
 * @param prices the prices, empty where none are stated
 * @param priceFile their file
 * @param sound whether both could be read; if not, nothing is to be compared with them
 */
record Yard(
        WorkshopFile workshop,
        Optional<Path> workshopFile,
        Optional<PriceList> prices,
        Optional<Path> priceFile,
        boolean sound) {

    Optional<String> currency() {
        return currency(prices);
    }

    static Optional<String> currency(Optional<PriceList> prices) {
        return prices.isPresent() ? Optional.of(prices.get().currency()) : Optional.empty();
    }
}
