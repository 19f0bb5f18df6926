package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.plan.DoseTable;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** Dose against temperature for the wall. */
final class DoseSection {
    private static final double PER_MILLE = 1000;

    private final Measures measures;

    DoseSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, DoseTable table) {
        report.heading(1, table.resin() + " with " + table.agent());
        report.heading(2, "Minutes until it gels, by dose and temperature").grid(gelTimes(table));
        if (!table.wanted().isEmpty()) {
            report.heading(2, "Dose in g per kg of resin for a working time, by temperature")
                    .grid(doses(table));
        }
        if (!table.wanted().isEmpty()) {
            report.paragraph("To work: after the mixing, within the share of the gel time that the workshop uses.");
        }
        report.paragraph(
                "In a thin film or a small cup; a full pot gels sooner. A blank lies outside what is known of the"
                        + " resin, or outside the dose that it takes. Gel times: " + table.source() + ", "
                        + table.status().word() + ".");
    }

    private Table gelTimes(DoseTable table) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.numbers("dose", Unit.PERCENT.symbol()),
                Column.numbers("per kg", "g"),
                Column.numbers("per kg", "ml")));
        columns.addAll(temperatures(table));
        Table.Builder grid = new Table.Builder(columns);
        List<String> percent =
                Measures.column(table.rows().stream().map(DoseTable.Row::dose).toList(), Unit.PERCENT);
        for (int i = 0; i < percent.size(); i++) {
            DoseTable.Row row = table.rows().get(i);
            List<String> cells = new ArrayList<>(List.of(
                    percent.get(i),
                    Measures.number(row.dose() * PER_MILLE),
                    Measures.number(row.volumePerMass(), Unit.MILLILITRE_PER_KILOGRAM)));
            for (OptionalDouble time : row.gelTimes()) {
                cells.add(Measures.number(time, Unit.MINUTE));
            }
            grid.row(cells);
        }
        return grid.build();
    }

    private Table doses(DoseTable table) {
        List<Column> columns = new ArrayList<>(List.of(Column.numbers("to work", Unit.MINUTE.symbol())));
        columns.addAll(temperatures(table));
        Table.Builder grid = new Table.Builder(columns);
        for (DoseTable.Wanted wanted : table.wanted()) {
            List<String> cells = new ArrayList<>(List.of(Measures.plain(Unit.MINUTE.fromSi(wanted.workingTime()))));
            for (OptionalDouble dose : wanted.doses()) {
                cells.add(dose.isPresent() ? Measures.number(dose.getAsDouble() * PER_MILLE) : "");
            }
            grid.row(cells);
        }
        return grid.build();
    }

    private List<Column> temperatures(DoseTable table) {
        List<Column> columns = new ArrayList<>();
        Unit unit = measures.temperature();
        for (double kelvin : table.temperatures()) {
            columns.add(Column.numbers(Measures.plain(unit.fromSi(kelvin)), unit.symbol()));
        }
        return columns;
    }
}
