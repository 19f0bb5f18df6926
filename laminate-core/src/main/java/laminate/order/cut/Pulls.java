package laminate.order.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Divides a layout on a roll wherever a straight cut across it meets no piece. */
final class Pulls {
    private final Grid grid;
    private final Cutting cutting;
    private final List<Stretch> stretches = new ArrayList<>();

    private record Stretch(Box box, List<Integer> items) {}

    Pulls(Sizes sizes, Layout layout, Stock stock, Grid grid) {
        this.grid = grid;
        cutting = new Cutting(sizes, layout, grid);
        List<Integer> open = new ArrayList<>();
        Box pull = new Box(0, 0, stock.width(), 0);
        for (int item : cutting.inOrder(IntStream.range(0, sizes.count()))) {
            Box box = cutting.box(item);
            if (box.y() >= pull.end() && !open.isEmpty()) {
                stretches.add(new Stretch(pull, List.copyOf(open)));
                open.clear();
                pull = new Box(0, pull.end(), stock.width(), pull.end());
            }
            open.add(item);
            pull = new Box(0, pull.y(), stock.width(), Math.max(pull.end(), box.end()));
        }
        stretches.add(new Stretch(pull, open));
    }

    List<Pull> all() {
        return stretches.stream()
                .map(stretch -> new Pull(
                        grid.metres(stretch.box.y()),
                        grid.metres(stretch.box.end() - stretch.box.y()),
                        cutting.placements(stretch.items, 0)))
                .toList();
    }

    /** What is left of all pulls, largest first. */
    List<Offcut> offcuts(double least) {
        return stretches.stream()
                .flatMap(stretch -> cutting.offcuts(stretch.box, stretch.items, least, 0).stream())
                .sorted(Comparator.comparingDouble(Offcut::area).reversed())
                .toList();
    }
}
