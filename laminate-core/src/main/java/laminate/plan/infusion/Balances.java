package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.material.Figure;
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
    /** Grams do not matter where a bucket is weighed to 5 g. */
    private static final double WORTH_TELLING = 0.01;

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
        double count = estimate.part().count();
        Tally tally = new Tally();
        for (ZoneEstimate zone : estimate.zones()) {
            if (InfusedZone.uses(zone).contains(resin.use())) {
                tally.add(zone, InfusedZone.of(zone, resin.use(), workshop), isCovered(zone, resin));
            }
        }
        double bucket = workshop.loss(Process.INFUSION, Loss.BUCKET).value();
        double lines = resin.loss().lines() / count - bucket;
        List<Infusion> own = own(resin);
        List<Share> shares = new ArrayList<>();
        double laminate = resin.inPart() / count - tally.openings;
        shares.add(same(Place.LAMINATE, laminate));
        shares.add(same(Place.CORE_OPENINGS, tally.openings));
        shares.add(same(Place.TRIMMED, resin.loss().trimmed() / count));
        shares.add(same(Place.BAG, resin.loss().bag() / count - tally.mesh));
        shares.add(new Share(Place.MESH, tally.mesh, tally.uncoveredMesh + held(own, Place.MESH)));
        shares.add(new Share(Place.LINES, lines, own.isEmpty() ? lines : held(own, Place.LINES)));
        shares.add(new Share(Place.BUCKET, bucket, own.isEmpty() ? bucket : held(own, Place.BUCKET)));
        shares.add(new Share(
                Place.CATCH_POT, resin.loss().pots() / count, tally.uncoveredPots + held(own, Place.CATCH_POT)));
        shares.add(same(Place.EVAPORATED, resin.evaporated() / count));
        return new ResinBalance(resin.use(), shares, remarks(shares));
    }

    private static Share same(Place place, double mass) {
        return new Share(place, mass, mass);
    }

    /** The infusions that draw this resin; a zone of several infused stages fills its lines with the first. */
    private List<Infusion> own(ResinQuantity resin) {
        return infusions.stream()
                .filter(infusion -> estimate.zones().stream()
                        .anyMatch(zone -> infusion.zones().contains(zone.zone().name()) && isFirst(zone, resin)))
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

    private List<String> remarks(List<Share> shares) {
        List<String> remarks = new ArrayList<>();
        for (Share share : shares) {
            double difference = share.planned() - share.estimated();
            if (Math.abs(difference) >= WORTH_TELLING) {
                remarks.add(remark(share));
            }
        }
        return remarks;
    }

    private String remark(Share share) {
        String text = share.place().word() + ": the plan leaves " + kilograms(share.planned())
                + ", the estimate reckons " + kilograms(share.estimated()) + " by the losses of the workshop";
        return switch (share.place()) {
            case LINES -> text + " (" + source(Loss.LINES) + "); to agree write lines: " + kilograms(share.planned());
            case BUCKET ->
                text + " (" + source(Loss.BUCKET) + "); to agree write bucket: " + kilograms(share.planned());
            case MESH -> text + " (" + source(Loss.MESH) + "); to agree state its own mesh: loss there, by area";
            default -> text + " (" + source(Loss.RESIN) + ")";
        };
    }

    private String source(Loss loss) {
        Figure figure = workshop.loss(Process.INFUSION, loss);
        return figure.source();
    }

    private static String kilograms(double mass) {
        return Significant.format(mass, 3) + " kg";
    }

    /** Sums over the zones that take one resin (kg). */
    private static final class Tally {
        private double openings;
        private double mesh;
        private double uncoveredMesh;
        private double uncoveredPots;

        void add(ZoneEstimate zone, InfusedZone one, boolean covered) {
            int count = zone.zone().count();
            openings += one.openings() * count;
            mesh += one.mesh() * count;
            uncoveredMesh += covered ? 0 : one.mesh() * count;
            uncoveredPots += covered ? 0 : one.catchPot() * count;
        }
    }
}
