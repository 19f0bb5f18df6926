package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.nio.file.Path;
import java.util.List;
import laminate.material.Materials;
import laminate.order.StockItem;
import laminate.unit.Dimension;

/** Reads stock files: what lies in the store. */
public final class StockFile {
    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);

    private StockFile() {}

    /**
     * Reads a stock file.
     *
     * @param file the file
     * @param materials the materials that may lie in the store; they are asked for their ids only
     * @return what lies in the store, in the order of the file
     * @throws InputException with all that is wrong in the file
     */
    public static List<StockItem> read(Path file, Materials materials) {
        Complaints complaints = new Complaints();
        Stock known = Stock.of(materials);
        Reading<List<StockItem>> stock = mapping(Keys.STOCK, in -> stock(in, known));
        return complaints.settle(stock.read(file, Keys.STOCK, complaints));
    }

    private static List<StockItem> stock(Fields in, Stock known) {
        var items = in.required("stock", listOf(mapping(Keys.STOCK_ITEM, entry -> item(entry, known))));
        in.requireSound();
        return items.get();
    }

    private static StockItem item(Fields in, Stock known) {
        var material = in.required("material", known.anyId());
        var amount = in.required("amount", SupplyReader.AMOUNT);
        var thickness = in.optional("thickness", LENGTH);
        var useBy = in.optional("use-by", PriceReader.DATE);
        in.requireSound();
        return new StockItem(material.get(), amount.get(), orNone(thickness.get()), useBy.get());
    }
}
