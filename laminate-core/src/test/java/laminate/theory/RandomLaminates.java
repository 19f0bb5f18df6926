package laminate.theory;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Seeded random laminates; a third are sandwiches whose core is up to ten thousand times softer than the skins. */
public final class RandomLaminates {
    private static final long SEED = 20260115;

    private RandomLaminates() {}

    /** So many of them, the same each time. */
    public static Stream<Laminate> take(int count) {
        return IntStream.range(0, count).mapToObj(i -> laminate(new Random(SEED + i), i % 3 == 0));
    }

    private static Laminate laminate(Random random, boolean sandwich) {
        List<Ply> plies = skin(random);
        if (sandwich) {
            double modulus = 10e6 * Math.pow(10, 1.5 * random.nextDouble());
            Lamina core = Lamina.isotropic(modulus, 0.3).withExpansion(35e-6, 35e-6);
            plies.add(new Ply(core, 0.005 + 0.03 * random.nextDouble(), 0));
            plies.addAll(skin(random));
        }
        return Laminate.of(plies);
    }

    private static List<Ply> skin(Random random) {
        List<Ply> plies = new ArrayList<>();
        int count = 1 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            plies.add(ply(random));
        }
        return plies;
    }

    /** One ply of anything between mat and carbon. */
    public static Ply ply(Random random) {
        double E1 = 8e9 * Math.pow(20, random.nextDouble());
        double E2 = E1 * (0.06 + 0.94 * random.nextDouble());
        Lamina lamina = Lamina.of(E1, E2, E1 * (0.03 + 0.3 * random.nextDouble()), 0.1 + 0.3 * random.nextDouble())
                .withExpansion(-1e-6 + 1e-5 * random.nextDouble(), 1e-5 + 4e-5 * random.nextDouble())
                .withMoistureExpansion(0.05 * random.nextDouble(), 0.6 * random.nextDouble());
        double angle = random.nextBoolean() ? 45.0 * random.nextInt(4) : 180 * random.nextDouble() - 90;
        return new Ply(lamina, 0.0001 + 0.0015 * random.nextDouble(), angle);
    }
}
