package laminate.print.materials;

import java.util.List;
import laminate.material.Material;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** Tells materials as a document: a list of them, or each with all its figures. */
public final class MaterialsReport {

    /** How materials are told. */
    public MaterialsReport() {}

    /**
     * Lists materials, one a row.
     *
     * @param materials the materials, in the order wanted
     * @return the document
     */
    public Report list(List<Material> materials) {
        Table.Builder table = new Table.Builder(Column.words("material"), Column.words("kind"), Column.words("name"));
        materials.forEach(material -> table.row(material.id(), material.kind().word(), material.name()));
        return new Report.Builder().grid(table.build()).build();
    }

    /**
     * Tells everything of each material: every figure with its unit, source and status.
     *
     * @param materials the materials, in the order wanted
     * @return the document
     */
    public Report details(List<Material> materials) {
        Report.Builder report = new Report.Builder();
        for (Material material : materials) {
            report.heading(1, material.id());
            report.fact("name", material.name());
            MaterialWords.of(material).forEach(report::fact);
            report.grid(figures(material));
        }
        return report.build();
    }

    private static Table figures(Material material) {
        Table.Builder table = new Table.Builder(
                Column.words("figure"),
                Column.numbers("value", ""),
                Column.words("unit"),
                Column.words("status"),
                Column.words("source"));
        for (MaterialFigures.Named named : MaterialFigures.of(material)) {
            table.row(
                    named.name(),
                    named.number(),
                    named.unit().map(Unit::symbol).orElse(""),
                    named.figure().status().word(),
                    named.figure().source());
        }
        return table.build();
    }
}
