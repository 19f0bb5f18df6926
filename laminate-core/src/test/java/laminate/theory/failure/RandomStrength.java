package laminate.theory.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.MatStrength;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/** Random laminae and laminates with strengths; every third laminate is a sandwich. */
final class RandomStrength {
    private RandomStrength() {}

    static Lamina ply(Random random) {
        double E1 = 20e9 * Math.pow(8, random.nextDouble());
        double E2 = E1 * (0.06 + 0.9 * random.nextDouble());
        PlyStrength strength = PlyStrength.of(
                E1 * between(random, 0.005, 0.02),
                E1 * between(random, 0.004, 0.015),
                E2 * between(random, 0.002, 0.01),
                E2 * between(random, 0.005, 0.02),
                between(random, 30e6, 90e6));
        return Lamina.of(E1, E2, E1 * between(random, 0.04, 0.2), between(random, 0.1, 0.35))
                .withExpansion(between(random, -1e-6, 9e-6), between(random, 1e-5, 4e-5))
                .withMoistureExpansion(0.01, 0.2)
                .withStrength(
                        random.nextBoolean() ? strength : strength.withS23(strength.Yc() * between(random, 0.3, 0.7)));
    }

    static Lamina mat(Random random) {
        double T = between(random, 60e6, 120e6);
        double C = T * between(random, 0.7, 1.6);
        MatStrength strength = new MatStrength(T, C, Math.sqrt(T * C) * between(random, 0.52, 0.8));
        return Lamina.isotropic(between(random, 5e9, 12e9), between(random, 0.25, 0.38))
                .withExpansion(25e-6, 25e-6)
                .withMoistureExpansion(0.05, 0.05)
                .withStrength(strength);
    }

    static Lamina core(Random random) {
        CoreStrength strength = new CoreStrength(
                between(random, 0.5e6, 2e6),
                between(random, 0.5e6, 2e6),
                between(random, 0.6e6, 4e6),
                OptionalDouble.empty());
        return Lamina.isotropic(between(random, 30e6, 300e6), 0.3)
                .withExpansion(35e-6, 35e-6)
                .withMoistureExpansion(0, 0)
                .withStrength(strength);
    }

    static Laminate laminate(Random random, boolean sandwich) {
        List<Ply> plies = skin(random);
        if (sandwich) {
            plies.add(new Ply(core(random), between(random, 0.005, 0.03), 0));
            plies.addAll(skin(random));
        }
        return Laminate.of(plies);
    }

    private static List<Ply> skin(Random random) {
        List<Ply> plies = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            Lamina lamina = random.nextInt(4) == 0 ? mat(random) : ply(random);
            plies.add(new Ply(lamina, between(random, 0.0003, 0.0015), between(random, -90, 90)));
        }
        return plies;
    }

    static double between(Random random, double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    static Vector3 vector(Random random, double size) {
        return new Vector3(size * random.nextGaussian(), size * random.nextGaussian(), size * random.nextGaussian());
    }
}
