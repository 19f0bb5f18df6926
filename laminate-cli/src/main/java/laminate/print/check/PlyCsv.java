package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import laminate.check.BeamCheck;
import laminate.check.LaminateCheck;
import laminate.check.LoadCaseCheck;
import laminate.check.PanelCheck;
import laminate.check.PartCheck;
import laminate.check.PointCheck;
import laminate.check.ZoneCheck;
import laminate.estimate.ZoneEstimate;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.theory.PlyPoint;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.ReserveFactor;
import laminate.unit.Unit;

/** The plies of checks as CSV; panels and beams at their worst place. */
final class PlyCsv {
    private final Measures measures;
    private final CsvWriter csv;

    PlyCsv(Measures measures, CsvWriter csv) {
        this.measures = measures;
        this.csv = csv;
    }

    void print(List<PartCheck> checks) {
        csv.headings(headings());
        for (PartCheck check : checks) {
            String part = check.estimate().part().name();
            for (ZoneCheck zone : check.zones()) {
                for (LoadCaseCheck loadCase : zone.loadCases()) {
                    rows(List.of(part, "load case", loadCase.loadCase().name()), zone.zone(), loadCase.laminate());
                }
            }
            for (PanelCheck panel : check.panels()) {
                rows(List.of(part, "panel", panel.plan().name()), panel.zone(), panel.worst());
            }
            for (BeamCheck beam : check.beams()) {
                rows(List.of(part, "beam", beam.plan().name()), beam.zone(), beam.worst());
            }
        }
    }

    private List<String> headings() {
        String stress = "_" + CsvWriter.symbol(measures.stress());
        List<String> headings = new ArrayList<>(List.of(
                "part",
                "of",
                "name",
                "zone",
                "ply",
                "material",
                "angle_deg",
                "at",
                "z_" + CsvWriter.symbol(measures.length())));
        for (String name : List.of("x", "y", "xy")) {
            headings.add("strain_" + name + "_percent");
        }
        for (String name : List.of("x", "y", "xy", "1", "2", "12", "13", "23")) {
            headings.add("stress_" + name + stress);
        }
        for (Criterion criterion : Criterion.values()) {
            headings.add("reserve_factor_" + criterion.jsonName());
        }
        return headings;
    }

    private void rows(List<String> place, ZoneEstimate zone, LaminateCheck check) {
        PlyNames names = PlyNames.of(zone);
        for (PointCheck checked : check.points()) {
            PlyPoint point = checked.point();
            place.forEach(csv::text);
            csv.text(zone.zone().name())
                    .number(PlyNames.number(point.ply()))
                    .text(names.material(point.ply()))
                    .number(zone.laminate().plies().get(point.ply()).angleDegrees())
                    .text(CheckWords.at(point.at()))
                    .number(measures.length().fromSi(point.z()));
            numbers(
                    Unit.PERCENT,
                    point.strain().x(),
                    point.strain().y(),
                    point.strain().xy());
            numbers(
                    measures.stress(),
                    point.stress().x(),
                    point.stress().y(),
                    point.stress().xy());
            numbers(
                    measures.stress(),
                    point.plyStress().x(),
                    point.plyStress().y(),
                    point.plyStress().xy());
            numbers(measures.stress(), point.plyShear().xz(), point.plyShear().yz());
            factors(checked);
            csv.end();
        }
    }

    private void numbers(Unit unit, double... values) {
        for (double value : values) {
            csv.number(unit.fromSi(value));
        }
    }

    private void factors(PointCheck checked) {
        for (Criterion criterion : Criterion.values()) {
            ReserveFactor factor = checked.reserves().get(criterion);
            if (factor == null) {
                csv.nothing();
            } else {
                csv.number(factor.value());
            }
        }
    }
}
