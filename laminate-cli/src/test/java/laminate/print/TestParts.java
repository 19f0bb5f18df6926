package laminate.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.part.Bed;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Item;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Measured;
import laminate.part.Outline;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.Labour;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/** Estimates of a boat club's parts, made through the library alone. */
public final class TestParts {
    public static final Workshop CLUB = Workshop.USUAL.withLabour(Labour.USUAL.at(UnitPrice.parse("28 GBP/h")));

    private TestParts() {}

    /** Two zones, coatings, a bedded core, items, trim, four mouldings, measured, all priced. */
    public static PartEstimate lockerLid() {
        return new Estimator(CLUB, Optional.of(prices(true))).estimate(lid());
    }

    /** The same with a price list in which some prices are missing. */
    public static PartEstimate lockerLidMissingPrices() {
        return new Estimator(Workshop.USUAL, Optional.of(prices(false))).estimate(lid());
    }

    /** An infused, unsymmetric laminate with turned layers and a hardener, without prices. */
    public static PartEstimate kayakDeck() {
        List<Layer> layers = List.of(
                ReinforcementLayer.of(TestMaterials.MAT_300, TestMaterials.INFUSED),
                new ReinforcementLayer(
                        TestMaterials.BIAXIAL, 30, true, TestMaterials.INFUSED, Optional.empty(), "first shot"),
                new ReinforcementLayer(
                        TestMaterials.BIAXIAL, -45, false, TestMaterials.INFUSED, Optional.empty(), "first shot"));
        return new Estimator(Workshop.USUAL).estimate(Part.of("Kayak deck", List.of(Zone.of("deck", 1.9, layers))));
    }

    /** Two panels with their outline, wider than a roll of fabric and longer than a sheet of core. */
    public static PartEstimate outlinedPanel() {
        List<Layer> layers = List.of(
                ReinforcementLayer.of(TestMaterials.MAT_300, TestMaterials.BY_HAND),
                new ReinforcementLayer(TestMaterials.BIAXIAL, 0, false, TestMaterials.BY_HAND, Optional.empty(), ""),
                CoreLayer.of(TestMaterials.FOAM, 0.01, TestMaterials.BY_HAND),
                new ReinforcementLayer(TestMaterials.BIAXIAL, 30, false, TestMaterials.BY_HAND, Optional.empty(), ""));
        Zone panel = Zone.of("panel", 2.1 * 1.6 * 0.9, layers).withOutline(new Outline(2.1, 1.6, 0.9));
        return new Estimator(Workshop.USUAL)
                .estimate(new Part("Slip panel", 2, List.of(panel), List.of(), Measured.NOTHING));
    }

    /** Plies given directly, whose expansion is not known. */
    public static PartEstimate textbookStrip() {
        Lamina lamina = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28);
        List<Layer> layers =
                List.of(new LaminaLayer(lamina, 1600, 0.005, 0, ""), new LaminaLayer(lamina, 1600, 0.005, 90, ""));
        return new Estimator(Workshop.USUAL).estimate(Part.of("Textbook strip", List.of(Zone.of("strip", 1, layers))));
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else. */
    public static PartEstimate hostileNames() {
        List<Layer> layers = List.of(ReinforcementLayer.of(TestMaterials.MAT_450, TestMaterials.BY_HAND));
        Zone zone = Zone.of("=cmd|' /C calc'!A0, \"of\" 艇庫の蓋 " + "very-long-name-".repeat(9), 1, layers);
        return new Estimator(Workshop.USUAL)
                .estimate(Part.of("@lid \u001B[31m | *bold* <b>\nline two\u2028\u202Eend", List.of(zone)));
    }

    public static List<PartEstimate> all() {
        return List.of(lockerLid(), lockerLidMissingPrices(), kayakDeck(), textbookStrip(), hostileNames());
    }

    private static Part lid() {
        Dose gelcoatDose = Dose.usual(TestMaterials.GELCOAT, TestMaterials.MEKP);
        Coating gelcoat = new Coating(TestMaterials.GELCOAT, gelcoatDose, new Film(Film.Basis.WET, 0.5e-3), 1);
        Zone cored = new Zone(
                "lid",
                0.62,
                1,
                List.of(gelcoat),
                sandwich(),
                Optional.of(new Trim(3.4, 0.04)),
                ContentSet.TRADE,
                Measured.NOTHING);
        List<Layer> solid =
                List.of(mat450(), ReinforcementLayer.of(TestMaterials.BIAXIAL, TestMaterials.BY_HAND), mat450());
        Zone corners = new Zone(
                "corner",
                0.045,
                4,
                List.of(gelcoat),
                solid,
                Optional.empty(),
                ContentSet.TRADE,
                new Measured(OptionalDouble.empty(), List.of(0.0034, 0.0041)));
        List<Item> items = List.of(
                new Item("hinge", 2, 0.12, Optional.of(Money.parse("9.00 GBP"))),
                new Item("turn button", 1, 0.08, Optional.of(Money.parse("6.50 GBP"))));
        return new Part(
                "Bow locker lid", 4, List.of(cored, corners), items, new Measured(OptionalDouble.of(6.9), List.of()));
    }

    private static List<Layer> sandwich() {
        Bed bed = new Bed(TestMaterials.PASTE, Dose.usual(TestMaterials.PASTE, TestMaterials.MEKP), 0.001);
        return List.of(
                ReinforcementLayer.of(TestMaterials.MAT_300, TestMaterials.BY_HAND),
                mat450(),
                new CoreLayer(
                        TestMaterials.FOAM, 0.01, 0, CoreFinish.PLAIN, TestMaterials.BY_HAND, Optional.of(bed), ""),
                mat450(),
                ReinforcementLayer.of(TestMaterials.MAT_300, TestMaterials.BY_HAND));
    }

    private static Layer mat450() {
        return ReinforcementLayer.of(TestMaterials.MAT_450, TestMaterials.BY_HAND);
    }

    /** The prices of what the parts are made of; some are missing if not all are wanted. */
    public static PriceList prices(boolean all) {
        List<Price> prices = new ArrayList<>();
        add(prices, "3.20 GBP/kg", "mat-300", "mat-450");
        add(prices, "3.30 GBP/m²", "biaxial-600");
        add(prices, "24.50 GBP/m²", "pvc-80");
        add(prices, "4.10 GBP/kg", "polyester-ortho", "gelcoat-iso");
        if (all) {
            add(prices, "9.40 GBP/kg", "mekp", "bonding-paste");
            add(prices, "2.35 GBP/l", "acetone");
            add(
                    prices,
                    "0.33 GBP/piece",
                    "brush",
                    "roller",
                    "gloves",
                    "mixing-pot",
                    "mixing-stick",
                    "dust-mask",
                    "wipes");
            add(prices, "11.00 GBP/kg", "release-wax", "release-pva");
            add(prices, "0.12 GBP/m", "masking-tape");
        }
        return new PriceList("GBP", Optional.of(LocalDate.of(2026, 1, 15)), prices);
    }

    public static void add(List<Price> prices, String price, String... materials) {
        for (String material : materials) {
            prices.add(new Price(material, UnitPrice.parse(price), Optional.empty()));
        }
    }
}
