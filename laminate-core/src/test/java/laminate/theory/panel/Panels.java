package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import laminate.testing.ReferenceCase;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;

/** Laminates and panels that the tests share. */
final class Panels {
    static final Edges SIMPLE = Edges.all(Edge.SIMPLY_SUPPORTED);
    static final Edges SOFT = Edges.all(Edge.SOFT_SIMPLY_SUPPORTED);
    static final Edges CLAMPED = Edges.all(Edge.CLAMPED);
    static final Lamina ROVING = Lamina.of(40e9, 10e9, 4e9, 0.3).withTransverseShear(4e9, 3e9);
    /** 25 : 1, the fibre composite of Pagano's papers, in units of its transverse modulus. */
    static final Lamina STRONGLY_DIRECTED = Lamina.of(25, 1, 0.5, 0.25).withTransverseShear(0.5, 0.2);

    private Panels() {}

    static Laminate isotropic(double E, double nu, double thickness) {
        return Laminate.of(List.of(new Ply(Lamina.isotropic(E, nu), thickness, 0)));
    }

    /** Plies of equal thickness. */
    static Laminate plies(Lamina lamina, double thickness, double... angles) {
        List<Ply> plies = new ArrayList<>();
        for (double angle : angles) {
            plies.add(new Ply(lamina, thickness, angle));
        }
        return Laminate.of(plies);
    }

    /** Symmetric, and twists when bent. */
    static Laminate twisting() {
        return plies(ROVING, 0.001, 30, -30, -30, 30);
    }

    static Laminate unsymmetric() {
        return plies(ROVING, 0.001, 0, 45, -30, 20);
    }

    /** Roving skins on a foam core. */
    static Laminate sandwich() {
        Lamina foam = Lamina.isotropic(80e6, 1.0 / 3);
        return Laminate.of(List.of(
                new Ply(ROVING, 0.001, 0),
                new Ply(ROVING, 0.0005, 90),
                new Ply(foam, 0.015, 0),
                new Ply(ROVING, 0.0005, 90),
                new Ply(ROVING, 0.001, 0)));
    }

    static Laminate random(Random random) {
        List<Ply> plies = new ArrayList<>();
        int count = 2 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            double E1 = 8e9 * Math.pow(5, random.nextDouble());
            Lamina lamina = Lamina.of(E1, E1 * (0.2 + 0.8 * random.nextDouble()), 0.2 * E1, 0.25);
            plies.add(new Ply(lamina, 0.001 + 0.002 * random.nextDouble(), 180 * random.nextDouble() - 90));
        }
        return Laminate.of(plies);
    }

    static List<PanelLoad> pressure(double p) {
        return List.of(new PanelLoad.Uniform(p));
    }

    static ReferenceCase reference(String id) {
        return ReferenceCase.load("/reference/laminate-cases.json", id).get(0);
    }

    static double expected(ReferenceCase c, String name) {
        return c.expected().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow()
                .value();
    }

    /** A lamina of a reference case. */
    static Lamina lamina(Map<String, Object> m) {
        return Lamina.of((Double) m.get("E1"), (Double) m.get("E2"), (Double) m.get("G12"), (Double) m.get("nu12"))
                .withTransverseShear((Double) m.get("G13"), (Double) m.get("G23"));
    }

    /** Plies given by material name, thickness and angle. */
    static Laminate laminate(ReferenceCase c) {
        Map<String, Object> materials = ReferenceCase.map(c.inputs().get("materials"));
        return Laminate.of(ReferenceCase.maps(c.inputs().get("plies")).stream()
                .map(p -> new Ply(
                        lamina(ReferenceCase.map(materials.get(p.get("material")))), (Double) p.get("t_m"), (Double)
                                p.get("theta_deg")))
                .toList());
    }
}
