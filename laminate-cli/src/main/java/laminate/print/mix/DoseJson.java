package laminate.print.mix;

import java.util.List;
import java.util.OptionalDouble;
import laminate.plan.DoseTable;
import laminate.print.JsonWriter;

/** A table of dose against temperature in JSON: one entry for each that is known. */
final class DoseJson {
    private static final double MILLILITRES = 1e6;

    private DoseJson() {}

    static void print(DoseTable table, JsonWriter json) {
        json.object()
                .field("resin", table.resin())
                .field("agent", table.agent())
                .field("source", table.source())
                .field("status", table.status().word());
        json.key("gel_times").array();
        for (DoseTable.Row row : table.rows()) {
            printGelTimes(table.temperatures(), row, json);
        }
        json.end().key("doses").array();
        for (DoseTable.Wanted wanted : table.wanted()) {
            printDoses(table.temperatures(), wanted, json);
        }
        json.end().end();
    }

    private static void printGelTimes(List<Double> temperatures, DoseTable.Row row, JsonWriter json) {
        for (int i = 0; i < temperatures.size(); i++) {
            OptionalDouble time = row.gelTimes().get(i);
            if (time.isPresent()) {
                json.object()
                        .field("agent_percent", row.dose() * 100)
                        .field("agent_ml_kg", row.volumePerMass() * MILLILITRES)
                        .field("temperature_K", temperatures.get(i))
                        .field("gel_time_s", time)
                        .end();
            }
        }
    }

    private static void printDoses(List<Double> temperatures, DoseTable.Wanted wanted, JsonWriter json) {
        for (int i = 0; i < temperatures.size(); i++) {
            OptionalDouble dose = wanted.doses().get(i);
            if (dose.isPresent()) {
                json.object()
                        .field("working_time_s", wanted.workingTime())
                        .field("temperature_K", temperatures.get(i))
                        .field("agent_percent", dose.getAsDouble() * 100)
                        .end();
            }
        }
    }
}
