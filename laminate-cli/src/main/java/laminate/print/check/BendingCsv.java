package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.check.BeamCheck;
import laminate.check.PanelCheck;
import laminate.check.PartCheck;
import laminate.check.Reserve;
import laminate.part.ReserveKind;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.theory.beam.Deflection;
import laminate.theory.panel.LargeDeflection;

/** Panels and beams as CSV, with a column for each kind of reserve factor. */
final class BendingCsv {
    private final Measures measures;
    private final CsvWriter csv;

    BendingCsv(Measures measures, CsvWriter csv) {
        this.measures = measures;
        this.csv = csv;
    }

    void panels(List<PartCheck> checks) {
        csv.headings(headings(
                List.of("part", "panel", "zone"),
                "length",
                "width",
                "deflection",
                "bending_deflection",
                "shear_deflection",
                "soft_edges_deflection",
                "large_deflection",
                "governing_deflection"));
        for (PartCheck check : checks) {
            for (PanelCheck panel : check.panels()) {
                csv.text(check.estimate().part().name())
                        .text(panel.plan().name())
                        .text(panel.plan().zone());
                lengths(panel.plan().length(), panel.plan().width());
                lengths(
                        panel.bending().deflection(),
                        panel.bending().bendingDeflection(),
                        panel.bending().shearDeflection());
                length(panel.softEdgeDeflection());
                length(panel.large().stream()
                        .mapToDouble(LargeDeflection::deflection)
                        .findFirst());
                lengths(panel.governingDeflection());
                reserves(panel.reserves());
            }
        }
    }

    void beams(List<PartCheck> checks) {
        csv.headings(headings(
                List.of("part", "beam", "zone", "along"),
                "span",
                "width",
                "deflection",
                "deflection_at",
                "bending_deflection",
                "shear_deflection"));
        for (PartCheck check : checks) {
            for (BeamCheck beam : check.beams()) {
                Deflection deflection = beam.deflection();
                csv.text(check.estimate().part().name())
                        .text(beam.plan().name())
                        .text(beam.plan().zone())
                        .text(beam.plan().along().word());
                lengths(beam.plan().span(), beam.plan().width());
                lengths(deflection.total(), deflection.x(), deflection.bending(), deflection.shear());
                reserves(beam.reserves());
            }
        }
    }

    private List<String> headings(List<String> names, String... lengths) {
        List<String> headings = new ArrayList<>(names);
        for (String length : lengths) {
            headings.add(length + "_" + CsvWriter.symbol(measures.length()));
        }
        for (ReserveKind kind : ReserveKind.values()) {
            headings.add("reserve_factor_" + CheckWords.key(kind));
        }
        return headings;
    }

    private void lengths(double... values) {
        for (double value : values) {
            csv.number(measures.length().fromSi(value));
        }
    }

    private void length(OptionalDouble value) {
        if (value.isPresent()) {
            lengths(value.getAsDouble());
        } else {
            csv.nothing();
        }
    }

    private void reserves(List<Reserve> reserves) {
        for (ReserveKind kind : ReserveKind.values()) {
            reserves.stream()
                    .filter(reserve -> reserve.kind() == kind)
                    .findFirst()
                    .ifPresentOrElse(reserve -> csv.number(reserve.factor()), csv::nothing);
        }
        csv.end();
    }
}
