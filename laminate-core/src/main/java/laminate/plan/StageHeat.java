package laminate.plan;

import java.util.Locale;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.LaidLayer;
import laminate.material.Status;
import laminate.part.CoreLayer;
import laminate.process.cure.Exotherm;
import laminate.process.cure.WetStage;

/**
 * How warm the thickest laminate of a stage may get, where its resin is styrenic and so its heat of cure is known. A core
 * keeps the heat of what is on either side of it apart.
 */
final class StageHeat {
    private double thickness;
    private double mass;
    private double fibre;

    private StageHeat() {}

    static Optional<Caution> of(StageWork work) {
        boolean heats = work.kind() == Stage.Kind.LAMINATE || work.kind() == Stage.Kind.INFUSION;
        if (!heats || !work.first().first().use().resin().family().isStyrenic()) {
            return Optional.empty();
        }
        StageHeat thickest = thickest(work);
        return thickest.thickness > 0 ? Optional.of(thickest.caution()) : Optional.empty();
    }

    /** Thickness of the thickest laminate of a stage, cores left out (m). */
    static double thickness(StageWork work) {
        return work.kind().isCoat() ? 0 : thickest(work).thickness;
    }

    private static StageHeat thickest(StageWork work) {
        StageHeat thickest = new StageHeat();
        for (StageGroup group : work.groups()) {
            thickest = thickest(group, thickest);
        }
        return thickest;
    }

    private static StageHeat thickest(StageGroup group, StageHeat known) {
        StageHeat most = known;
        StageHeat open = new StageHeat();
        for (WorkItem item : group.items()) {
            LaidLayer laid = item.laid().orElseThrow();
            open = laid.layer() instanceof CoreLayer ? new StageHeat() : open.plus(laid);
            most = open.thickness > most.thickness ? open : most;
        }
        return most;
    }

    private StageHeat plus(LaidLayer laid) {
        StageHeat sum = new StageHeat();
        sum.thickness = thickness + laid.thickness().planned();
        sum.mass = mass + laid.massPerArea().planned();
        sum.fibre = fibre + laid.fibreMass();
        return sum;
    }

    private Caution caution() {
        Exotherm heat = Exotherm.of(WetStage.onMould(thickness, mass / thickness, fibre / mass));
        return new Caution(
                Caution.Kind.SCHEDULE,
                String.format(
                        Locale.ROOT,
                        "%.1f mm at once may warm by up to %.0f K%s, if it gives off its heat as fast as neat resin and the mould"
                                + " takes up none; in no case by more than %.0f K.",
                        thickness * 1000,
                        heat.lumpedRise(),
                        heat.isEven() ? "" : ", its middle by more",
                        heat.adiabaticRise()),
                "lumped and adiabatic rise of polyester and vinylester on a mould, by figures from memory and Lucas et al.,"
                        + " Polymer 34 (1993) 3216",
                Status.MEMORY);
    }
}
