package laminate.print.check;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import laminate.check.BeamCheck;
import laminate.check.LimitCheck;
import laminate.check.PanelCheck;
import laminate.check.PartCheck;
import laminate.check.Reserve;
import laminate.check.ZoneCheck;
import laminate.estimate.Caution;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.unit.UnitSystem;

/** Tells a check as a document, free of any format: the worst things first. */
public final class CheckReport {
    private final Measures measures;
    private final boolean plies;

    /**
     * How checks are told.
     *
     * @param system the reader's units
     * @param plies whether every ply is told at its three points, and by every criterion
     */
    public CheckReport(UnitSystem system, boolean plies) {
        this.measures = new Measures(system);
        this.plies = plies;
    }

    /**
     * Tells a check.
     *
     * @param checked the check, and zones compared
     * @return the document
     */
    public Report of(CheckedPart checked) {
        PartCheck check = checked.check();
        Report.Builder report = new Report.Builder();
        new LimitSection(measures).addTo(report, check);
        PlySection told = new PlySection(measures, check.options().criterion(), plies);
        addPanels(report, check, told);
        addBeams(report, check, told);
        LoadCaseSection loadCases = new LoadCaseSection(measures, told);
        check.zones().stream()
                .filter(zone -> !zone.loadCases().isEmpty())
                .sorted(Comparator.comparingDouble(CheckReport::least))
                .forEach(zone -> loadCases.addTo(report, zone));
        new ComparisonSection(measures).addTo(report, checked.comparisons(), check.options());
        new StrengthSection(plies).addTo(report, checked);
        List<String> cautions = check.cautions().stream().map(Caution::text).toList();
        if (!cautions.isEmpty()) {
            report.heading(2, "To mind").bullets(cautions);
        }
        return report.build();
    }

    private void addPanels(Report.Builder report, PartCheck check, PlySection told) {
        PanelSection section = new PanelSection(measures, told);
        check.panels().stream()
                .sorted(worstFirst(PanelCheck::limits, PanelCheck::reserves))
                .forEach(panel -> section.addTo(report, panel));
    }

    private void addBeams(Report.Builder report, PartCheck check, PlySection told) {
        BeamSection section = new BeamSection(measures, told);
        check.beams().stream()
                .sorted(worstFirst(BeamCheck::limits, BeamCheck::reserves))
                .forEach(beam -> section.addTo(report, beam));
    }

    /** By how far the limit that is kept least is kept, then by the least reserve factor. */
    private static <T> Comparator<T> worstFirst(
            Function<T, List<LimitCheck>> limits, Function<T, List<Reserve>> reserves) {
        Comparator<T> byMargin = Comparator.comparingDouble(thing -> limits.apply(thing).stream()
                .mapToDouble(LimitCheck::margin)
                .min()
                .orElse(Double.MAX_VALUE));
        return byMargin.thenComparingDouble(thing -> least(reserves.apply(thing)));
    }

    private static double least(ZoneCheck zone) {
        return zone.loadCases().stream()
                .mapToDouble(loadCase -> least(loadCase.reserves()))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    static double least(List<Reserve> reserves) {
        return reserves.stream().mapToDouble(Reserve::factor).min().orElse(Double.MAX_VALUE);
    }
}
