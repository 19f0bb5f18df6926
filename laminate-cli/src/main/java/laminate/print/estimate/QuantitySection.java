package laminate.print.estimate;

import java.util.List;
import java.util.OptionalDouble;
import laminate.estimate.LayerCut;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PartEstimate;
import laminate.estimate.Quantities;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** What the mouldings hold, what to buy and to cut for all of them, with {@link ResinSection} in between. */
final class QuantitySection {
    private final Measures measures;

    QuantitySection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, PartEstimate estimate) {
        int count = estimate.part().count();
        Quantities quantities = estimate.quantities();
        report.heading(2, "Quantities" + (count > 1 ? " for all " + count + " mouldings" : ""));
        addMasses(report, quantities);
        if (!quantities.resins().isEmpty()) {
            new ResinSection(measures).addTo(report, quantities.resins());
        }
        if (!quantities.materials().isEmpty()) {
            report.heading(3, "Materials to buy").grid(materials(quantities.materials()));
        }
        if (!estimate.consumables().isEmpty()) {
            report.heading(3, "Consumables to buy").grid(consumables(estimate.consumables()));
        }
        if (!quantities.cuts().isEmpty()) {
            report.heading(3, "Cutting list, without cutting waste").grid(cuts(quantities.cuts()));
        }
    }

    private void addMasses(Report.Builder report, Quantities quantities) {
        Unit kg = measures.mass();
        Table.Builder table = new Table.Builder(Column.words("in the part"), Column.numbers("mass", kg.symbol()));
        addMass(table, "fibre", quantities.fibre());
        addMass(table, "core and bulking mat", quantities.core());
        addMass(table, "plies given directly", quantities.given());
        addMass(table, "resin", quantities.resinInPart());
        addMass(table, "coatings", quantities.coating());
        addMass(table, "bought-in items", quantities.items());
        report.grid(
                table.total("together", Measures.number(quantities.mass(), kg)).build());
        if (quantities.laps() > 0) {
            report.fact("of it in laps", Measures.text(quantities.laps(), kg));
        }
        if (quantities.trimmed() > 0) {
            report.fact("trimmed off beside", Measures.text(quantities.trimmed(), kg));
        }
    }

    private void addMass(Table.Builder table, String name, double mass) {
        if (mass > 0) {
            table.row(name, Measures.number(mass, measures.mass()));
        }
    }

    private Table materials(List<MaterialQuantity> materials) {
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.words("kind"),
                Column.numbers("area", measures.area().symbol()),
                Column.numbers("off roll", measures.longLength().symbol()),
                Column.numbers("of width", measures.longLength().symbol()),
                Column.numbers("in part", measures.mass().symbol()),
                Column.numbers("to buy", measures.mass().symbol()));
        for (MaterialQuantity material : materials) {
            table.row(
                    material.material(),
                    material.kind(),
                    Measures.number(material.area(), measures.area()),
                    Measures.number(material.length(), measures.longLength()),
                    Measures.number(material.rollWidth(), measures.longLength()),
                    Measures.unlessZero(material.inPart(), measures.mass()),
                    Measures.number(material.mass(), measures.mass()));
        }
        return table.build();
    }

    private Table consumables(List<MaterialQuantity> consumables) {
        Table.Builder table =
                new Table.Builder(Column.words("material"), Column.numbers("amount", ""), Column.words(""));
        for (MaterialQuantity consumable : consumables) {
            addConsumable(table, consumable);
        }
        return table.build();
    }

    /** A consumable is counted in the one measure that it is sold by. */
    private void addConsumable(Table.Builder table, MaterialQuantity consumable) {
        String name = consumable.material();
        addAmount(table, name, consumable.mass(), measures.mass());
        addAmount(table, name, consumable.area(), measures.area());
        addAmount(table, name, consumable.length(), measures.longLength());
        addAmount(table, name, consumable.volume(), measures.volume());
        if (consumable.pieces().isPresent()) {
            table.row(name, Measures.count(consumable.pieces().getAsDouble()), "pieces");
        }
    }

    private static void addAmount(Table.Builder table, String name, OptionalDouble amount, Unit unit) {
        if (amount.isPresent()) {
            table.row(name, Measures.number(amount.getAsDouble(), unit), unit.symbol());
        }
    }

    private Table cuts(List<LayerCut> cuts) {
        Table.Builder table = new Table.Builder(
                Column.words("zone"),
                Column.numbers("layer", ""),
                Column.words("material"),
                Column.numbers("area", measures.area().symbol()),
                Column.numbers("dry", measures.mass().symbol()),
                Column.numbers("resin it wants", measures.mass().symbol()));
        for (LayerCut cut : cuts) {
            table.row(
                    cut.zone(),
                    Integer.toString(cut.number()),
                    cut.material(),
                    Measures.number(cut.area(), measures.area()),
                    Measures.unlessZero(cut.mass(), measures.mass()),
                    Measures.unlessZero(cut.resin(), measures.mass()));
        }
        return table.build();
    }
}
