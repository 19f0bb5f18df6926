package laminate.plan;

import static laminate.testing.TestMaterials.AMINE;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.estimate.Estimator;
import laminate.material.Figure;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Bed;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Layer;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Mixing;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;

/** Resins whose gel times are round, parts that take them, and workshops that plan them. */
final class PlanParts {
    /** 80 min at 10 °C and 1 %; half with every 10 °C and with every doubling of the dose, up to 30 °C and 4 %. */
    static final Resin POLYESTER = timed(TestMaterials.POLYESTER, 80 * 60, 0.01, MEKP.id());
    /** 40 min at 10 °C and 1.2 %, likewise. */
    static final Resin GELCOAT = timed(TestMaterials.GELCOAT, 40 * 60, 0.012, MEKP.id());
    /** Paste, as polyester. */
    static final Resin PASTE = timed(TestMaterials.PASTE, 80 * 60, 0.01, MEKP.id());
    /** 120 min at 10 °C and its one ratio; half with every 10 °C. */
    static final Resin EPOXY = withPoints(TestMaterials.EPOXY, row(AMINE.id(), 0.30, 120 * 60));

    static final LayUp HAND = layUp(Process.HAND_LAY_UP, POLYESTER, 0.02);
    static final LayUp HAND_EPOXY = new LayUp(Process.HAND_LAY_UP, EPOXY, new Dose(AMINE, 0.30));
    static final LayUp BAG = layUp(Process.VACUUM_BAG, POLYESTER, 0.01);
    static final LayUp INFUSED = layUp(Process.INFUSION, POLYESTER, 0.01);

    private static final List<LayUp> LAY_UPS = List.of(HAND, HAND_EPOXY, BAG, INFUSED);
    private static final long SEED = 20260212;

    private PlanParts() {}

    static LayUp layUp(Process process, Resin resin, double dose) {
        return new LayUp(process, resin, new Dose(MEKP, dose));
    }

    private static Resin timed(Resin resin, double seconds, double dose, String agent) {
        List<Resin.GelPoint> points = new ArrayList<>(row(agent, dose, seconds));
        points.addAll(row(agent, 2 * dose, seconds / 2));
        points.addAll(row(agent, 4 * dose, seconds / 4));
        return withPoints(resin, points);
    }

    private static List<Resin.GelPoint> row(String agent, double dose, double seconds) {
        return List.of(
                point(agent, dose, 10, seconds),
                point(agent, dose, 20, seconds / 2),
                point(agent, dose, 30, seconds / 4));
    }

    private static Resin.GelPoint point(String agent, double dose, double celsius, double seconds) {
        return new Resin.GelPoint(agent, dose, kelvin(celsius), new Figure(seconds, "test", Status.MEMORY));
    }

    static Resin withPoints(Resin resin, List<Resin.GelPoint> points) {
        return new Resin(
                resin.id(),
                resin.name(),
                resin.family(),
                resin.use(),
                resin.waxed(),
                resin.figures(),
                resin.cures(),
                points);
    }

    static double kelvin(double celsius) {
        return 273.15 + celsius;
    }

    /** The usual workshop at a temperature (°C) with so many hands. */
    static Workshop workshop(double celsius, int crew) {
        Workshop usual = Workshop.USUAL.withTemperature(kelvin(celsius));
        return usual.withShopFloor(usual.shopFloor().withCrew(crew));
    }

    static Workshop with(Workshop workshop, Mixing mixing) {
        return workshop.withShopFloor(workshop.shopFloor().with(mixing));
    }

    static Mixing mixing(double resinStep, double agentStep, OptionalDouble stroke, OptionalDouble largest) {
        Mixing usual = Mixing.USUAL;
        return new Mixing(usual.usableShare(), resinStep, agentStep, stroke, largest, usual.mixingTime());
    }

    static MixPlan plan(Part part, Workshop workshop) {
        return new MixPlanner(workshop).plan(new Estimator(workshop).estimate(part));
    }

    static ReinforcementLayer layer(Reinforcement reinforcement, LayUp layUp, String stage) {
        return new ReinforcementLayer(reinforcement, 0, false, layUp, Optional.empty(), stage);
    }

    static CoreLayer core(LayUp layUp, boolean bedded) {
        return new CoreLayer(
                TestMaterials.PVC,
                0.010,
                0,
                CoreFinish.PLAIN,
                layUp,
                bedded ? Optional.of(new Bed(PASTE, new Dose(MEKP, 0.015), 0.001)) : Optional.empty(),
                "");
    }

    static Coating gelcoat(int coats) {
        return new Coating(GELCOAT, new Dose(MEKP, 0.018), new Film(Film.Basis.WET, 0.0005), coats);
    }

    static Zone zone(String name, double area, List<Coating> coatings, Layer... layers) {
        return new Zone(name, area, 1, coatings, List.of(layers), Optional.empty(), ContentSet.TRADE, Measured.NOTHING);
    }

    /** Seeded random parts of every process, with coats, cores, beds, stages, trims and laps. */
    static Stream<Part> random(int count) {
        return IntStream.range(0, count).mapToObj(i -> part(new Random(SEED + i)));
    }

    private static Part part(Random random) {
        List<Zone> zones = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            zones.add(zone(random, "zone " + i));
        }
        return new Part("part", 1 + random.nextInt(3), zones, List.of(), Measured.NOTHING);
    }

    private static Zone zone(Random random, String name) {
        LayUp layUp = LAY_UPS.get(random.nextInt(LAY_UPS.size()));
        List<Layer> layers = new ArrayList<>();
        int count = 1 + random.nextInt(12);
        for (int i = 0; i < count; i++) {
            layers.add(layer(random, layUp, i < 2 ? "skin" : ""));
        }
        Optional<Trim> trim = random.nextBoolean() ? Optional.empty() : Optional.of(new Trim(2, 0.04));
        List<Coating> coatings = random.nextBoolean() ? List.of() : List.of(gelcoat(1 + random.nextInt(2)));
        return new Zone(
                name,
                0.05 + 4 * random.nextDouble(),
                1 + random.nextInt(3),
                coatings,
                layers,
                trim,
                ContentSet.TRADE,
                Measured.NOTHING);
    }

    private static Layer layer(Random random, LayUp layUp, String stage) {
        return switch (random.nextInt(6)) {
            case 0 -> core(layUp, random.nextBoolean());
            case 1 -> layer(biaxial(0.6), layUp, stage);
            case 2 -> layer(roving(0.6), layUp, stage);
            default -> layer(mat(0.45), layUp, stage);
        };
    }
}
