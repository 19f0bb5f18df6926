package laminate.compare;

import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestParts.gelcoat;
import static laminate.testing.TestParts.layUp;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.material.Reinforcement;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import laminate.unit.UnitPrice;

/** One lid made in several ways, and what things cost. */
final class TestWays {
    static final Workshop PAID =
            Workshop.USUAL.withLabour(Workshop.USUAL.labour().at(UnitPrice.parse("28 GBP/h")));
    static final PriceList PRICES = new PriceList(
            "GBP",
            Optional.empty(),
            List.of(
                    price("mat-300", "3.10 GBP/kg"),
                    price("mat-450", "3.00 GBP/kg"),
                    price("roving-600", "3.40 GBP/kg"),
                    price("polyester-ortho", "4.20 GBP/kg"),
                    price("gelcoat-iso", "6.50 GBP/kg"),
                    price("pvc-80", "14 GBP/m²"),
                    price("mekp", "9 GBP/kg"),
                    price("acetone", "3 GBP/l"),
                    price("gloves", "0.4 GBP/piece"),
                    price("mixing-pot", "0.3 GBP/piece"),
                    price("feed-hose", "1.3 GBP/m"),
                    price("infusion-connector", "1.6 GBP/piece"),
                    price("brush", "0.9 GBP/piece"),
                    price("peel-ply", "1.80 GBP/m²"),
                    price("release-film", "1.20 GBP/m²"),
                    price("breather", "1.50 GBP/m²"),
                    price("bag-film", "0.9 GBP/m²"),
                    price("flow-mesh", "1.40 GBP/m²"),
                    price("sealant-tape", "0.8 GBP/m"),
                    price("spiral-tube", "0.7 GBP/m"),
                    price("resin-hose", "1.1 GBP/m")));

    private TestWays() {}

    static Price price(String material, String price) {
        return new Price(material, UnitPrice.parse(price), Optional.empty());
    }

    static LayUp by(Process process) {
        return layUp(process, POLYESTER);
    }

    static List<Layer> layers(Process process, Reinforcement... reinforcements) {
        return Arrays.stream(reinforcements)
                .<Layer>map(one -> ReinforcementLayer.of(one, by(process)))
                .toList();
    }

    /** 300 mat, then mat and roving three times. */
    static List<Layer> solid(Process process) {
        return layers(process, mat(0.3), mat(0.45), roving(0.6), mat(0.45), roving(0.6), mat(0.45), roving(0.6));
    }

    /** Faces of mat and roving on either side of a foam, mirrored. */
    static List<Layer> sandwich(Process process) {
        List<Layer> outside = layers(process, mat(0.3), roving(0.6), mat(0.45));
        List<Layer> inside = layers(process, mat(0.45), roving(0.6), mat(0.3));
        return Stream.of(outside, List.<Layer>of(CoreLayer.of(PVC, 0.012, by(process))), inside)
                .flatMap(List::stream)
                .toList();
    }

    static Zone zone(String name, double area, List<Layer> layers) {
        return new Zone(
                name,
                area,
                1,
                List.of(gelcoat(0.0006)),
                layers,
                Optional.of(new Trim(3 * Math.sqrt(area), 0.04)),
                ContentSet.TRADE,
                Measured.NOTHING);
    }

    static Part lid(List<Layer> layers) {
        return Part.of("lid", List.of(zone("lid", 0.8, layers)));
    }

    static Candidate way(String name, Part part) {
        return new Candidate(name, part, PAID, Optional.of(PRICES));
    }

    static Candidate solidBy(Process process) {
        return way(process.word(), lid(solid(process)));
    }

    /** A sheet given by its lamina. */
    static LaminaLayer sheet(double modulus, double density, double thickness) {
        return new LaminaLayer(Lamina.isotropic(modulus, 0.33), density, thickness, 0, "");
    }

    static Part sheets(String name, LaminaLayer... sheets) {
        return Part.of(name, List.of(Zone.of(name, 1, List.of(sheets))));
    }

    static List<Candidate> threeProcesses() {
        return Arrays.stream(Process.values()).map(TestWays::solidBy).toList();
    }
}
