package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.Item;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Loss;
import laminate.process.Workshop;

/**
 * Sums what the zones of a part hold and what must be mixed and bought for them, for all mouldings.
 *
 * <p>A zone counts three areas: the finished area, the same with laps for reinforcement, and the margin that is trimmed
 * off. Losses that are a share are reckoned on all that is laid, the margin included.
 */
final class Quantifier {
    private final Part part;
    private final Workshop workshop;
    private final ResinLedger resins = new ResinLedger();
    private final MaterialLedger materials;
    private final List<LayerCut> cuts = new ArrayList<>();
    private double fibre;
    private double core;
    private double given;
    private double coating;
    private double laps;
    private double trimmed;

    Quantifier(Part part, Workshop workshop) {
        this.part = part;
        this.workshop = workshop;
        this.materials = new MaterialLedger(workshop);
    }

    Quantities quantify(List<ZoneEstimate> zones) {
        for (ZoneEstimate zone : zones) {
            add(zone);
        }
        addLines();
        List<ResinQuantity> mixed = resins.quantities();
        double resinInPart = 0;
        for (ResinQuantity resin : mixed) {
            resinInPart += resin.use().isCoating() ? 0 : resin.inPart();
        }
        double itemsEach = 0;
        for (Item item : part.items()) {
            itemsEach += item.count() * item.mass();
        }
        return new Quantities(
                fibre,
                core,
                given,
                resinInPart,
                coating,
                itemsEach * part.count(),
                laps,
                trimmed,
                mixed,
                materials.quantities(mixed),
                cuts);
    }

    private void add(ZoneEstimate estimate) {
        Zone zone = estimate.zone();
        double area = zone.totalArea() * part.count();
        double margin = zone.marginArea() * zone.count() * part.count();
        for (LaidCoating laid : estimate.coatings()) {
            addCoating(laid, ResinUse.of(laid.coating(), zone), area, margin);
        }
        int number = 1;
        for (LaidLayer layer : estimate.layers()) {
            addLayer(layer, zone, number++, area, margin);
        }
        addBags(zone, area + margin);
        trimmed += estimate.massPerArea().planned() * margin;
    }

    private void addCoating(LaidCoating laid, ResinUse use, double area, double margin) {
        double inPart = laid.massPerArea().planned();
        double everywhere = inPart * (area + margin);
        double evaporated = (laid.applied() - inPart) * (area + margin);
        double left = workshop.loss(use.process(), Loss.COATING).value() * everywhere;
        resins.add(use, inPart * area, ResinLoss.byHand(inPart * margin, left), evaporated);
        coating += inPart * area;
    }

    private void addLayer(LaidLayer laid, Zone zone, int number, double area, double margin) {
        Layer layer = laid.layer();
        double lap = lapShare(workshop, layer) * area;
        if (layer instanceof ReinforcementLayer) {
            laps += (laid.fibreMass() + laid.resinMass().planned()) * lap;
            fibre += laid.fibreMass() * (area + lap);
            addResin(ResinUse.of(layer), laid.resinMass().planned(), area + lap, margin);
        } else if (layer instanceof BulkerLayer) {
            core += laid.coreMass() * area;
            addResin(ResinUse.of(layer), laid.resinMass().planned(), area, margin);
        } else if (layer instanceof CoreLayer cored) {
            core += laid.coreMass() * area;
            addResin(ResinUse.of(layer), laid.resinMass().planned(), area, margin);
            if (cored.bed().isPresent()) {
                addBed(ResinUse.of(cored.bed().get(), cored), laid.bedMass(), area, margin);
            }
        } else {
            given += laid.givenMass() * area;
        }
        materials.add(laid, area + lap, margin);
        cuts.add(cut(laid, zone, number, area + lap + margin));
    }

    private static LayerCut cut(LaidLayer laid, Zone zone, int number, double area) {
        return new LayerCut(
                zone.name(),
                number,
                laid.layer().material(),
                area,
                (laid.fibreMass() + laid.coreMass() + laid.givenMass()) * area,
                (laid.resinMass().planned() + laid.bedMass()) * area);
    }

    private void addResin(ResinUse use, double perArea, double area, double margin) {
        double everywhere = perArea * (area + margin);
        double gone = workshop.evaporation(use.process(), use.resin());
        double left = workshop.loss(use.process(), Loss.RESIN).value() * everywhere;
        resins.add(use, perArea * area, ResinLoss.byHand(perArea * margin, left), everywhere * gone / (1 - gone));
    }

    private void addBed(ResinUse use, double perArea, double area, double margin) {
        double everywhere = perArea * (area + margin);
        double left = workshop.loss(use.process(), Loss.COATING).value() * everywhere;
        resins.add(use, perArea * area, ResinLoss.byHand(perArea * margin, left), 0);
    }

    /** A bag is fitted once for each resin and stage of a zone, whatever the number of layers under it. */
    private void addBags(Zone zone, double area) {
        for (ResinUse use : laid(zone)) {
            double perArea = workshop.loss(use.process(), Loss.BAG).value()
                    + workshop.loss(use.process(), Loss.MESH).value();
            resins.add(use, 0, ResinLoss.inBag(perArea * area), 0);
        }
    }

    /** Lines and bucket are filled once a moulding for each resin that is drawn through them, by all zones together. */
    private void addLines() {
        Set<ResinUse> drawn = new LinkedHashSet<>();
        for (Zone zone : part.zones()) {
            drawn.addAll(laid(zone));
        }
        for (ResinUse use : drawn) {
            double each = workshop.loss(use.process(), Loss.LINES).value()
                    + workshop.loss(use.process(), Loss.BUCKET).value();
            resins.add(use, 0, ResinLoss.inLines(each * part.count()), 0);
        }
    }

    /** The resins that the layers of a zone are laid with; pastes and coatings left out. */
    private static Set<ResinUse> laid(Zone zone) {
        Set<ResinUse> uses = new LinkedHashSet<>();
        for (Layer layer : zone.layers()) {
            if (layer.laying().isPresent()) {
                uses.add(ResinUse.of(layer));
            }
        }
        return uses;
    }

    /** Share of the area that a layer is laid twice: reinforcement laps at its seams, cores and bulkers butt. */
    static double lapShare(Workshop workshop, Layer layer) {
        return layer instanceof ReinforcementLayer reinforcement
                ? workshop.loss(reinforcement.layUp().process(), Loss.LAPS).value()
                : 0;
    }
}
