package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import laminate.plan.DoseTable;
import laminate.plan.MixPlan;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.unit.Unit;

/**
 * Dose against temperature as a table to hang on the wall: a row a dose, a column a temperature.
 *
 * @param measures the reader's units
 */
record DoseCsv(Measures measures) {
    private static final double PER_MILLE = 1000;

    void gelTimes(List<MixPlan> plans, CsvWriter csv) {
        List<DoseTable> tables = tables(plans);
        List<Double> temperatures = temperatures(tables);
        List<String> headings = new ArrayList<>(List.of("resin", "agent", "dose_percent", "dose_g_kg", "dose_ml_kg"));
        addTemperatures(headings, "gel_time_min_at_", temperatures);
        csv.headings(headings);
        for (DoseTable table : tables) {
            for (DoseTable.Row row : table.rows()) {
                csv.text(table.resin())
                        .text(table.agent())
                        .number(row.dose(), Unit.PERCENT)
                        .number(row.dose() * PER_MILLE)
                        .number(row.volumePerMass(), Unit.MILLILITRE_PER_KILOGRAM);
                cells(table, row.gelTimes(), temperatures, Unit.MINUTE, csv);
            }
        }
    }

    void workingTimes(List<MixPlan> plans, CsvWriter csv) {
        List<DoseTable> tables = tables(plans);
        List<Double> temperatures = temperatures(tables);
        List<String> headings = new ArrayList<>(List.of("resin", "agent", "working_time_min"));
        addTemperatures(headings, "dose_percent_at_", temperatures);
        csv.headings(headings);
        for (DoseTable table : tables) {
            for (DoseTable.Wanted wanted : table.wanted()) {
                csv.text(table.resin()).text(table.agent()).number(wanted.workingTime(), Unit.MINUTE);
                cells(table, wanted.doses(), temperatures, Unit.PERCENT, csv);
            }
        }
    }

    private static void cells(
            DoseTable table, List<OptionalDouble> values, List<Double> temperatures, Unit unit, CsvWriter csv) {
        for (double temperature : temperatures) {
            int column = table.temperatures().indexOf(temperature);
            csv.number(column < 0 ? OptionalDouble.empty() : values.get(column), unit);
        }
        csv.end();
    }

    private void addTemperatures(List<String> headings, String lead, List<Double> temperatures) {
        Unit unit = measures.temperature();
        for (double temperature : temperatures) {
            headings.add(lead + Measures.plain(unit.fromSi(temperature)) + "_"
                    + unit.symbol().replace("°", ""));
        }
    }

    /** Each resin and agent once, though several parts take them. */
    private static List<DoseTable> tables(List<MixPlan> plans) {
        List<DoseTable> tables = new ArrayList<>();
        for (MixPlan plan : plans) {
            for (DoseTable table : plan.doses()) {
                boolean isNew = tables.stream()
                        .noneMatch(other -> other.resin().equals(table.resin())
                                && other.agent().equals(table.agent()));
                if (isNew) {
                    tables.add(table);
                }
            }
        }
        return tables;
    }

    private static List<Double> temperatures(List<DoseTable> tables) {
        Set<Double> all = new TreeSet<>();
        tables.forEach(table -> all.addAll(table.temperatures()));
        return List.copyOf(all);
    }
}
