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

    private record Stretch(Box box, List<Integer> items) {
        long length() {
            return box.end() - box.y();
        }
    }

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
                pull = new Box(0, box.y(), stock.width(), box.y());
            }
            open.add(item);
            pull = new Box(0, pull.y(), stock.width(), Math.max(pull.end(), box.end()));
        }
        stretches.add(new Stretch(pull, open));
    }

    /** The pulls end to end, though they be laid on several rolls with ends between. */
    List<Pull> all() {
        List<Pull> pulls = new ArrayList<>();
        long from = 0;
        for (Stretch stretch : stretches) {
            pulls.add(new Pull(
                    grid.metres(from),
                    grid.metres(stretch.length()),
                    cutting.placements(stretch.items, stretch.box.y() - from)));
            from += stretch.length();
        }
        return pulls;
    }

    /** All of them together (steps). */
    long length() {
        return stretches.stream().mapToLong(Stretch::length).sum();
    }

    /** The longest of them (steps). */
    long longest() {
        return stretches.stream().mapToLong(Stretch::length).max().orElse(0);
    }

    /** What is left of all pulls, largest first. */
    List<Offcut> offcuts(double least) {
        List<Offcut> offcuts = new ArrayList<>();
        long from = 0;
        for (Stretch stretch : stretches) {
            offcuts.addAll(cutting.offcuts(stretch.box, stretch.items, least, stretch.box.y() - from));
            from += stretch.length();
        }
        offcuts.sort(Comparator.comparingDouble(Offcut::area).reversed());
        return offcuts;
    }
}
