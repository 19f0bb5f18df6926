package laminate.plan;

import java.util.List;
import java.util.OptionalDouble;
import laminate.material.Status;

/**
 * Dose against temperature for the wall: how soon a resin gels in a thin film or small cup. Cells that the resin's gel
 * times do not reach are empty.
 *
 * @param resin the id of the resin
 * @param agent the id of the catalyst or hardener
 * @param temperatures the columns (K), rising
 * @param rows a row for each dose, rising
 * @param wanted which dose gives a wanted gel time, a row for each
 * @param source the sources of the gel times
 * @param status the least certain of them
 */
public record DoseTable(
        String resin,
        String agent,
        List<Double> temperatures,
        List<Row> rows,
        List<Wanted> wanted,
        String source,
        Status status) {

    /** Copies the lists. */
    public DoseTable {
        temperatures = List.copyOf(temperatures);
        rows = List.copyOf(rows);
        wanted = List.copyOf(wanted);
    }

    /**
     * Gel times at one dose.
     *
     * @param dose agent by resin (kg/kg)
     * @param volumePerMass the same by volume, from the agent's density (m³/kg)
     * @param gelTimes by temperature (s), empty outside the resin's points
     */
    public record Row(double dose, double volumePerMass, List<OptionalDouble> gelTimes) {
        /** Copies the list. */
        public Row {
            gelTimes = List.copyOf(gelTimes);
        }
    }

    /**
     * Doses for one wanted working time.
     *
     * @param workingTime time to use a small mix up, after mixing, within the usable share of the gel time (s)
     * @param doses by temperature (kg/kg), empty where no dose within the resin's range and points gives it
     */
    public record Wanted(double workingTime, List<OptionalDouble> doses) {
        /** Copies the list. */
        public Wanted {
            doses = List.copyOf(doses);
        }
    }
}
