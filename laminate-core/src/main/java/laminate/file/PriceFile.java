package laminate.file;

import java.nio.file.Path;
import laminate.estimate.PriceList;
import laminate.material.Materials;

/** Reads price files. */
public final class PriceFile {

    private PriceFile() {}

    /**
     * Reads a price file.
     *
     * @param file the file
     * @param materials the materials that may be priced; they are asked for their ids only
     * @return the prices
     * @throws InputException with all that is wrong in the file
     */
    public static PriceList read(Path file, Materials materials) {
        Complaints complaints = new Complaints();
        Reading<PriceList> prices = new PriceReader(Stock.of(materials)).prices();
        return complaints.settle(prices.read(file, Keys.PRICES, complaints));
    }
}
