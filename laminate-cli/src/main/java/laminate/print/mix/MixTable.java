package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.plan.Mix;
import laminate.print.Measures;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** The mixes of a resin in a stage: mixes that are alike stand in one row. */
final class MixTable {
    private final Measures measures;

    MixTable(Measures measures) {
        this.measures = measures;
    }

    Table of(List<Mix> mixes) {
        List<List<Mix>> groups = groups(mixes);
        boolean pumped = mixes.stream().anyMatch(mix -> mix.strokes().isPresent());
        List<String> resin = Measures.column(resins(groups), measures.smallMass());
        List<String> agent = Measures.column(agents(groups), measures.smallMass());
        Table.Builder table = new Table.Builder(columns(mixes.get(0), pumped));
        for (int i = 0; i < groups.size(); i++) {
            table.row(row(groups.get(i), resin.get(i), agent.get(i), pumped));
        }
        return table.build();
    }

    private List<Column> columns(Mix first, boolean pumped) {
        String gram = measures.smallMass().symbol();
        String millilitre = measures.smallVolume().symbol();
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("mix"),
                Column.numbers("resin", gram),
                Column.numbers("or", millilitre),
                Column.numbers(first.agent(), gram),
                Column.numbers("or", millilitre)));
        if (pumped) {
            columns.add(Column.numbers("pump strokes", ""));
        }
        columns.add(Column.numbers("gels in", Unit.MINUTE.symbol()));
        columns.add(Column.numbers("use within", Unit.MINUTE.symbol()));
        columns.add(Column.numbers("takes", Unit.MINUTE.symbol()));
        return columns;
    }

    private List<String> row(List<Mix> group, String resin, String agent, boolean pumped) {
        Mix mix = group.get(0);
        List<String> row = new ArrayList<>(List.of(
                numbers(group),
                resin,
                Measures.number(mix.resinVolume(), measures.smallVolume()),
                agent,
                Measures.number(mix.catalystVolume(), measures.smallVolume())));
        if (pumped) {
            row.add(mix.strokes().isPresent() ? Integer.toString(mix.strokes().getAsInt()) : "");
        }
        row.add(minutes(mix.gelTime()));
        row.add(minutes(mix.usableTime()));
        row.add(MixWords.minutes(mix.workTime()));
        return row;
    }

    private static String minutes(OptionalDouble seconds) {
        return seconds.isPresent() ? MixWords.minutes(seconds.getAsDouble()) : "not known";
    }

    private static String numbers(List<Mix> group) {
        int first = group.get(0).number();
        int last = group.get(group.size() - 1).number();
        return first == last ? Integer.toString(first) : first + " to " + last + ", each";
    }

    private static List<List<Mix>> groups(List<Mix> mixes) {
        List<List<Mix>> groups = new ArrayList<>();
        for (Mix mix : mixes) {
            boolean starts = groups.isEmpty() || !alike(last(groups).get(0), mix);
            if (starts) {
                groups.add(new ArrayList<>());
            }
            last(groups).add(mix);
        }
        return groups;
    }

    private static List<Mix> last(List<List<Mix>> groups) {
        return groups.get(groups.size() - 1);
    }

    private static boolean alike(Mix one, Mix other) {
        return one.material().equals(other.material())
                && one.resin() == other.resin()
                && one.catalyst() == other.catalyst()
                && MixWords.minutes(one.workTime()).equals(MixWords.minutes(other.workTime()));
    }

    private static List<Double> resins(List<List<Mix>> groups) {
        return groups.stream().map(group -> group.get(0).resin()).toList();
    }

    private static List<Double> agents(List<List<Mix>> groups) {
        return groups.stream().map(group -> group.get(0).catalyst()).toList();
    }
}
