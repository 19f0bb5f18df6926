package laminate.print.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.compare.Basis;
import laminate.compare.Candidate;
import laminate.compare.CompareOptions;
import laminate.compare.Refusal;
import laminate.compare.SideBySide;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Tooling;
import laminate.part.Zone;
import laminate.print.TestMaterials;
import laminate.print.TestParts;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelLoad;
import laminate.unit.Money;

/** A boat club's lid made in several ways, through the library alone. */
final class TestComparisons {
    private static final LayUp BAGGED =
            new LayUp(Process.VACUUM_BAG, TestMaterials.POLYESTER, TestMaterials.BY_HAND.dose());

    private TestComparisons() {}

    /** By hand on a mould that wears out, under a bag on one that lasts, and a way that cannot be; all priced. */
    static SideBySide lid() {
        return SideBySide.of(List.of(byHand("hand lay-up"), bagged(prices(true))), CompareOptions.USUAL)
                .withRefusals(List.of(new Refusal("infusion", "an open-celled core cannot be infused")));
    }

    /** A sheet of plywood and what is as stiff, without prices; a price that is missing in one way. */
    static SideBySide asStiffAsPlywood() {
        Layer sheet = new LaminaLayer(Lamina.isotropic(7e9, 0.3), 600, 0.009, 0, "");
        Part plywood = Part.of("Lid", List.of(Zone.of("lid", 0.62, List.of(sheet))));
        return SideBySide.of(
                List.of(
                        new Candidate("plywood", plywood, Workshop.USUAL, Optional.empty()),
                        byHand("glass"),
                        bagged(prices(false))),
                CompareOptions.USUAL.with(Basis.SAME_STIFFNESS));
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else. */
    static SideBySide hostileNames() {
        Part part = TestParts.hostileNames().part();
        return SideBySide.of(
                List.of(
                        new Candidate("=cmd|' /C calc'!A0", part, Workshop.USUAL, Optional.empty()),
                        new Candidate("@way \u001B[31m *bold* <b>\nnow", part, Workshop.USUAL, Optional.empty())),
                CompareOptions.USUAL);
    }

    static List<SideBySide> all() {
        return List.of(lid(), asStiffAsPlywood(), hostileNames());
    }

    private static Candidate byHand(String name) {
        return candidate(name, TestMaterials.BY_HAND, prices(true));
    }

    private static Candidate bagged(PriceList prices) {
        return candidate("vacuum bag", BAGGED, prices);
    }

    private static Candidate candidate(String name, LayUp layUp, PriceList prices) {
        List<Layer> layers = List.of(
                ReinforcementLayer.of(TestMaterials.MAT_300, layUp),
                ReinforcementLayer.of(TestMaterials.BIAXIAL, layUp),
                ReinforcementLayer.of(TestMaterials.MAT_450, layUp));
        PanelPlan panel =
                PanelPlan.of("lid", "lid", 0.3, 0.2, Edges.all(Edge.SIMPLY_SUPPORTED), new PanelLoad.Uniform(2e3));
        Part part = Part.of("Lid", List.of(Zone.of("lid", 0.62, layers)))
                .withPanels(List.of(panel))
                .withTooling(List.of(
                        new Tooling(
                                Optional.of(Process.HAND_LAY_UP),
                                Optional.of(Money.parse("80 GBP")),
                                OptionalInt.of(2),
                                0,
                                Optional.empty()),
                        new Tooling(
                                Optional.of(Process.VACUUM_BAG),
                                Optional.of(Money.parse("120 GBP")),
                                OptionalInt.empty(),
                                7200,
                                Optional.empty())));
        return new Candidate(name, part, TestParts.CLUB, Optional.of(prices));
    }

    private static PriceList prices(boolean all) {
        List<Price> prices = new ArrayList<>();
        TestParts.add(prices, "3.20 GBP/kg", "mat-300", "mat-450");
        TestParts.add(prices, "3.30 GBP/m²", "biaxial-600");
        TestParts.add(prices, "4.10 GBP/kg", "polyester-ortho", "mekp");
        TestParts.add(prices, "2.35 GBP/l", "acetone");
        TestParts.add(prices, "0.33 GBP/piece", "brush", "gloves", "mixing-pot");
        TestParts.add(prices, "1.20 GBP/m²", "release-film", "breather", "bag-film");
        TestParts.add(prices, "0.45 GBP/m", "sealant-tape");
        if (all) {
            TestParts.add(prices, "2.10 GBP/m²", "peel-ply");
        }
        return new PriceList("GBP", Optional.empty(), prices);
    }
}
