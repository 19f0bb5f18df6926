package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinLoss;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.plan.infusion.ResinBalance.Place;
import laminate.plan.infusion.ResinBalance.Share;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.unit.Significant;

/**
 * Where the infused resin of a moulding goes, by the estimate and by the plans.
 *
 * <p>The estimate counts lines and bucket once for each resin of a moulding, mesh and peel ply by area and the catch pot as
 * a share; a plan has its own hoses, mesh and pot. Grooves are filled with what the estimate has in the part, so they are
 * taken out of the laminate's share and not added to it. What no plan covers stays as the estimate has it.
 */
final class Balances {
    /** Grams do not matter where a bucket is weighed to 5 g (kg). */
    private static final double WORTH_TELLING = 0.01;

    /** Nor does a small share: the losses take one density for every resin. */
    private static final double WORTH_TELLING_SHARE = 0.1;

    private final PartEstimate estimate;
    private final List<Infusion> infusions;
    private final Workshop workshop;

    Balances(PartEstimate estimate, List<Infusion> infusions, Workshop workshop) {
        this.estimate = estimate;
        this.infusions = infusions;
        this.workshop = workshop;
    }

    List<ResinBalance> all() {
        List<ResinBalance> balances = new ArrayList<>();
        for (ResinQuantity resin : estimate.quantities().resins()) {
            if (resin.use().process() == Process.INFUSION && !resin.use().isCoating() && isDrawn(resin)) {
                balances.add(of(resin));
            }
        }
        return balances;
    }

    /** A paste of an infused part is spread, not drawn. */
    private boolean isDrawn(ResinQuantity resin) {
        return estimate.zones().stream().anyMatch(zone -> InfusedZone.uses(zone).contains(resin.use()));
    }

    private ResinBalance of(ResinQuantity resin) {
        Tally tally = new Tally();
        for (ZoneEstimate zone : estimate.zones()) {
            if (InfusedZone.uses(zone).contains(resin.use())) {
                tally.add(zone, InfusedZone.of(zone, resin.use(), workshop), isCovered(zone, resin));
            }
        }
        List<Share> shares = shares(resin, tally);
        double poured =
                (resin.inPart() + resin.loss().trimmed()) / estimate.part().count();
        return new ResinBalance(resin.use(), shares, remarks(shares, tally, poured));
    }

    /** In the order of the places. */
    private List<Share> shares(ResinQuantity resin, Tally tally) {
        double count = estimate.part().count();
        ResinLoss loss = resin.loss();
        List<Infusion> own = own(resin);
        double bucket = workshop.loss(Process.INFUSION, Loss.BUCKET).value();
        double lines = loss.lines() / count - bucket;
        return List.of(
                same(Place.LAMINATE, resin.inPart() / count - tally.openings),
                same(Place.CORE_OPENINGS, tally.openings),
                same(Place.TRIMMED, loss.trimmed() / count),
                same(Place.BAG, loss.bag() / count - tally.mesh),
                new Share(Place.MESH, tally.mesh, tally.uncoveredMesh + held(own, Place.MESH)),
                new Share(Place.LINES, lines, tally.isCovered ? held(own, Place.LINES) : lines),
                new Share(Place.BUCKET, bucket, tally.isCovered ? held(own, Place.BUCKET) : bucket),
                new Share(Place.CATCH_POT, loss.pots() / count, tally.uncoveredPots + held(own, Place.CATCH_POT)),
                same(Place.EVAPORATED, resin.evaporated() / count));
    }

    private static Share same(Place place, double mass) {
        return new Share(place, mass, mass);
    }

    /**
     * The infusions whose lines count to this resin: to the first that the first of their zones takes. Where they fill other
     * stages too, these have none of their own.
     */
    private List<Infusion> own(ResinQuantity resin) {
        return infusions.stream()
                .filter(infusion -> estimate.zones().stream()
                        .filter(zone -> infusion.zones().contains(zone.zone().name()))
                        .findFirst()
                        .filter(zone -> isFirst(zone, resin))
                        .isPresent())
                .toList();
    }

    private boolean isCovered(ZoneEstimate zone, ResinQuantity resin) {
        return isFirst(zone, resin)
                && infusions.stream()
                        .anyMatch(infusion ->
                                infusion.zones().contains(zone.zone().name()));
    }

    private static boolean isFirst(ZoneEstimate zone, ResinQuantity resin) {
        return InfusedZone.uses(zone).stream()
                .findFirst()
                .filter(resin.use()::equals)
                .isPresent();
    }

    private static double held(List<Infusion> own, Place place) {
        double sum = 0;
        for (Infusion infusion : own) {
            HeldResin held = infusion.held();
            double each = switch (place) {
                case MESH -> held.mesh().value();
                case LINES -> held.lines();
                case BUCKET -> held.bucket().value();
                case CATCH_POT -> held.catchPot().value();
                default -> throw new IllegalArgumentException("a plan says nothing of " + place);
            };
            sum += each * infusion.count();
        }
        return sum;
    }

    private List<String> remarks(List<Share> shares, Tally tally, double poured) {
        List<String> remarks = new ArrayList<>();
        for (Share share : shares) {
            double difference = Math.abs(share.planned() - share.estimated());
            double least = Math.max(WORTH_TELLING, WORTH_TELLING_SHARE * share.estimated());
            if (difference >= least) {
                remarks.add(remark(share, tally, poured));
            }
        }
        return remarks;
    }

    private String remark(Share share, Tally tally, double poured) {
        return switch (share.place()) {
            case LINES -> remark(share, Loss.LINES, kilograms(share.planned()));
            case BUCKET -> remark(share, Loss.BUCKET, kilograms(share.planned()));
            case MESH -> remark(share, Loss.MESH, Significant.format(share.planned() / tally.area * 1000, 3) + " g/m²");
            default -> remark(share, Loss.RESIN, Significant.format(share.planned() / poured * 100, 3) + " %");
        };
    }

    /** What the workshop's file would have to say for the estimate to come to the plan's. */
    private String remark(Share share, Loss loss, String agreeing) {
        return share.place().word() + ": " + kilograms(share.planned()) + " by the plan, "
                + kilograms(share.estimated()) + " by the losses of the workshop ("
                + workshop.loss(Process.INFUSION, loss).source() + "); the estimate agrees with loss: {infusion: {"
                + loss.key() + ": " + agreeing + "}}";
    }

    private static String kilograms(double mass) {
        return Significant.format(mass, 3) + " kg";
    }

    /** Sums over the zones that take one resin (kg). */
    private static final class Tally {
        private double area;
        private double openings;
        private double mesh;
        private double uncoveredMesh;
        private double uncoveredPots;
        private boolean isCovered;

        void add(ZoneEstimate zone, InfusedZone one, boolean covered) {
            int count = zone.zone().count();
            isCovered |= covered;
            area += one.area() * count;
            openings += one.openings() * count;
            mesh += one.mesh() * count;
            uncoveredMesh += covered ? 0 : one.mesh() * count;
            uncoveredPots += covered ? 0 : one.catchPot() * count;
        }
    }
}
