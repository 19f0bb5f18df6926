package laminate.print.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.check.Subject;
import laminate.compare.Alternative;
import laminate.compare.Row;
import laminate.print.Measures;
import laminate.print.Table;
import laminate.print.Table.Column;

/** Figures with a column for each alternative and one for its difference to the first. */
final class FigureTable {
    private final Scale scale;
    private final List<Alternative> ways;

    FigureTable(Scale scale, List<Alternative> ways) {
        this.scale = scale;
        this.ways = ways;
    }

    /** A table of some rows; a column for what they are of, unless its heading is empty. */
    Table of(String subjects, List<Row> rows) {
        Table.Builder table = new Table.Builder(columns(subjects));
        String last = "";
        for (Row row : rows) {
            if (row.values().stream().allMatch(OptionalDouble::isEmpty)) {
                continue;
            }
            List<String> cells = new ArrayList<>();
            if (!subjects.isEmpty()) {
                String name = name(row.subject());
                cells.add(name.equals(last) ? "" : name);
                last = name;
            }
            cells.add(row.measure().words());
            cells.add(scale.symbol(row.measure()));
            for (int i = 0; i < ways.size(); i++) {
                cells.add(value(row, i));
                if (i > 0) {
                    cells.add(Measures.difference(row.difference(i)));
                }
            }
            table.row(cells);
        }
        return table.build();
    }

    private List<Column> columns(String subjects) {
        List<Column> columns = new ArrayList<>();
        if (!subjects.isEmpty()) {
            columns.add(Column.words(subjects));
        }
        columns.add(Column.words(""));
        columns.add(Column.words("in"));
        for (int i = 0; i < ways.size(); i++) {
            columns.add(Column.numbers(ways.get(i).name(), "").in(i));
            if (i > 0) {
                columns.add(Column.numbers("", "%").in(i));
            }
        }
        return columns;
    }

    private static String name(Subject subject) {
        return subject.kind() == Subject.Kind.LOAD_CASE ? subject.zone() + ", " + subject.name() : subject.name();
    }

    private String value(Row row, int way) {
        OptionalDouble value = row.values().get(way);
        return value.isPresent() ? scale.text(row.measure(), value.getAsDouble()) : "";
    }
}
