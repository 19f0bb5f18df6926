package laminate.print.check;

import laminate.check.LaminateCheck;
import laminate.estimate.ZoneEstimate;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.theory.failure.Criterion;

/** What the plies carry: in short, or every point by every criterion. */
final class PlySection {
    private final Measures measures;
    private final Criterion chosen;
    private final boolean all;

    /**
     * A section.
     *
     * @param chosen the criterion that decides for plies with directions
     * @param all whether every point of every ply is told
     */
    PlySection(Measures measures, Criterion chosen, boolean all) {
        this.measures = measures;
        this.chosen = chosen;
        this.all = all;
    }

    /**
     * Adds the plies.
     *
     * @param where at which place, empty text for everywhere
     * @param criteria whether every criterion is told in any case
     */
    void addTo(Report.Builder report, String where, ZoneEstimate zone, LaminateCheck check, boolean criteria) {
        PlyTables tables = new PlyTables(measures, zone, chosen);
        report.heading(3, "Plies" + where + ", each where it is nearest to failure")
                .grid(tables.worst(check));
        if (all) {
            report.heading(3, "Strain and stress along x and y").grid(tables.alongLaminate(check));
            report.heading(3, "Stress along and across the fibres").grid(tables.alongPlies(check));
        }
        Table byCriterion = tables.byCriterion(check, all);
        if ((all || criteria) && !byCriterion.rows().isEmpty()) {
            report.heading(3, "Reserve factors by every criterion").grid(byCriterion);
        }
    }
}
