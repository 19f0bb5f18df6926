package laminate.order.cut;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Pieces of a boat's size in whole millimetres, some alike. */
final class RandomPieces {
    private RandomPieces() {}

    static List<Piece> of(int count, double mostWidth, double mostLength, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = IntStream.range(0, count)
                .mapToObj(i -> new Piece(
                        "no " + i,
                        size(random, mostWidth),
                        size(random, mostLength),
                        random.nextInt(3) == 0 ? Turn.QUARTER : Turn.NONE))
                .toList();
        return pieces.stream()
                .map(p -> random.nextInt(4) == 0 ? pieces.get(random.nextInt(count)) : p)
                .toList();
    }

    private static double size(Random random, double most) {
        return (50 + random.nextInt((int) (most * 1000) - 49)) / 1000.0;
    }
}
