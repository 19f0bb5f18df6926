package laminate.check;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;

/**
 * All that a check says of a part.
 *
 * <pre>{@code
 * PartCheck check = PartCheck.of(estimate, CheckOptions.USUAL);
 * boolean good = check.limitsMet();
 * }</pre>
 *
 * @param estimate the part as it lies
 * @param options what the check goes by
 * @param zones every zone, in the order of the part; those without load cases and limits too
 * @param panels every panel, in the order of the part
 * @param beams every beam, in the order of the part
 * @param ownLimits the limits of the part as a whole, worst first
 * @param cautions what to mind
 */
public record PartCheck(
        PartEstimate estimate,
        CheckOptions options,
        List<ZoneCheck> zones,
        List<PanelCheck> panels,
        List<BeamCheck> beams,
        List<LimitCheck> ownLimits,
        List<Caution> cautions) {
    /**
     * Keeps copies.
     *
     * @param estimate the part as it lies
     * @param options what the check goes by
     * @param zones every zone
     * @param panels every panel
     * @param beams every beam
     * @param ownLimits the limits of the part as a whole
     * @param cautions what to mind
     */
    public PartCheck {
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(options, "options");
        zones = List.copyOf(zones);
        panels = List.copyOf(panels);
        beams = List.copyOf(beams);
        ownLimits = List.copyOf(ownLimits);
        cautions = List.copyOf(cautions);
    }

    /**
     * Checks a part.
     *
     * @param estimate the part as it lies
     * @param options what to go by
     * @return the check
     * @throws IllegalArgumentException if a load cannot be reckoned, saying where and why
     */
    public static PartCheck of(PartEstimate estimate, CheckOptions options) {
        return new Checker(estimate, options).check();
    }

    /**
     * Whether the part has anything to check: a load case, a panel, a beam or a limit.
     *
     * @return false for a part that asks nothing
     */
    public boolean isEmpty() {
        return panels.isEmpty()
                && beams.isEmpty()
                && limits().isEmpty()
                && zones.stream().allMatch(zone -> zone.loadCases().isEmpty());
    }

    /**
     * All limits, of the part, its zones, load cases, panels and beams.
     *
     * @return worst first
     */
    public List<LimitCheck> limits() {
        Stream<LimitCheck> ofZones = zones.stream()
                .flatMap(zone -> Stream.concat(
                        zone.limits().stream(),
                        zone.loadCases().stream().flatMap(loadCase -> loadCase.limits().stream())));
        Stream<LimitCheck> ofPanels = panels.stream().flatMap(panel -> panel.limits().stream());
        Stream<LimitCheck> ofBeams = beams.stream().flatMap(beam -> beam.limits().stream());
        return Stream.of(ownLimits.stream(), ofZones, ofPanels, ofBeams)
                .flatMap(limits -> limits)
                .sorted(LimitCheck.WORST_FIRST)
                .toList();
    }

    /**
     * Whether every limit is met.
     *
     * @return false if one is missed or could not be judged; true where none is set
     */
    public boolean limitsMet() {
        return limits().stream().allMatch(LimitCheck::isMet);
    }
}
