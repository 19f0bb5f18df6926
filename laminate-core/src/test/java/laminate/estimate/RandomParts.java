package laminate.estimate;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.FLOWCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PAINT;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.cloth;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.hybridCloth;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.BAG_EPOXY;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.coating;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.withLoss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.material.Reinforcement;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Item;
import laminate.part.LaminaLayer;
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
import laminate.process.Loss;
import laminate.process.Workshop;
import laminate.theory.Lamina;

/** Seeded random parts of every sort of layer, coating, process and resin, and a workshop where laps are cut too. */
public final class RandomParts {
    private static final long SEED = 20260115;
    private static final List<LayUp> LAY_UPS = List.of(HAND, HAND_EPOXY, BAG, BAG_EPOXY, INFUSED);
    private static final List<Reinforcement> REINFORCEMENTS = List.of(
            mat(0.3),
            mat(0.45),
            roving(0.6),
            cloth(0.2),
            biaxial(0.6),
            unidirectional(0.3),
            combination(0.5, 0.3),
            hybridCloth(0.2));

    /** Losses are the usual ones, with laps of 4 % in every process. */
    public static final Workshop WORKSHOP = withLoss(0.04, Loss.LAPS);

    private RandomParts() {}

    public static Stream<Part> take(int count) {
        return IntStream.range(0, count).mapToObj(i -> part(new Random(SEED + i)));
    }

    private static Part part(Random random) {
        List<Zone> zones = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            zones.add(zone(random, "zone " + i));
        }
        List<Item> items = random.nextBoolean()
                ? List.of()
                : List.of(new Item("hinge", 2, 0.12 * random.nextDouble(), Optional.empty()));
        return new Part("part", 1 + random.nextInt(4), zones, items, Measured.NOTHING);
    }

    private static Zone zone(Random random, String name) {
        LayUp layUp = LAY_UPS.get(random.nextInt(LAY_UPS.size()));
        List<Layer> layers = new ArrayList<>();
        int count = 1 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            layers.add(layer(random, layUp, i < 2 ? "" : "bulk"));
        }
        Optional<Trim> trim =
                random.nextBoolean() ? Optional.empty() : Optional.of(new Trim(3 * random.nextDouble() + 0.1, 0.04));
        return new Zone(
                name,
                0.05 + 5 * random.nextDouble(),
                1 + random.nextInt(3),
                coatings(random),
                layers,
                trim,
                ContentSet.TRADE,
                Measured.NOTHING);
    }

    private static List<Coating> coatings(Random random) {
        List<Coating> coatings = new ArrayList<>();
        if (random.nextBoolean()) {
            coatings.add(gelcoat(0.0005));
        }
        if (random.nextBoolean()) {
            coatings.add(coating(FLOWCOAT, new Film(Film.Basis.AREAL_WEIGHT, 0.4)));
        }
        if (random.nextInt(4) == 0) {
            coatings.add(coating(PAINT, new Film(Film.Basis.CURED, 0.00006)));
        }
        return coatings;
    }

    private static Layer layer(Random random, LayUp layUp, String stage) {
        return switch (random.nextInt(8)) {
            case 0 ->
                new CoreLayer(
                        PVC,
                        0.005 + 0.02 * random.nextDouble(),
                        0,
                        CoreFinish.of(CoreFinish.Kind.values()[random.nextInt(4)]),
                        layUp,
                        random.nextBoolean()
                                ? Optional.empty()
                                : Optional.of(new Bed(PASTE, Dose.usual(PASTE, MEKP), 0.001)),
                        stage);
            case 1 -> new BulkerLayer(BULKING_MAT, layUp, stage);
            case 2 -> new LaminaLayer(Lamina.of(40e9, 9e9, 4e9, 0.28), 1900, 0.0005, 30, stage);
            default ->
                new ReinforcementLayer(
                        REINFORCEMENTS.get(random.nextInt(REINFORCEMENTS.size())),
                        45 * random.nextInt(4),
                        random.nextBoolean(),
                        layUp,
                        Optional.empty(),
                        stage);
        };
    }
}
