package laminate.print.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.PackPrice;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.estimate.Supply;
import laminate.order.Ordering;
import laminate.order.StockItem;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.CuttingPlanner;
import laminate.order.pieces.CuttingRules;
import laminate.print.TestParts;
import laminate.unit.Amount;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/** Orders for the tests of printers. */
final class TestOrders {
    private static final double DAY = 86_400;
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);

    private TestOrders() {}

    /** Lids and a deck, of which all but a little has a price; some lies in stock, one tin past its day. */
    static OrderSheet lidAndDeck() {
        List<PartEstimate> parts = List.of(TestParts.lockerLid(), TestParts.kayakDeck());
        List<StockItem> stock = List.of(
                stock("mat-300", "1 kg", null),
                stock("biaxial-600", "50 m²", null),
                stock("gelcoat-iso", "1 kg", LocalDate.of(2026, 2, 20)));
        return new OrderSheet(
                parts, new Ordering(Optional.of(prices()), stock, Optional.of(MARCH)).order(parts), Cutting.NONE);
    }

    /** A panel of fabrics, mat and core, wider than its rolls, with how it is cut; the lids beside it have no outline. */
    static OrderSheet cut() {
        List<PartEstimate> parts = List.of(TestParts.outlinedPanel(), TestParts.lockerLid());
        Optional<PriceList> prices = Optional.of(rolls());
        Cutting cutting = new CuttingPlanner(prices, CuttingRules.USUAL).plan(parts);
        return new OrderSheet(parts, new Ordering(prices, List.of(), Optional.empty()).order(parts, cutting), cutting);
    }

    private static PriceList rolls() {
        List<Price> prices = new ArrayList<>();
        prices.add(sold("mat-300", "3.20 GBP/kg", "roll", 1.27, 30, OptionalDouble.empty()));
        prices.add(sold("biaxial-600", "3.30 GBP/m²", "roll", 1.27, 40, OptionalDouble.empty()));
        prices.add(sold("pvc-80", "24.50 GBP/m²", "sheet", 1, 1.2, OptionalDouble.of(0.01)));
        return new PriceList("GBP", Optional.empty(), prices);
    }

    private static Price sold(
            String material, String price, String name, double width, double length, OptionalDouble thickness) {
        PackPrice pack = new PackPrice(
                name,
                Amount.of(width * length, PriceBasis.M2),
                Money.parse("29.40 GBP"),
                OptionalDouble.of(width),
                OptionalDouble.of(length),
                thickness);
        Supply supply = new Supply(List.of(pack), Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
        return new Price(material, UnitPrice.parse(price), Optional.empty(), supply);
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else, and no prices. */
    static OrderSheet hostileNames() {
        List<PartEstimate> parts = List.of(TestParts.hostileNames());
        return new OrderSheet(
                parts, new Ordering(Optional.empty(), List.of(), Optional.empty()).order(parts), Cutting.NONE);
    }

    private static StockItem stock(String material, String amount, LocalDate useBy) {
        return new StockItem(material, Amount.parse(amount), OptionalDouble.empty(), Optional.ofNullable(useBy));
    }

    private static PriceList prices() {
        List<Price> prices = new ArrayList<>();
        TestParts.add(prices, "3.30 GBP/m²", "biaxial-600");
        TestParts.add(prices, "0.33 GBP/piece", "brush", "gloves", "mixing-pot");
        prices.add(packed("mat-300", 2, 0, "roll, 34 kg, 108.80 GBP", "cut length, 5 kg, 21.00 GBP"));
        prices.add(packed("mat-450", 2, 0, "=roll, 35 kg, 108.50 GBP"));
        prices.add(packed("polyester-ortho", 3, 180, "can, 5 kg, 24.50 GBP", "drum, 25 kg, 102.50 GBP"));
        prices.add(packed("gelcoat-iso", 5, 120, "tin, 1 kg, 9.20 GBP"));
        prices.add(packed("mekp", 5, 365, "bottle, 500 ml, 8.50 GBP"));
        prices.add(packed("acetone", 0, 0, "can, 5 l, 13.00 GBP"));
        return new PriceList("GBP", Optional.empty(), prices);
    }

    /** Packs written as "name, amount, price". */
    private static Price packed(String material, int leadDays, int shelfDays, String... packs) {
        List<PackPrice> all = new ArrayList<>();
        for (String pack : packs) {
            String[] words = pack.split(", ");
            all.add(PackPrice.of(words[0], Amount.parse(words[1]), Money.parse(words[2])));
        }
        Supply supply = new Supply(all, Optional.empty(), days(leadDays), days(shelfDays));
        UnitPrice price = supply.bestUnitPrice().orElseThrow();
        return new Price(material, price, Optional.empty(), supply);
    }

    private static OptionalDouble days(int days) {
        return days == 0 ? OptionalDouble.empty() : OptionalDouble.of(days * DAY);
    }
}
