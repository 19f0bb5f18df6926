package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import laminate.material.Fibre;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Layer;
import laminate.process.Process;
import laminate.process.Workshop;

/** Cautions about the work on a whole part: temperature, stages, infusion, what must not be brought together. */
public final class WorkCautions {
    /**
     * The viscosity above which a resin does not fill a bag (Pa·s): 100 to 400 mPa·s by Plymouth University, MATS347, resin
     * viscosities for vacuum infusion.
     */
    public static final double THICKEST_TO_INFUSE = 0.4;

    private static final double COLDEST = 273.15 + 15;

    private WorkCautions() {}

    static List<Caution> of(PartEstimate estimate, Workshop workshop) {
        List<Caution> cautions = new ArrayList<>(ofMixing(estimate, workshop));
        checkStages(estimate, cautions);
        checkViscosity(estimate, cautions);
        checkFlax(estimate, cautions);
        return cautions;
    }

    /**
     * What to mind where the resins of a part are mixed together in a workshop.
     *
     * @param estimate the part
     * @param workshop the workshop
     * @return cautions about several peroxides and about cold
     */
    public static List<Caution> ofMixing(PartEstimate estimate, Workshop workshop) {
        List<Caution> cautions = new ArrayList<>();
        checkPeroxides(estimate, cautions);
        checkTemperature(estimate, workshop, cautions);
        return cautions;
    }

    private static void checkPeroxides(PartEstimate estimate, List<Caution> cautions) {
        Set<String> peroxides = new TreeSet<>();
        for (ResinQuantity resin : estimate.quantities().resins()) {
            if (!resin.dose().agent().isHardener()) {
                peroxides.add(resin.dose().agent().id());
            }
        }
        if (peroxides.size() > 1) {
            cautions.add(new Caution(
                    Caution.Kind.SCHEDULE,
                    "This part takes " + String.join(" and ", peroxides)
                            + ": never bring two peroxides together, in a pot, a dispenser or the waste.",
                    "SPI AS-109 and trade safety sheets",
                    Status.PRINTED));
        }
    }

    private static void checkTemperature(PartEstimate estimate, Workshop workshop, List<Caution> cautions) {
        if (isStyrenic(estimate) && workshop.temperature().orElse(COLDEST) < COLDEST) {
            cautions.add(new Caution(
                    Caution.Kind.SCHEDULE,
                    String.format(
                            Locale.ROOT,
                            "The workshop is at %.0f °C: polyester and vinylester do not cure through below 15 °C, whatever"
                                    + " the dose. Warm it to 18 to 22 °C.",
                            workshop.temperature().orElseThrow() - 273.15),
                    "Rules for Classification of FRP Ships 2014",
                    Status.PRINTED));
        }
    }

    private static boolean isStyrenic(PartEstimate estimate) {
        for (ResinQuantity resin : estimate.quantities().resins()) {
            if (resin.resin().family().isStyrenic()) {
                return true;
            }
        }
        return false;
    }

    private static void checkStages(PartEstimate estimate, List<Caution> cautions) {
        if (isStaged(estimate)) {
            cautions.add(new Caution(
                    Caution.Kind.SCHEDULE,
                    "Between stages: lay the next within 24 h. A surface that is waxed, or overdue (over 5 days for an unwaxed"
                            + " polyester, about a day for epoxy), is ground and washed first, unless it was under peel ply.",
                    "Rules for Classification of FRP Ships 2014 (5 days, wax, peel ply); 24 h from memory",
                    Status.PRINTED));
        }
    }

    private static boolean isStaged(PartEstimate estimate) {
        for (ZoneEstimate zone : estimate.zones()) {
            List<Layer> layers = zone.zone().layers();
            for (Layer layer : layers) {
                if (!layer.stage().equals(layers.get(0).stage())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void checkViscosity(PartEstimate estimate, List<Caution> cautions) {
        Set<String> thick = new TreeSet<>();
        for (ResinQuantity mixed : estimate.quantities().resins()) {
            Resin resin = mixed.resin();
            if (mixed.use().process() == Process.INFUSION && resin.use().isLaminating() && tooThick(resin)) {
                thick.add(resin.id());
            }
        }
        for (String id : thick) {
            cautions.add(new Caution(
                    Caution.Kind.SCHEDULE,
                    id + " is thicker than the 100 to 400 mPa·s that fills a bag; take an infusion resin.",
                    "Plymouth University, MATS347, resin viscosities for vacuum infusion",
                    Status.PRINTED));
        }
    }

    private static boolean tooThick(Resin resin) {
        return resin.figures().valueOf(Property.VISCOSITY).orElse(0) > THICKEST_TO_INFUSE;
    }

    private static void checkFlax(PartEstimate estimate, List<Caution> cautions) {
        if (Cautions.holds(estimate, Fibre.Type.NATURAL)) {
            cautions.add(new Caution(
                    Caution.Kind.SCHEDULE,
                    "Flax holds 6 to 10 % water: dry it before it is laid. Resin enters the fibre, so the volume fraction from"
                            + " masses reads about a quarter below that seen under a microscope.",
                    "J. Compos. Sci. 9 (2025) 103 for the volume fraction; moisture from memory",
                    Status.PRINTED));
        }
    }
}
