package laminate.print.materials;

import java.io.IOException;
import java.util.List;
import laminate.material.Material;
import laminate.print.JsonWriter;
import laminate.unit.Dimension;

/** Prints materials as one JSON object with a list of them: every figure in SI with its unit, source and status. */
public final class MaterialsJson {

    /** A printer. */
    public MaterialsJson() {}

    /**
     * Prints materials.
     *
     * @param materials the materials, in the order wanted
     * @param out takes the text
     * @throws IOException if that fails
     */
    public void print(List<Material> materials, Appendable out) throws IOException {
        JsonWriter.write(out, json -> {
            json.object().key("materials").array();
            materials.forEach(material -> print(material, json));
            json.end().end();
        });
    }

    private static void print(Material material, JsonWriter json) {
        json.object().field("material", material.id()).field("name", material.name());
        MaterialWords.of(material).forEach(json::field);
        json.key("figures").array();
        for (MaterialFigures.Named named : MaterialFigures.of(material)) {
            json.object()
                    .field("figure", named.name())
                    .field("value", named.figure().value());
            named.dimension().map(Dimension::siSymbol).ifPresent(unit -> json.field("unit", unit));
            json.field("source", named.figure().source())
                    .field("status", named.figure().status().word())
                    .end();
        }
        json.end().end();
    }
}
