package laminate.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import laminate.part.infusion.InfusionPlan;
import laminate.process.Process;

/**
 * A part to be moulded.
 *
 * @param name the name
 * @param count how many mouldings
 * @param zones the zones, which do not overlap
 * @param items bought-in items of each moulding
 * @param measured what was weighed and measured on a finished moulding
 * @param panels panels of its zones, to be checked under load
 * @param beams beams and strips of its zones, to be checked under load
 * @param limits what is asked of it, and of its zones, panels and beams where nothing nearer is asked
 * @param infusion how it is infused as a whole, empty where it is not, or only zone by zone
 * @param tooling moulds and set-up, for each process at most once
 */
public record Part(
        String name,
        int count,
        List<Zone> zones,
        List<Item> items,
        Measured measured,
        List<PanelPlan> panels,
        List<BeamPlan> beams,
        Limits limits,
        Optional<InfusionPlan> infusion,
        List<Tooling> tooling) {

    /**
     * Checks the part.
     *
     * @throws IllegalArgumentException if the name is blank, the count below one, the part without zones, a panel or
     *     beam of no zone or of one of several that have one name, if two panels or two beams have one name, or if tooling
     *     is stated twice for one process
     */
    public Part {
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(infusion, "infusion");
        tooling = List.copyOf(tooling);
        zones = List.copyOf(zones);
        items = List.copyOf(items);
        panels = List.copyOf(panels);
        beams = List.copyOf(beams);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a part needs a name");
        }
        if (count < 1) {
            throw new IllegalArgumentException("count must be one or more, not " + count);
        }
        if (zones.isEmpty()) {
            throw new IllegalArgumentException(name + " has no zones");
        }
        checkPanels(panels, zones);
        checkBeams(beams, zones);
        checkTooling(tooling);
    }

    /**
     * A part without panels, beams, limits, a plan of its infusion and tooling.
     *
     * @param name the name
     * @param count how many mouldings
     * @param zones the zones, which do not overlap
     * @param items bought-in items of each moulding
     * @param measured what was weighed and measured on a finished moulding
     * @throws IllegalArgumentException if the part cannot be
     */
    public Part(String name, int count, List<Zone> zones, List<Item> items, Measured measured) {
        this(name, count, zones, items, measured, List.of(), List.of(), Limits.NONE, Optional.empty(), List.of());
    }

    /**
     * One moulding without items.
     *
     * @param name the name
     * @param zones the zones
     * @return the part
     */
    public static Part of(String name, List<Zone> zones) {
        return new Part(name, 1, zones, List.of(), Measured.NOTHING);
    }

    /**
     * This part in another number.
     *
     * @param mouldings how many mouldings
     * @return the part
     * @throws IllegalArgumentException if the number is below one
     */
    public Part withCount(int mouldings) {
        return new Part(name, mouldings, zones, items, measured, panels, beams, limits, infusion, tooling);
    }

    /**
     * This part in the number that so many sets hold.
     *
     * @param sets how many sets, each of this part's count
     * @return the part
     * @throws IllegalArgumentException if the number is below one, or larger than can be counted
     */
    public Part inSets(int sets) {
        long mouldings = (long) count * sets;
        if (mouldings > Integer.MAX_VALUE) {
            throw new IllegalArgumentException(
                    name + ": " + sets + " sets of " + count + " are more than can be counted");
        }
        return withCount((int) mouldings);
    }

    /**
     * This part with panels to be checked.
     *
     * @param planned the panels
     * @return the part
     * @throws IllegalArgumentException if one is of no zone of the part, or two have one name
     */
    public Part withPanels(List<PanelPlan> planned) {
        return new Part(name, count, zones, items, measured, planned, beams, limits, infusion, tooling);
    }

    /**
     * This part with beams to be checked.
     *
     * @param planned the beams
     * @return the part
     * @throws IllegalArgumentException if one is of no zone of the part, or two have one name
     */
    public Part withBeams(List<BeamPlan> planned) {
        return new Part(name, count, zones, items, measured, panels, planned, limits, infusion, tooling);
    }

    /**
     * This part with what is asked of it.
     *
     * @param asked the limits
     * @return the part
     */
    public Part withLimits(Limits asked) {
        return new Part(name, count, zones, items, measured, panels, beams, asked, infusion, tooling);
    }

    /**
     * This part with how it is infused as a whole.
     *
     * @param plan the plan
     * @return the part
     */
    public Part withInfusion(InfusionPlan plan) {
        return new Part(name, count, zones, items, measured, panels, beams, limits, Optional.of(plan), tooling);
    }

    /**
     * This part with its moulds and set-up.
     *
     * @param stated one for each process, or one for any
     * @return the part
     * @throws IllegalArgumentException if one process has two
     */
    public Part withTooling(List<Tooling> stated) {
        return new Part(name, count, zones, items, measured, panels, beams, limits, infusion, stated);
    }

    /**
     * This part with other zones.
     *
     * @param others the zones, under the names that its panels and beams go by
     * @return the part
     * @throws IllegalArgumentException if there are none, or a panel or beam is of none of them
     */
    public Part withZones(List<Zone> others) {
        return new Part(name, count, others, items, measured, panels, beams, limits, infusion, tooling);
    }

    /**
     * The moulds and set-up for a process.
     *
     * @param process the process
     * @return what is stated for it, else for any process, else {@link Tooling#NONE}
     */
    public Tooling toolingFor(Process process) {
        return tooling.stream()
                .filter(stated -> stated.process().equals(Optional.of(process)))
                .findFirst()
                .orElseGet(this::toolingForAny);
    }

    /**
     * The moulds and set-up for the process that asks most of a mould, of those that its layers are laid by: infusion before
     * vacuum bag before hand lay-up. A skin coat by hand before an infusion lies in the mould for infusion.
     *
     * @return what is stated for it, else for any process, else {@link Tooling#NONE}
     */
    public Tooling toolingInUse() {
        return Stream.of(Process.INFUSION, Process.VACUUM_BAG, Process.HAND_LAY_UP)
                .filter(process -> zones.stream()
                        .flatMap(zone -> zone.layers().stream())
                        .anyMatch(layer -> layer.isLaidBy(process)))
                .findFirst()
                .map(this::toolingFor)
                .orElseGet(this::toolingForAny);
    }

    private Tooling toolingForAny() {
        return tooling.stream()
                .filter(stated -> stated.process().isEmpty())
                .findFirst()
                .orElse(Tooling.NONE);
    }

    /**
     * A zone by its name.
     *
     * @param wanted the name
     * @return the zone
     * @throws IllegalArgumentException if none or more than one is called so
     */
    public Zone zone(String wanted) {
        return theZone(zones, wanted);
    }

    /**
     * What is asked of a zone by itself or by the part.
     *
     * @param zone a zone of this part
     * @return the limits that hold, the nearest of each
     */
    public Limits limitsOf(Zone zone) {
        return zone.limits().within(limits);
    }

    /**
     * What is asked of a panel by itself, its zone or the part.
     *
     * @param panel a panel of this part
     * @return the limits that hold, the nearest of each
     */
    public Limits limitsOf(PanelPlan panel) {
        return panel.limits().within(limitsOf(zone(panel.zone())));
    }

    /**
     * What is asked of a beam by itself, its zone or the part.
     *
     * @param beam a beam of this part
     * @return the limits that hold, the nearest of each
     */
    public Limits limitsOf(BeamPlan beam) {
        return beam.limits().within(limitsOf(zone(beam.zone())));
    }

    private static void checkPanels(List<PanelPlan> panels, List<Zone> zones) {
        List<String> names = new ArrayList<>();
        for (PanelPlan panel : panels) {
            names.add(panel.name());
            theZone(zones, panel.zone());
        }
        Names.checkDistinct("panels", names);
    }

    private static void checkBeams(List<BeamPlan> beams, List<Zone> zones) {
        List<String> names = new ArrayList<>();
        for (BeamPlan beam : beams) {
            names.add(beam.name());
            theZone(zones, beam.zone());
        }
        Names.checkDistinct("beams", names);
    }

    private static void checkTooling(List<Tooling> tooling) {
        Set<Optional<Process>> taken = new HashSet<>();
        for (Tooling stated : tooling) {
            if (!taken.add(stated.process())) {
                throw new IllegalArgumentException("tooling for "
                        + stated.process().map(Process::word).orElse("any process") + " is stated twice");
            }
        }
    }

    private static Zone theZone(List<Zone> zones, String wanted) {
        List<Zone> found = new ArrayList<>();
        for (Zone zone : zones) {
            if (zone.name().equals(wanted)) {
                found.add(zone);
            }
        }
        if (found.size() != 1) {
            throw new IllegalArgumentException(
                    found.isEmpty()
                            ? "no zone is called " + wanted + "; accepted: "
                                    + String.join(
                                            ", ", zones.stream().map(Zone::name).toList())
                            : "more than one zone is called " + wanted);
        }
        return found.get(0);
    }
}
