package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.process.Workshop;

/**
 * Plans the stages and mixes of an estimated part in a workshop.
 *
 * <pre>{@code
 * PartEstimate estimate = new Estimator(workshop).estimate(part);
 * MixPlan plan = new MixPlanner(workshop).plan(estimate);
 * }</pre>
 *
 * <p>How long infusing takes is told by the flow, where the caller hands it over as {@link Inflow}, so that clock and mixes
 * agree with it; else by the workshop's labour. {@code MouldingPlan} joins both.
 *
 * <p>The clock counts coating, laying, bedding, bagging and infusing; the mould is taken to be waxed and ready, and days to
 * follow each other.
 */
public final class MixPlanner {
    private final Workshop workshop;

    /**
     * A planner.
     *
     * @param workshop the workshop's temperature, hands, scales and hours; the one that the part was estimated in
     */
    public MixPlanner(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Plans one moulding.
     *
     * @param estimate the part as estimated in this workshop
     * @return stages, mixes, clock and cautions; a resin whose mixes cannot be made in time says why and what would help
     */
    public MixPlan plan(PartEstimate estimate) {
        return plan(estimate, List.of());
    }

    /**
     * Plans one moulding whose infusions are planned.
     *
     * @param estimate the part as estimated in this workshop
     * @param inflows how the resin of its planned infusions is drawn in; a zone that is infused but not among them takes its
     *     share of the labour's time for infusing
     * @return stages, mixes, clock and cautions, as of the other method
     */
    public MixPlan plan(PartEstimate estimate, List<Inflow> inflows) {
        double temperature = workshop.plannedTemperature();
        List<Stage> stages = new ArrayList<>();
        StageClock clock = new StageClock(workshop.shopFloor().day());
        Optional<FreshAir> freshAir = Optional.empty();
        StageRemarks remarks = new StageRemarks(
                clock.dayLength(), workshop.shopFloor().mixing().mixingTime().value());
        for (StageWork work : new StageWorks(estimate, workshop, inflows).of(merged(estimate))) {
            StageClock.Slot slot = clock.take(work);
            stages.add(stage(stages.size() + 1, work, slot, remarks));
            freshAir = FreshAirNeed.greater(freshAir, stages.get(stages.size() - 1), work, workshop.shopFloor());
        }
        return new MixPlan(
                estimate.part().name(),
                estimate.part().count(),
                temperature,
                workshop.temperature().isEmpty(),
                workshop.shopFloor().crew(),
                stages,
                DoseTables.of(stages, workshop.shopFloor().mixing(), temperature),
                freshAir,
                PlanCautions.of(estimate, stages, workshop));
    }

    private List<List<StageGroup>> merged(PartEstimate estimate) {
        StageMerge merge = new StageMerge();
        int cut = 0;
        for (int i = 0; i < estimate.zones().size(); i++) {
            ZoneEstimate zone = estimate.zones().get(i);
            int end = cut + zone.layers().size();
            merge.add(ZoneStages.of(
                    i,
                    zone,
                    estimate.quantities().cuts().subList(cut, end),
                    estimate.part().count(),
                    workshop));
            cut = end;
        }
        return merge.stages();
    }

    private static Stage stage(int number, StageWork work, StageClock.Slot slot, StageRemarks remarks) {
        List<Caution> cautions = new ArrayList<>();
        slot.cooling().ifPresent(cautions::add);
        cautions.addAll(remarks.of(work));
        return new Stage(
                number,
                work.name(),
                work.kind(),
                work.first().first().use().process(),
                work.layers(),
                work.thickness(),
                work.dryTime(),
                work.wetTime(),
                work.bagTime(),
                work.infusing(),
                ClockTime.at(slot.start()),
                ClockTime.at(slot.end()),
                slot.gelled().map(ClockTime::at),
                work.resins(),
                slot.bond(),
                cautions);
    }
}
