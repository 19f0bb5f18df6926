package laminate.order.cut;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A layout told in metres. */
final class Cutting {
    private final Sizes sizes;
    private final Layout layout;
    private final Grid grid;

    Cutting(Sizes sizes, Layout layout, Grid grid) {
        this.sizes = sizes;
        this.layout = layout;
        this.grid = grid;
    }

    Box box(int item) {
        boolean turned = layout.turned(item);
        long x = layout.x(item);
        long y = layout.y(item);
        return new Box(x, y, x + sizes.across(item, turned), y + sizes.along(item, turned));
    }

    /** The pieces as they come off the stock: along it and then across. */
    List<Integer> inOrder(IntStream items) {
        return items.boxed()
                .sorted(Comparator.comparingLong((Integer item) -> layout.y(item))
                        .thenComparingLong(layout::x))
                .toList();
    }

    /** Pieces in their places, which count from an origin along the stock. */
    List<Placement> placements(List<Integer> items, long origin) {
        return items.stream()
                .map(item -> new Placement(
                        sizes.piece(item),
                        grid.metres(layout.x(item)),
                        grid.metres(layout.y(item) - origin),
                        layout.turned(item)))
                .toList();
    }

    /** What can serve of a stretch of the stock, in places that count from an origin along it. */
    List<Offcut> offcuts(Box stretch, List<Integer> items, double least, long origin) {
        List<Box> pieces = items.stream().map(this::box).toList();
        return FreeRectangles.of(stretch, pieces, grid.stepsAtLeast(least)).stream()
                .map(free -> new Offcut(
                        grid.metres(free.x()),
                        grid.metres(free.y() - origin),
                        grid.metres(free.right() - free.x()),
                        grid.metres(free.end() - free.y())))
                .toList();
    }
}
