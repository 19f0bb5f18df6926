package laminate.print.check;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import laminate.check.PartCheck;
import laminate.check.ZoneCheck;
import laminate.estimate.LaidLayer;
import laminate.estimate.StrengthOrigin;
import laminate.material.Status;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.failure.Criterion;

/** Where the strengths come from, how sure they are, and where the criteria that use them are published. */
final class StrengthSection {

    private final boolean plies;

    StrengthSection(boolean plies) {
        this.plies = plies;
    }

    void addTo(Report.Builder report, CheckedPart checked) {
        Table.Builder table =
                new Table.Builder(Column.words("material"), Column.words("status"), Column.words("strength by"));
        materials(checked.check())
                .forEach((origin, materials) -> table.row(
                        String.join(", ", materials),
                        origin.status().map(Status::word).orElse("not judged"),
                        origin.text()));
        Table built = table.build();
        if (!built.rows().isEmpty()) {
            report.heading(2, "Where strengths come from").grid(built);
        }
        addCriteria(report, CriteriaUsed.told(checked, plies));
    }

    private static void addCriteria(Report.Builder report, List<Criterion> criteria) {
        Table.Builder table = new Table.Builder(Column.words("criterion"), Column.words("source"));
        criteria.forEach(criterion -> table.row(CheckWords.criterion(criterion), criterion.source()));
        if (!criteria.isEmpty()) {
            report.heading(2, "Where criteria come from").grid(table.build());
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
