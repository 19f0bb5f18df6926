package laminate.print.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.Cost;
import laminate.estimate.LaidCoating;
import laminate.estimate.LaidLayer;
import laminate.estimate.LayerCut;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinLoss;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.unit.Unit;
import laminate.unit.UnitPrice;

/**
 * The rows of each table of {@link EstimateCsv}. The methods that write rows stand in the order of the headings.
 *
 * @param measures the reader's units
 */
record CsvTables(Measures measures) {

    List<String> headings(EstimateCsv.Which which) {
        String kg = CsvWriter.symbol(measures.mass());
        String g = CsvWriter.symbol(measures.smallMass());
        String ml = CsvWriter.symbol(measures.smallVolume());
        String area = "area_" + CsvWriter.symbol(measures.area());
        String perArea = CsvWriter.symbol(measures.arealMass());
        String metre = CsvWriter.symbol(measures.longLength());
        return switch (which) {
            case LAYERS ->
                List.of(
                        "part",
                        "zone",
                        "layer",
                        "kind",
                        "material",
                        "stage",
                        "angle_deg",
                        "thickness_" + CsvWriter.symbol(measures.length()),
                        "fibre_" + perArea,
                        "core_" + perArea,
                        "resin_" + perArea,
                        "given_" + perArea,
                        "coating_" + perArea,
                        "fibre_mass_percent",
                        "fibre_volume_percent");
            case RESINS ->
                List.of(
                        "part",
                        "use",
                        "resin",
                        "process",
                        "in_part_" + kg,
                        "lost_" + kg,
                        "lost_trimmed_" + kg,
                        "lost_pots_" + kg,
                        "lost_bag_" + kg,
                        "lost_lines_" + kg,
                        "evaporated_" + kg,
                        "to_mix_" + kg,
                        "agent",
                        "agent_percent",
                        "agent_" + g,
                        "agent_" + ml);
            case MATERIALS ->
                List.of(
                        "part",
                        "material",
                        "kind",
                        area,
                        "length_" + metre,
                        "roll_width_" + metre,
                        "in_part_" + kg,
                        "to_buy_" + kg,
                        "volume_" + CsvWriter.symbol(measures.volume()),
                        "pieces");
            case CUTS -> List.of("part", "zone", "layer", "material", area, "dry_" + kg, "resin_" + kg);
            case COST ->
                List.of("part", "head", "name", "amount", "quantity", "unit", "unit_price", "cost", "currency");
        };
    }

    void layers(PartEstimate estimate, CsvWriter csv) {
        for (ZoneEstimate zone : estimate.zones()) {
            List<String> place = List.of(estimate.part().name(), zone.zone().name());
            zone.coatings().stream()
                    .filter(laid -> laid.coating().atMouldFace())
                    .forEach(laid -> coating(place, laid, csv));
            int number = 1;
            for (LaidLayer laid : zone.layers()) {
                layer(place, number++, laid, csv);
            }
            zone.coatings().stream()
                    .filter(laid -> !laid.coating().atMouldFace())
                    .forEach(laid -> coating(place, laid, csv));
        }
    }

    private void coating(List<String> place, LaidCoating laid, CsvWriter csv) {
        place.forEach(csv::text);
        csv.nothing()
                .text("coating")
                .text(laid.coating().material().id())
                .nothing()
                .nothing();
        csv.number(laid.thickness().planned(), measures.length());
        csv.nothing().nothing().nothing().nothing();
        csv.number(laid.massPerArea().planned(), measures.arealMass());
        csv.nothing().nothing().end();
    }

    private void layer(List<String> place, int number, LaidLayer laid, CsvWriter csv) {
        place.forEach(csv::text);
        csv.number(number)
                .text(EstimateWords.kind(laid.layer()))
                .text(laid.layer().material());
        csv.text(laid.layer().stage());
        csv.number(EstimateWords.angle(laid.layer()), Unit.DEGREE);
        csv.number(laid.thickness().planned(), measures.length());
        unlessZero(laid.fibreMass(), measures.arealMass(), csv);
        unlessZero(laid.coreMass(), measures.arealMass(), csv);
        unlessZero(laid.resinMass().planned() + laid.bedMass(), measures.arealMass(), csv);
        unlessZero(laid.givenMass(), measures.arealMass(), csv);
        csv.nothing();
        unlessZero(laid.fibreMassFraction(), Unit.PERCENT, csv);
        unlessZero(laid.fibreVolumeFraction(), Unit.PERCENT, csv);
        csv.end();
    }

    void resins(PartEstimate estimate, CsvWriter csv) {
        for (ResinQuantity resin : estimate.quantities().resins()) {
            csv.text(estimate.part().name())
                    .text(resin.use().use())
                    .text(resin.resin().id());
            csv.text(resin.use().process().word());
            csv.number(resin.inPart(), measures.mass());
            csv.number(resin.lost(), measures.mass());
            loss(resin.loss(), csv);
            csv.number(resin.evaporated(), measures.mass());
            csv.number(resin.toMix(), measures.mass());
            csv.text(resin.dose().agent().id());
            csv.number(resin.dose().ratio(), Unit.PERCENT);
            csv.number(resin.agent(), measures.smallMass());
            csv.number(resin.agentVolume(), measures.smallVolume());
            csv.end();
        }
    }

    private void loss(ResinLoss loss, CsvWriter csv) {
        csv.number(loss.trimmed(), measures.mass());
        csv.number(loss.pots(), measures.mass());
        csv.number(loss.bag(), measures.mass());
        csv.number(loss.lines(), measures.mass());
    }

    void materials(PartEstimate estimate, CsvWriter csv) {
        List<MaterialQuantity> all = new ArrayList<>(estimate.quantities().materials());
        all.addAll(estimate.consumables());
        for (MaterialQuantity material : all) {
            csv.text(estimate.part().name()).text(material.material()).text(material.kind());
            csv.number(material.area(), measures.area());
            csv.number(material.length(), measures.longLength());
            csv.number(material.rollWidth(), measures.longLength());
            unlessZero(material.inPart(), measures.mass(), csv);
            csv.number(material.mass(), measures.mass());
            csv.number(material.volume(), measures.volume());
            if (material.pieces().isPresent()) {
                csv.number(material.pieces().getAsDouble());
            } else {
                csv.nothing();
            }
            csv.end();
        }
    }

    void cuts(PartEstimate estimate, CsvWriter csv) {
        for (LayerCut cut : estimate.quantities().cuts()) {
            csv.text(estimate.part().name())
                    .text(cut.zone())
                    .number(cut.number())
                    .text(cut.material());
            csv.number(cut.area(), measures.area());
            csv.number(cut.mass(), measures.mass());
            csv.number(cut.resin(), measures.mass());
            csv.end();
        }
    }

    void cost(PartEstimate estimate, CsvWriter csv) {
        estimate.cost().ifPresent(cost -> {
            for (Cost.Line line : cost.lines()) {
                csv.text(estimate.part().name())
                        .text(CostWords.word(line.category()))
                        .text(line.name());
                csv.text(CostWords.amount(line));
                price(line, csv);
                csv.text(line.cost().amount().toPlainString())
                        .text(cost.currency())
                        .end();
            }
            for (String missing : cost.missing()) {
                csv.text(estimate.part().name()).text("no price").text(missing).nothing();
                csv.nothing().nothing().nothing().nothing();
                csv.text(cost.currency()).end();
            }
        });
    }

    private static void price(Cost.Line line, CsvWriter csv) {
        if (line.price().isEmpty()) {
            csv.nothing().nothing().nothing();
            return;
        }
        UnitPrice price = line.price().get();
        csv.number(line.quantity())
                .text(price.basis().symbol())
                .text(price.amount().toPlainString());
    }

    private static void unlessZero(double si, Unit unit, CsvWriter csv) {
        if (si == 0) {
            csv.nothing();
        } else {
            csv.number(si, unit);
        }
    }
}
