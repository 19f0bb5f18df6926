package laminate.testing;

import static laminate.testing.TestMaterials.AMINE;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.VINYLESTER;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Reinforcement;
import laminate.material.Resin;
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
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;

/** Lay-ups, layers, zones and workshops for tests. */
public final class TestParts {
    public static final LayUp HAND = layUp(Process.HAND_LAY_UP, POLYESTER);
    public static final LayUp HAND_EPOXY = layUp(Process.HAND_LAY_UP, EPOXY);
    public static final LayUp BAG = layUp(Process.VACUUM_BAG, POLYESTER);
    public static final LayUp BAG_EPOXY = layUp(Process.VACUUM_BAG, EPOXY);
    public static final LayUp INFUSED = layUp(Process.INFUSION, VINYLESTER);

    private TestParts() {}

    /** A process and a resin with its usual dose. */
    public static LayUp layUp(Process process, Resin resin) {
        return new LayUp(process, resin, Dose.usual(resin, resin == EPOXY ? AMINE : MEKP));
    }

    public static ReinforcementLayer hand(Reinforcement reinforcement) {
        return ReinforcementLayer.of(reinforcement, HAND);
    }

    public static ReinforcementLayer staged(Reinforcement reinforcement, LayUp layUp, String stage) {
        return new ReinforcementLayer(reinforcement, 0, false, layUp, Optional.empty(), stage);
    }

    public static ReinforcementLayer turned(Reinforcement reinforcement, LayUp layUp, double angle) {
        return new ReinforcementLayer(reinforcement, angle, true, layUp, Optional.empty(), "");
    }

    public static CoreLayer core(LayUp layUp) {
        return CoreLayer.of(TestMaterials.PVC, 0.010, layUp);
    }

    /** Gelcoat by its wet film (m). */
    public static Coating gelcoat(double wet) {
        return coating(GELCOAT, new Film(Film.Basis.WET, wet));
    }

    public static Coating coating(Resin material, Film film) {
        String agent = material.defaultCure().agent();
        return new Coating(
                material, Dose.usual(material, agent.equals("mekp") ? MEKP : TestMaterials.ISOCYANATE), film, 1);
    }

    public static Zone zone(double area, Layer... layers) {
        return Zone.of("panel", area, List.of(layers));
    }

    public static Zone coated(List<Coating> coatings, Layer... layers) {
        return new Zone("panel", 1, 1, coatings, List.of(layers), Optional.empty(), ContentSet.TRADE, Measured.NOTHING);
    }

    public static Zone trimmed(Zone zone, Trim trim) {
        return new Zone(
                zone.name(),
                zone.area(),
                zone.count(),
                zone.coatings(),
                zone.layers(),
                Optional.of(trim),
                zone.contents(),
                zone.measured());
    }

    public static Part part(Zone... zones) {
        return Part.of("lid", List.of(zones));
    }

    public static Part times(int count, Part part) {
        return new Part(part.name(), count, part.zones(), part.items(), part.measured());
    }

    /** A usual workshop at a temperature (K). */
    public static Workshop workshopAt(double temperature) {
        Workshop usual = Workshop.USUAL;
        return new Workshop(
                OptionalDouble.of(temperature),
                usual.contentRules(),
                usual.voids(),
                usual.losses(),
                usual.gelcoatSprayed(),
                usual.evaporation(),
                usual.labour(),
                usual.consumables(),
                usual.stiffness(),
                usual.strength());
    }

    /** A workshop with these voids in every process. */
    public static Workshop withVoids(double fraction) {
        Map<Process, Figure> voids = new EnumMap<>(Process.class);
        Arrays.stream(Process.values()).forEach(process -> voids.put(process, Figure.stated(fraction)));
        return Workshop.USUAL.withVoids(voids);
    }

    /** A workshop that loses nothing, but for evaporation. */
    public static Workshop withoutLosses() {
        return withLoss(0, Loss.values());
    }

    /** A workshop with this value for these losses in every process. */
    public static Workshop withLoss(double value, Loss... losses) {
        Map<Process, Map<Loss, Figure>> all = new EnumMap<>(Process.class);
        for (Process process : Process.values()) {
            Map<Loss, Figure> own = new EnumMap<>(Loss.class);
            Arrays.stream(losses).forEach(loss -> own.put(loss, Figure.stated(value)));
            all.put(process, own);
        }
        return Workshop.USUAL.withLosses(all);
    }
}
