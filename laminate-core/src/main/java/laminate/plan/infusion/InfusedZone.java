package laminate.plan.infusion;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import laminate.estimate.LaidLayer;
import laminate.estimate.ResinUse;
import laminate.estimate.ZoneEstimate;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;

/**
 * What one zone of a kind takes of an infused resin, by the rules of the estimate (kg, all for one such zone).
 *
 * @param use the resin and what it is mixed for
 * @param inPart in its layers and cores, laps included
 * @param openings what of it is in grooves, holes and kerfs of cores
 * @param trimmed with the margin
 * @param bag in peel ply, release film and breather
 * @param mesh in the flow mesh that the workshop's losses take for granted
 * @param catchPot in the catch pot by the workshop's losses
 * @param evaporated to the air
 * @param area under the bag, with the margin (m²)
 */
record InfusedZone(
        ResinUse use,
        double inPart,
        double openings,
        double trimmed,
        double bag,
        double mesh,
        double catchPot,
        double evaporated,
        double area) {

    /** The infused resins of a zone, in the order laid. */
    static Set<ResinUse> uses(ZoneEstimate zone) {
        Set<ResinUse> uses = new LinkedHashSet<>();
        for (Layer layer : zone.zone().layers()) {
            if (layer.isLaidBy(Process.INFUSION)) {
                uses.add(ResinUse.of(layer));
            }
        }
        return uses;
    }

    static InfusedZone of(ZoneEstimate zone, ResinUse use, Workshop workshop) {
        List<LaidLayer> layers = zone.layers().stream()
                .filter(laid -> laid.isLaidBy(Process.INFUSION)
                        && ResinUse.of(laid.layer()).equals(use))
                .toList();
        Zone planned = zone.zone();
        double area = planned.area() + planned.marginArea();
        double inPart = 0;
        double openings = 0;
        double margin = 0;
        for (LaidLayer laid : layers) {
            double perArea = laid.resinMass().planned();
            inPart += perArea * (planned.area() + lap(laid, workshop) * planned.area());
            openings += openings(laid) * planned.area();
            margin += perArea * planned.marginArea();
        }
        double gone = workshop.evaporation(Process.INFUSION, use.resin());
        return new InfusedZone(
                use,
                inPart,
                openings,
                margin,
                workshop.loss(Process.INFUSION, Loss.BAG).value() * area,
                workshop.loss(Process.INFUSION, Loss.MESH).value() * area,
                workshop.loss(Process.INFUSION, Loss.RESIN).value() * (inPart + margin),
                (inPart + margin) * gone / (1 - gone),
                area);
    }

    private static double lap(LaidLayer laid, Workshop workshop) {
        return laid.layer() instanceof ReinforcementLayer
                ? workshop.loss(Process.INFUSION, Loss.LAPS).value()
                : 0;
    }

    private static double openings(LaidLayer laid) {
        return laid.layer() instanceof CoreLayer core
                ? core.finish()
                        .openingUptake(core.thickness(), core.layUp().resin().densityCured())
                : 0;
    }
}
