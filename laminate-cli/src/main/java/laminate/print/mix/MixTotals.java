package laminate.print.mix;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageResin;
import laminate.print.Measures;
import laminate.print.Table;
import laminate.print.Table.Column;

/** What of each resin and its agent a moulding takes, once mixes are rounded; blank where not every stage has mixes that fit. */
final class MixTotals {
    private final Measures measures;

    MixTotals(Measures measures) {
        this.measures = measures;
    }

    /** Sums over all stages. */
    private static final class Sum {
        private final String resin;
        private final String agent;
        private double need;
        private double mixed;
        private double added;
        private double volume;
        private boolean fits = true;

        Sum(StageResin first) {
            this.resin = first.resin().id();
            this.agent = first.dose().agent().id();
        }

        void add(StageResin part) {
            fits &= part.fits();
            need += part.need();
            mixed += part.mixed();
            added += part.agent();
            volume += part.mixes().stream()
                    .mapToDouble(mix -> mix.catalystVolume())
                    .sum();
        }
    }

    Table table(MixPlan plan) {
        Map<List<String>, Sum> sums = new LinkedHashMap<>();
        for (Stage stage : plan.stages()) {
            for (StageResin resin : stage.resins()) {
                List<String> key =
                        List.of(resin.resin().id(), resin.dose().agent().id());
                sums.computeIfAbsent(key, fresh -> new Sum(resin)).add(resin);
            }
        }
        return table(sums.values().stream().toList());
    }

    private Table table(List<Sum> sums) {
        String kg = measures.mass().symbol();
        Table.Builder table = new Table.Builder(
                Column.words("resin"),
                Column.numbers("needed", kg),
                Column.numbers("mixed", kg),
                Column.numbers("over", measures.smallMass().symbol()),
                Column.words("agent"),
                Column.numbers("", measures.smallMass().symbol()),
                Column.numbers("", measures.smallVolume().symbol()));
        for (Sum sum : sums) {
            table.row(
                    sum.resin,
                    Measures.number(sum.need, measures.mass()),
                    sum.fits ? Measures.number(sum.mixed, measures.mass()) : "",
                    sum.fits ? Measures.number(Math.max(0, sum.mixed - sum.need), measures.smallMass()) : "",
                    sum.agent,
                    sum.fits ? Measures.number(sum.added, measures.smallMass()) : "",
                    sum.fits ? Measures.number(sum.volume, measures.smallVolume()) : "");
        }
        return table.build();
    }
}
