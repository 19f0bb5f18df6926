package laminate.print.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.LaidCoating;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.part.Layer;
import laminate.part.Zone;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** A zone: its totals, coatings, layers and stiffness. */
final class ZoneSection {
    private final Measures measures;
    private final StiffnessSection stiffness;

    ZoneSection(Measures measures, boolean matrices) {
        this.measures = measures;
        this.stiffness = new StiffnessSection(measures, matrices);
    }

    void addTo(Report.Builder report, ZoneEstimate estimate) {
        Zone zone = estimate.zone();
        report.heading(2, "Zone: " + zone.name());
        addTotals(report, estimate);
        if (!estimate.coatings().isEmpty()) {
            report.heading(3, "Coatings").grid(coatings(estimate.coatings()));
        }
        report.heading(3, "Layers, mould face first").grid(layers(estimate));
        stiffness.addTo(report, estimate);
    }

    private void addTotals(Report.Builder report, ZoneEstimate estimate) {
        Zone zone = estimate.zone();
        String each = zone.count() > 1 ? ", " + zone.count() + " such zones" : "";
        report.fact("area", Measures.text(zone.area(), measures.area()) + each);
        double coated = estimate.thicknessWithCoatings().planned();
        String with = coated > estimate.thickness().planned()
                ? "; with coatings " + Measures.text(coated, measures.length())
                : "";
        report.fact("thickness", Measures.text(estimate.thickness(), measures.length()) + with);
        report.fact("mass per area", Measures.text(estimate.massPerArea(), measures.arealMass()));
        if (estimate.fibreMassFraction() > 0) {
            report.fact(
                    "fibre content",
                    EstimateWords.content(estimate.fibreMassFraction(), estimate.fibreVolumeFraction()) + "; voids "
                            + Measures.percent(estimate.voidFraction()) + " %");
        }
    }

    private Table coatings(List<LaidCoating> coatings) {
        String areal = measures.arealMass().symbol();
        Table.Builder table = new Table.Builder(
                Column.words("material"),
                Column.words("where"),
                Column.numbers("coats", ""),
                Column.numbers("cured", measures.length().symbol()),
                Column.numbers("applied", areal),
                Column.numbers("in part", areal));
        for (LaidCoating laid : coatings) {
            table.row(
                    laid.coating().material().id(),
                    laid.coating().atMouldFace() ? "mould face" : "inside",
                    Integer.toString(laid.coating().coats()),
                    Measures.number(laid.thickness().planned(), measures.length()),
                    Measures.number(laid.applied(), measures.arealMass()),
                    Measures.number(laid.massPerArea().planned(), measures.arealMass()));
        }
        return table.build();
    }

    private Table layers(ZoneEstimate estimate) {
        List<LayerColumn> columns = LayerColumn.of(estimate, measures);
        List<Column> headings = new ArrayList<>(List.of(
                Column.numbers("", ""), Column.words("material"), Column.numbers("angle", Unit.DEGREE.symbol())));
        columns.forEach(column -> headings.add(column.heading()));
        Table.Builder table = new Table.Builder(headings);
        int number = 1;
        for (LaidLayer laid : estimate.layers()) {
            List<String> row = start(number++, laid.layer());
            columns.forEach(column -> row.add(column.cell().apply(laid)));
            table.row(row);
        }
        List<String> total = new ArrayList<>(List.of("", "laminate", ""));
        columns.forEach(column -> total.add(column.total()));
        return table.total(total).build();
    }

    private static List<String> start(int number, Layer layer) {
        String angle = EstimateWords.angle(layer).isPresent()
                ? Measures.count(EstimateWords.angle(layer).getAsDouble())
                : "";
        String turned = EstimateWords.isTurned(layer) ? ", turned" : "";
        String stage = layer.stage().isEmpty() ? "" : " (" + layer.stage() + ")";
        return new ArrayList<>(List.of(Integer.toString(number), layer.material() + turned + stage, angle));
    }
}
