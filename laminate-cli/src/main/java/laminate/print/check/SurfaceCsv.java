package laminate.print.check;

import java.util.List;
import java.util.Optional;
import laminate.check.LoadCaseCheck;
import laminate.check.PartCheck;
import laminate.check.SurfaceTerms;
import laminate.check.ZoneCheck;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.failure.PlyReserve;
import laminate.theory.failure.SurfacePoint;

/** Points of failure surfaces as CSV, in the order of their rays, for a plot. */
final class SurfaceCsv {
    private final Measures measures;
    private final CsvWriter csv;

    SurfaceCsv(Measures measures, CsvWriter csv) {
        this.measures = measures;
        this.csv = csv;
    }

    /** All checks have the same terms, as they went by the same options; without terms there is nothing to print. */
    void print(List<PartCheck> checks) {
        Optional<SurfaceTerms> terms = checks.stream()
                .flatMap(check -> check.options().surface().stream())
                .findFirst();
        if (terms.isEmpty()) {
            return;
        }
        Term x = terms.get().x();
        Term y = terms.get().y();
        csv.headings(List.of(
                "part", "zone", "load_case", heading(x), heading(y), "ply", "material", "at", "criterion", "mode"));
        for (PartCheck check : checks) {
            for (ZoneCheck zone : check.zones()) {
                zone.loadCases()
                        .forEach(loadCase -> print(check.estimate().part().name(), zone, loadCase));
            }
        }
    }

    private String heading(Term term) {
        return term.word().replace('-', '_') + "_" + CsvWriter.symbol(measures.of(term));
    }

    private void print(String part, ZoneCheck zone, LoadCaseCheck loadCase) {
        PlyNames names = PlyNames.of(zone.zone());
        loadCase.surface().ifPresent(surface -> {
            for (SurfacePoint point : surface.points()) {
                csv.text(part)
                        .text(zone.zone().zone().name())
                        .text(loadCase.loadCase().name())
                        .number(measures.of(surface.xTerm()).fromSi(point.x()))
                        .number(measures.of(surface.yTerm()).fromSi(point.y()));
                failure(point.failure(), names);
            }
        });
    }

    private void failure(PlyReserve failure, PlyNames names) {
        csv.number(PlyNames.number(failure.ply()))
                .text(names.material(failure.ply()))
                .text(CheckWords.at(failure.at()))
                .text(failure.reserve().criterion().jsonName())
                .text(failure.reserve().mode().text())
                .end();
    }
}
