package laminate.print;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import laminate.check.PartCheck;
import laminate.check.ZoneCheck;
import laminate.estimate.LaidLayer;
import laminate.estimate.StrengthOrigin;
import laminate.material.Status;
import laminate.print.Table.Column;

/** Where the strengths come from, and how sure they are. */
final class StrengthSection {

    void addTo(Report.Builder report, PartCheck check) {
        Table.Builder table =
                new Table.Builder(Column.words("material"), Column.words("status"), Column.words("strength by"));
        materials(check)
                .forEach((origin, materials) -> table.row(
                        String.join(", ", materials),
                        origin.status().map(Status::word).orElse("not judged"),
                        origin.text()));
        Table built = table.build();
        if (!built.rows().isEmpty()) {
            report.heading(2, "Where strengths come from").grid(built);
        }
    }

    private static Map<StrengthOrigin, Set<String>> materials(PartCheck check) {
        Map<StrengthOrigin, Set<String>> materials = new LinkedHashMap<>();
        for (ZoneCheck zone : check.zones()) {
            PlyNames names = PlyNames.of(zone.zone());
            int ply = 0;
            for (LaidLayer layer : zone.zone().layers()) {
                for (StrengthOrigin origin : layer.strengths()) {
                    materials
                            .computeIfAbsent(origin, any -> new LinkedHashSet<>())
                            .add(names.material(ply++));
                }
            }
        }
        return materials;
    }
}
