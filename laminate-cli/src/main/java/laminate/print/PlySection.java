package laminate.print;

import laminate.check.LaminateCheck;

/** What the plies carry: in short, or every point by every criterion. */
final class PlySection {
    private PlySection() {}

    /**
     * Adds the plies.
     *
     * @param where at which place, empty text for everywhere
     * @param all whether every point of every ply is told
     * @param criteria whether every criterion is told in any case
     */
    static void addTo(
            Report.Builder report, String where, LaminateCheck check, PlyTables tables, boolean all, boolean criteria) {
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
