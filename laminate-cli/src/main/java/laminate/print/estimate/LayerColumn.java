package laminate.print.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.print.Measures;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/**
 * A column of the table of layers.
 *
 * @param heading its heading
 * @param cell its text for a layer
 * @param total its text for the laminate
 */
record LayerColumn(Column heading, Function<LaidLayer, String> cell, String total) {

    /** The columns of a zone; what no layer of it has is left out. */
    static List<LayerColumn> of(ZoneEstimate zone, Measures measures) {
        Unit areal = measures.arealMass();
        List<LayerColumn> columns = new ArrayList<>();
        columns.add(sum("t", measures.length(), layer -> layer.thickness().planned(), zone));
        addIfAny(columns, sum("fibre", areal, LaidLayer::fibreMass, zone));
        addIfAny(columns, sum("core", areal, LaidLayer::coreMass, zone));
        addIfAny(columns, sum("resin", areal, layer -> layer.resinMass().planned(), zone));
        addIfAny(columns, sum("bed", areal, LaidLayer::bedMass, zone));
        addIfAny(columns, sum("given", areal, LaidLayer::givenMass, zone));
        addIfAny(columns, content("content", "% mass", LaidLayer::fibreMassFraction, zone.fibreMassFraction()));
        addIfAny(columns, content("Vf", "%", LaidLayer::fibreVolumeFraction, zone.fibreVolumeFraction()));
        return columns;
    }

    private static void addIfAny(List<LayerColumn> columns, LayerColumn column) {
        if (!column.total().isEmpty()) {
            columns.add(column);
        }
    }

    private static LayerColumn sum(String heading, Unit unit, ToDoubleFunction<LaidLayer> of, ZoneEstimate zone) {
        double total = 0;
        for (LaidLayer layer : zone.layers()) {
            total += of.applyAsDouble(layer);
        }
        String sum = Measures.unlessZero(total, unit);
        return new LayerColumn(
                Column.numbers(heading, unit.symbol()),
                layer -> Measures.unlessZero(of.applyAsDouble(layer), unit),
                sum);
    }

    private static LayerColumn content(String heading, String unit, ToDoubleFunction<LaidLayer> of, double total) {
        return new LayerColumn(
                Column.numbers(heading, unit),
                layer -> Measures.unlessZero(of.applyAsDouble(layer), Unit.PERCENT),
                Measures.unlessZero(total, Unit.PERCENT));
    }
}
