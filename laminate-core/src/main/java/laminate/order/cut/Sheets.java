package laminate.order.cut;

import java.util.List;
import java.util.stream.IntStream;

/** Divides a layout into its sheets. */
final class Sheets {
    private final Layout layout;
    private final Stock stock;
    private final Cutting cutting;
    private final int count;

    Sheets(Sizes sizes, Layout layout, Stock stock, Grid grid) {
        this.layout = layout;
        this.stock = stock;
        cutting = new Cutting(sizes, layout, grid);
        count = sizes.count();
    }

    List<Sheet> all(double leastOffcut) {
        return IntStream.range(0, layout.parts())
                .mapToObj(number -> sheet(number, leastOffcut))
                .toList();
    }

    private Sheet sheet(int number, double leastOffcut) {
        List<Integer> items = cutting.inOrder(IntStream.range(0, count).filter(item -> layout.part(item) == number));
        long start = number * stock.length();
        Box whole = new Box(0, start, stock.width(), start + stock.length());
        return new Sheet(cutting.placements(items, start), cutting.offcuts(whole, items, leastOffcut, start));
    }
}
