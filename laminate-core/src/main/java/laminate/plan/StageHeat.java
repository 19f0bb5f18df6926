package laminate.plan;

import java.util.Locale;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.LaidLayer;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.CoreLayer;
import laminate.process.cure.Exotherm;
import laminate.process.cure.WetStage;

/**
 * How warm the thickest laminate of a stage may get, where its resin is styrenic and so its heat of cure is known. A core
 * keeps the heat of what is on either side of it apart.
 *
 * <p>Told only of a laminate that comes near what its resin bears at once, or of whose resin that is not known: both rises
 * are ceilings, and a thinner laminate stays so far below them that to print them would mislead.
 */
final class StageHeat {
    /** From this share of what the resin bears at once a laminate is near it; common practice, no source. */
    private static final double NEAR = 0.8;

    private double thickness;
    private double mass;
    private double fibre;

    private StageHeat() {}

    static Optional<Caution> of(StageWork work) {
        boolean heats = work.kind() == Stage.Kind.LAMINATE || work.kind() == Stage.Kind.INFUSION;
        Resin resin = work.first().first().use().resin();
        if (!heats || !resin.family().isStyrenic()) {
            return Optional.empty();
        }
        StageHeat thickest = thickest(work);
        boolean near = thickest.thickness >= NEAR * resin.stageThickness().orElse(0);
        return near && thickest.thickness > 0 ? Optional.of(thickest.caution(resin)) : Optional.empty();
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

    private Caution caution(Resin resin) {
        Exotherm heat = Exotherm.of(WetStage.onMould(thickness, mass / thickness, fibre / mass));
        return new Caution(
                Caution.Kind.SCHEDULE,
                String.format(
                        Locale.ROOT,
                        "%.1f mm at once, %s: its own heat warms it by no more than %.0f K, were none of it lost; by up to %.0f"
                                + " K%s, if it comes as fast as in neat resin and the mould takes up none. Ceilings, not a"
                                + " forecast.",
                        thickness * 1000,
                        bearable(resin),
                        heat.adiabaticRise(),
                        heat.lumpedRise(),
                        heat.isEven() ? "" : ", its middle by more"),
                "lumped and adiabatic rise of polyester and vinylester on a mould, by figures from memory and Lucas et al.,"
                        + " Polymer 34 (1993) 3216",
                Status.MEMORY);
    }

    private static String bearable(Resin resin) {
        return resin.stageThickness().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "where %s bears %.1f mm",
                        resin.id(),
                        resin.stageThickness().getAsDouble() * 1000)
                : "and how much " + resin.id() + " bears at once is not known";
    }
}
