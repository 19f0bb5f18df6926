package laminate.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import laminate.material.Agent;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Mixing;
import laminate.process.cure.GelTime;
import laminate.process.cure.GelTimes;

/**
 * Makes tables for the wall out of a resin's gel times: a row for each dose and a column for each temperature of them, and
 * for that of the plan where the gel times reach it.
 */
final class DoseTables {
    private static final double[] WORKING_MINUTES = {5, 10, 15, 20, 30, 45};

    /** Temperatures nearer than this are one column (K). */
    private static final double SAME = 0.01;

    private final Resin resin;
    private final Agent agent;
    private final GelTimes times;
    private final Set<String> sources = new LinkedHashSet<>();
    private Status status = Status.PRINTED;

    private DoseTables(Resin resin, Agent agent) {
        this.resin = resin;
        this.agent = agent;
        this.times = GelTimes.of(resin, agent.id());
    }

    /** A table for each resin and agent of a plan that has gel times, in the order in which they are first mixed. */
    static List<DoseTable> of(List<Stage> stages, Mixing mixing, double temperature) {
        List<DoseTable> tables = new ArrayList<>();
        Set<String> made = new HashSet<>();
        for (Stage stage : stages) {
            for (StageResin resin : stage.resins()) {
                Agent agent = resin.dose().agent();
                if (made.add(resin.resin().id() + " " + agent.id())) {
                    add(resin.resin(), agent, mixing, temperature, tables);
                }
            }
        }
        return tables;
    }

    private static void add(Resin resin, Agent agent, Mixing mixing, double temperature, List<DoseTable> tables) {
        DoseTables table = new DoseTables(resin, agent);
        if (table.times.isKnown()) {
            tables.add(table.table(mixing, temperature));
        }
    }

    private DoseTable table(Mixing mixing, double temperature) {
        Set<Double> doses = new TreeSet<>();
        Set<Double> temperatures = new TreeSet<>();
        for (Resin.GelPoint point : resin.gelPoints()) {
            if (point.agent().equals(agent.id())) {
                doses.add(point.amount());
                temperatures.add(point.temperature());
            }
        }
        boolean isNew = temperatures.stream().noneMatch(known -> Math.abs(known - temperature) < SAME);
        if (isNew
                && doses.stream().anyMatch(dose -> times.find(temperature, dose).isPresent())) {
            temperatures.add(temperature);
        }
        List<DoseTable.Row> rows = new ArrayList<>();
        for (double dose : doses) {
            rows.add(new DoseTable.Row(dose, dose / agent.density(), gelTimes(dose, temperatures)));
        }
        return new DoseTable(
                resin.id(),
                agent.id(),
                List.copyOf(temperatures),
                rows,
                agent.isHardener() ? List.of() : wanted(temperatures, mixing),
                String.join("; ", sources),
                status);
    }

    private List<OptionalDouble> gelTimes(double dose, Set<Double> temperatures) {
        List<OptionalDouble> found = new ArrayList<>();
        for (double temperature : temperatures) {
            Optional<GelTime> time = times.find(temperature, dose);
            if (isPoint(temperature)) { // what lies between points has their sources
                time.ifPresent(this::note);
            }
            found.add(time.isPresent() ? OptionalDouble.of(time.get().seconds()) : OptionalDouble.empty());
        }
        return found;
    }

    private boolean isPoint(double temperature) {
        return resin.gelPoints().stream()
                .anyMatch(point -> point.agent().equals(agent.id()) && point.temperature() == temperature);
    }

    private void note(GelTime time) {
        sources.add(time.source());
        status = time.status().compareTo(status) > 0 ? time.status() : status;
    }

    private List<DoseTable.Wanted> wanted(Set<Double> temperatures, Mixing mixing) {
        List<DoseTable.Wanted> rows = new ArrayList<>();
        for (double minutes : WORKING_MINUTES) {
            double working = minutes * 60;
            double gel = mixing.gelTimeFor(working);
            List<OptionalDouble> doses = new ArrayList<>();
            for (double temperature : temperatures) {
                doses.add(allowed(times.doseFor(gel, temperature)));
            }
            if (doses.stream().anyMatch(OptionalDouble::isPresent)) {
                rows.add(new DoseTable.Wanted(working, doses));
            }
        }
        return rows;
    }

    private OptionalDouble allowed(OptionalDouble dose) {
        Resin.Cure cure = resin.cureBy(agent.id()).orElseThrow();
        boolean holds = dose.isPresent()
                && dose.getAsDouble() >= cure.from().value() * (1 - 1e-9)
                && dose.getAsDouble() <= cure.to().value() * (1 + 1e-9);
        return holds ? dose : OptionalDouble.empty();
    }
}
