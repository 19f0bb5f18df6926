package laminate.print.mix;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import laminate.plan.Bond;
import laminate.plan.ClockTime;
import laminate.plan.InfusingTime;
import laminate.plan.Mix;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.plan.StageResin;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.unit.Unit;

/**
 * The rows of each table of {@link MixCsv}, below their headings.
 *
 * @param measures the reader's units
 */
record MixTables(Measures measures) {

    void mixes(List<MixPlan> plans, CsvWriter csv) {
        String g = CsvWriter.symbol(measures.smallMass());
        String ml = CsvWriter.symbol(measures.smallVolume());
        csv.headings(List.of(
                "part",
                "stage",
                "name",
                "use",
                "mix",
                "resin",
                "needed_" + g,
                "resin_" + g,
                "resin_" + ml,
                "agent",
                "agent_" + g,
                "agent_" + ml,
                "pump_strokes",
                "gel_time_min",
                "usable_time_min",
                "work_time_min"));
        for (MixPlan plan : plans) {
            for (Stage stage : plan.stages()) {
                for (StageResin resin : stage.resins()) {
                    resin.mixes().forEach(mix -> mix(plan, stage, resin, mix, csv));
                }
            }
        }
    }

    private void mix(MixPlan plan, Stage stage, StageResin resin, Mix mix, CsvWriter csv) {
        csv.text(plan.part())
                .number(stage.number())
                .text(stage.name())
                .text(resin.use())
                .number(mix.number())
                .text(mix.material())
                .number(mix.needed(), measures.smallMass())
                .number(mix.resin(), measures.smallMass())
                .number(mix.resinVolume(), measures.smallVolume())
                .text(mix.agent())
                .number(mix.catalyst(), measures.smallMass())
                .number(mix.catalystVolume(), measures.smallVolume());
        if (mix.strokes().isPresent()) {
            csv.number(mix.strokes().getAsInt());
        } else {
            csv.nothing();
        }
        csv.number(mix.gelTime(), Unit.MINUTE)
                .number(mix.usableTime(), Unit.MINUTE)
                .number(mix.workTime(), Unit.MINUTE)
                .end();
    }

    void stages(List<MixPlan> plans, CsvWriter csv) {
        String kg = CsvWriter.symbol(measures.mass());
        csv.headings(List.of(
                "part",
                "stage",
                "name",
                "kind",
                "process",
                "resins",
                "thickness_" + CsvWriter.symbol(measures.length()),
                "dry_time_min",
                "wet_time_min",
                "bag_time_min",
                "start_day",
                "start",
                "end_day",
                "end",
                "gelled_day",
                "gelled",
                "mixes",
                "needed_" + kg,
                "mixed_" + kg,
                "laid_onto",
                "gap_h",
                "bond",
                "infusing_by_flow_min",
                "infusing_by_labour_min"));
        plans.forEach(plan -> plan.stages().forEach(stage -> stage(plan, stage, csv)));
    }

    private void stage(MixPlan plan, Stage stage, CsvWriter csv) {
        csv.text(plan.part())
                .number(stage.number())
                .text(stage.name())
                .text(MixWords.word(stage.kind()))
                .text(stage.process().word())
                .text(MixWords.resins(stage))
                .number(stage.thickness(), measures.length())
                .number(stage.dryTime(), Unit.MINUTE)
                .number(stage.wetTime(), Unit.MINUTE)
                .number(stage.bagTime(), Unit.MINUTE);
        time(Optional.of(stage.start()), csv);
        time(Optional.of(stage.end()), csv);
        time(stage.gelled(), csv);
        csv.number(stage.mixes().size());
        csv.number(stage.resins().stream().mapToDouble(StageResin::need).sum(), measures.mass());
        csv.number(stage.resins().stream().mapToDouble(StageResin::mixed).sum(), measures.mass());
        bond(stage.bond(), csv);
        csv.number(seconds(stage, InfusingTime::planned), Unit.MINUTE)
                .number(seconds(stage, InfusingTime::byLabour), Unit.MINUTE)
                .end();
    }

    private static OptionalDouble seconds(Stage stage, ToDoubleFunction<InfusingTime> of) {
        return stage.infusing().stream().mapToDouble(of).findFirst();
    }

    private static void time(Optional<ClockTime> time, CsvWriter csv) {
        if (time.isEmpty()) {
            csv.nothing().nothing();
            return;
        }
        csv.number(time.get().day())
                .text(time.get().time().truncatedTo(ChronoUnit.SECONDS).format(MixWords.SECONDS));
    }

    private static void bond(Optional<Bond> bond, CsvWriter csv) {
        if (bond.isEmpty()) {
            csv.nothing().nothing().nothing();
            return;
        }
        csv.text(bond.get().onto())
                .number(bond.get().gap(), Unit.HOURS)
                .text(MixWords.word(bond.get().verdict()));
    }

    void layers(List<MixPlan> plans, CsvWriter csv) {
        csv.headings(List.of(
                "part",
                "stage",
                "zone",
                "layer",
                "material",
                "pieces",
                "angle_deg",
                "turned",
                "area_" + CsvWriter.symbol(measures.area()),
                "lap_percent",
                "thickness_" + CsvWriter.symbol(measures.length()),
                "resin_" + CsvWriter.symbol(measures.smallMass())));
        for (MixPlan plan : plans) {
            for (Stage stage : plan.stages()) {
                stage.layers().forEach(layer -> layer(plan, stage, layer, csv));
            }
        }
    }

    private void layer(MixPlan plan, Stage stage, StageLayer layer, CsvWriter csv) {
        csv.text(plan.part())
                .number(stage.number())
                .text(layer.zone())
                .number(layer.number())
                .text(layer.material())
                .number(layer.pieces())
                .number(layer.angle(), Unit.DEGREE)
                .text(layer.turned() ? "turned" : "")
                .number(layer.area(), measures.area())
                .number(layer.lapShare(), Unit.PERCENT)
                .number(layer.thickness(), measures.length())
                .number(layer.resin(), measures.smallMass())
                .end();
    }
}
