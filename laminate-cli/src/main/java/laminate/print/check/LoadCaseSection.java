package laminate.print.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import laminate.check.LoadCaseCheck;
import laminate.check.NotJudged;
import laminate.check.ZoneCheck;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.theory.Deformation;
import laminate.theory.LaminateLoad;
import laminate.theory.Vector3;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.FailureStep;
import laminate.theory.failure.PlyReserve;
import laminate.theory.failure.ProgressiveFailure;
import laminate.unit.Unit;

/** The load cases of a zone: deformation, reserve factors, first and last failure, and what each ply carries. */
final class LoadCaseSection {
    private final Measures measures;
    private final PlySection plies;

    LoadCaseSection(Measures measures, PlySection plies) {
        this.measures = measures;
        this.plies = plies;
    }

    void addTo(Report.Builder report, ZoneCheck zone) {
        zone.loadCases().stream()
                .sorted(Comparator.comparingDouble(loadCase -> CheckReport.least(loadCase.reserves())))
                .forEach(loadCase -> addTo(report, zone, loadCase));
    }

    private void addTo(Report.Builder report, ZoneCheck zone, LoadCaseCheck check) {
        report.heading(
                2,
                "Zone " + zone.zone().zone().name() + ", load case "
                        + check.loadCase().name());
        report.fact("load", load(check.loadCase().load()));
        addDeformation(report, check.laminate().response().deformation());
        PlyNames names = PlyNames.of(zone.zone());
        ReserveTable reserves = new ReserveTable(measures, names);
        addSteps(report, zone, check, reserves, names);
        report.grid(reserves.of(check.reserves(), 0));
        addFailures(report, check.progressive(), reserves);
        plies.addTo(report, "", zone.zone(), check.laminate(), true);
    }

    /** As the part file states it. */
    private String load(LaminateLoad load) {
        List<String> terms = new ArrayList<>();
        load.given().forEach((term, value) -> terms.add(term.word() + " " + Measures.text(value, measures.of(term))));
        add(terms, "Qx", load.Qx(), measures.forcePerLength());
        add(terms, "Qy", load.Qy(), measures.forcePerLength());
        add(terms, "temperature change", load.temperatureChange(), measures.temperatureDifference());
        add(terms, "moisture", load.moisture(), Unit.PERCENT);
        return String.join(", ", terms);
    }

    private static void add(List<String> terms, String name, double value, Unit unit) {
        if (value != 0) {
            terms.add(name + " " + Measures.text(value, unit));
        }
    }

    private void addDeformation(Report.Builder report, Deformation deformation) {
        report.fact("mid-plane strain", components(deformation.strain(), Unit.PERCENT))
                .fact("curvature", components(deformation.curvature(), measures.curvature()));
    }

    private static String components(Vector3 vector, Unit unit) {
        double largest = Math.max(Math.abs(vector.x()), Math.max(Math.abs(vector.y()), Math.abs(vector.xy())));
        return "x " + Measures.beside(largest, vector.x(), unit) + ", y " + Measures.beside(largest, vector.y(), unit)
                + ", xy " + Measures.beside(largest, vector.xy(), unit) + " " + unit.symbol();
    }

    private static void addSteps(
            Report.Builder report, ZoneCheck zone, LoadCaseCheck check, ReserveTable reserves, PlyNames names) {
        ProgressiveFailure failure = check.progressive();
        List<FailureStep> steps = failure.steps();
        if (steps.isEmpty()) {
            report.fact(
                    "first failure",
                    "none that can be judged, "
                            + (isMechanical(check.loadCase().load())
                                    ? "however large the load"
                                    : "by temperature and moisture alone"));
            return;
        }
        FailureStep first = steps.get(0);
        report.fact(
                "first failure",
                times(first) + ", " + reserves.how(first.failed().get(0)));
        FailureStep last = steps.get(steps.size() - 1);
        report.fact("last failure", times(last) + ending(last, failure, zone, names));
    }

    private static boolean isMechanical(LaminateLoad load) {
        return load.Qx() != 0
                || load.Qy() != 0
                || load.given().values().stream().anyMatch(value -> value != 0);
    }

    private static boolean isOfCore(Criterion criterion) {
        return criterion == Criterion.CORE_SHEAR || criterion == Criterion.CRUSHING;
    }

    /** What is left after the last step. */
    private static String ending(FailureStep last, ProgressiveFailure failure, ZoneCheck zone, PlyNames names) {
        if (last.failed().stream().anyMatch(ply -> isOfCore(ply.reserve().criterion()))) {
            return ", that of the core, without which its faces no longer act together";
        }
        Set<Integer> unknown = zone.notJudged().stream().map(NotJudged::ply).collect(Collectors.toSet());
        List<String> plies = failure.survivors().stream()
                .map(ply -> names.of(ply) + (unknown.contains(ply) ? " (of unknown strength)" : ""))
                .toList();
        return plies.isEmpty()
                ? ""
                : ", after which " + String.join(", ", plies) + (plies.size() == 1 ? " holds on" : " hold on");
    }

    private static String times(FailureStep step) {
        return step.loadFactor() == 0
                ? "before any load, by temperature and moisture alone"
                : "at " + Measures.number(step.loadFactor()) + " times the load";
    }

    private static void addFailures(Report.Builder report, ProgressiveFailure failure, ReserveTable reserves) {
        if (failure.steps().size() < 2) {
            return;
        }
        Table.Builder table = new Table.Builder(Column.numbers("times the load", ""), Column.words("what fails"));
        for (FailureStep step : failure.steps()) {
            String load = Measures.number(step.loadFactor());
            for (PlyReserve failed : step.failed()) {
                table.row(load, reserves.how(failed));
                load = "";
            }
        }
        report.heading(3, "From the first ply to the last").grid(table.build());
    }
}
