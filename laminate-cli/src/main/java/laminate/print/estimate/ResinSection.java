package laminate.print.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import laminate.estimate.ResinLoss;
import laminate.estimate.ResinQuantity;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** What to mix for all mouldings, and where that of it goes which does not end in the part. */
final class ResinSection {
    private final Measures measures;

    ResinSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, List<ResinQuantity> resins) {
        report.heading(3, "Resins to mix").grid(resins(resins));
        if (resins.stream().anyMatch(resin -> resin.dose().agent().isHardener())) {
            report.paragraph("With a hardener, in part, lost and to air count both; to mix is the resin alone.");
        }
        List<ResinQuantity> losing =
                resins.stream().filter(resin -> resin.lost() > 0).toList();
        if (!losing.isEmpty()) {
            report.grid(losses(losing));
        }
    }

    private Table resins(List<ResinQuantity> resins) {
        Unit kg = measures.mass();
        Unit gram = measures.smallMass();
        Unit millilitre = measures.smallVolume();
        Table.Builder table = new Table.Builder(
                Column.words("use"),
                Column.words("resin"),
                Column.numbers("in part", kg.symbol()),
                Column.numbers("lost", kg.symbol()),
                Column.numbers("to air", kg.symbol()),
                Column.numbers("to mix", kg.symbol()),
                Column.words("agent"),
                Column.numbers("dose", "%"),
                Column.numbers("", gram.symbol()),
                Column.numbers("", millilitre.symbol()));
        for (ResinQuantity resin : resins) {
            table.row(
                    resin.use().use(),
                    resin.resin().id(),
                    Measures.unlessZero(resin.inPart(), kg),
                    Measures.unlessZero(resin.lost(), kg),
                    Measures.unlessZero(resin.evaporated(), kg),
                    Measures.number(resin.toMix(), kg),
                    resin.dose().agent().id(),
                    Measures.percent(resin.dose().ratio()),
                    Measures.number(resin.agent(), gram),
                    Measures.number(resin.agentVolume(), millilitre));
        }
        return table.build();
    }

    /** Only the causes that there are. */
    private Table losses(List<ResinQuantity> resins) {
        Map<String, ToDoubleFunction<ResinLoss>> causes = new LinkedHashMap<>();
        causes.put("trimmed off", ResinLoss::trimmed);
        causes.put("in pots", ResinLoss::pots);
        causes.put("in the bag", ResinLoss::bag);
        causes.put("in lines", ResinLoss::lines);
        List<Column> columns = new ArrayList<>(List.of(Column.words("lost of"), Column.words("resin")));
        List<ToDoubleFunction<ResinLoss>> found = new ArrayList<>();
        for (Map.Entry<String, ToDoubleFunction<ResinLoss>> cause : causes.entrySet()) {
            if (isAny(resins, cause.getValue())) {
                columns.add(Column.numbers(cause.getKey(), measures.mass().symbol()));
                found.add(cause.getValue());
            }
        }
        Table.Builder table = new Table.Builder(columns);
        for (ResinQuantity resin : resins) {
            table.row(lossRow(resin, found));
        }
        return table.build();
    }

    private static boolean isAny(List<ResinQuantity> resins, ToDoubleFunction<ResinLoss> cause) {
        for (ResinQuantity resin : resins) {
            if (cause.applyAsDouble(resin.loss()) != 0) {
                return true;
            }
        }
        return false;
    }

    private List<String> lossRow(ResinQuantity resin, List<ToDoubleFunction<ResinLoss>> causes) {
        List<String> row =
                new ArrayList<>(List.of(resin.use().use(), resin.resin().id()));
        for (ToDoubleFunction<ResinLoss> cause : causes) {
            row.add(Measures.unlessZero(cause.applyAsDouble(resin.loss()), measures.mass()));
        }
        return row;
    }
}
