package laminate.print.infuse;

import laminate.plan.infusion.ResinBalance;
import laminate.plan.infusion.ResinBalance.Share;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;

/** Where the infused resin of one moulding goes, by the estimate and by the plan. */
final class BalanceSection {
    private final Measures measures;

    BalanceSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, ResinBalance balance) {
        String hardener = balance.use().dose().agent().isHardener() ? " and its hardener" : "";
        report.heading(
                2,
                "Where the " + balance.use().resin().id() + hardener + " of one moulding go"
                        + (hardener.isEmpty() ? "es" : "") + " ("
                        + balance.use().use() + ")");
        report.grid(table(balance)).bullets(balance.remarks());
    }

    private Table table(ResinBalance balance) {
        String kg = measures.mass().symbol();
        Table.Builder table = new Table.Builder(
                Column.words("place"), Column.numbers("by the estimate", kg), Column.numbers("by the plan", kg));
        for (Share share : balance.shares()) {
            if (share.estimated() != 0 || share.planned() != 0) {
                table.row(
                        share.place().word(),
                        Measures.beside(balance.estimated(), share.estimated(), measures.mass()),
                        Measures.beside(balance.planned(), share.planned(), measures.mass()));
            }
        }
        table.total(
                "together",
                Measures.number(balance.estimated(), measures.mass()),
                Measures.number(balance.planned(), measures.mass()));
        return table.build();
    }
}
