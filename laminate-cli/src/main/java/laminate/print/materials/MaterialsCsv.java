package laminate.print.materials;

import java.io.IOException;
import java.util.List;
import laminate.material.Material;
import laminate.print.CsvWriter;
import laminate.unit.Unit;

/** Prints materials as comma-separated values, one figure a row, in the units of the trade. */
public final class MaterialsCsv {

    /** A printer. */
    public MaterialsCsv() {}

    /**
     * Prints materials.
     *
     * @param materials the materials, in the order wanted
     * @param out takes the text
     * @throws IOException if that fails
     */
    public void print(List<Material> materials, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            csv.headings(List.of("material", "kind", "name", "figure", "value", "unit", "status", "source"));
            materials.forEach(material -> print(material, csv));
        });
    }

    private static void print(Material material, CsvWriter csv) {
        List<MaterialFigures.Named> figures = MaterialFigures.of(material);
        if (figures.isEmpty()) {
            start(material, csv)
                    .nothing()
                    .nothing()
                    .nothing()
                    .nothing()
                    .nothing()
                    .end();
        }
        for (MaterialFigures.Named named : figures) {
            start(material, csv)
                    .text(named.name())
                    .number(named.value())
                    .text(named.unit().map(Unit::symbol).orElse(""))
                    .text(named.figure().status().word())
                    .text(named.figure().source())
                    .end();
        }
    }

    private static CsvWriter start(Material material, CsvWriter csv) {
        return csv.text(material.id()).text(material.kind().word()).text(material.name());
    }
}
