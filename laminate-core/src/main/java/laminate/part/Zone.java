package laminate.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import laminate.part.infusion.InfusionPlan;
import laminate.process.ContentSet;

/**
 * A zone of a part: an area with one schedule.
 *
 * @param name the name
 * @param area area of the finished part (m²), of one such zone
 * @param count how many such zones the part has
 * @param coatings coatings in the order applied: those at the mould face before the layers, the others after them
 * @param layers layers in the order laid, mould face first
 * @param trim the margin trimmed off, empty for none
 * @param contents the set of nominal fibre contents
 * @param measured what was measured on this zone
 * @param loadCases what its laminate has to carry, each by itself
 * @param limits what is asked of it, and of its panels and beams where they ask nothing themselves
 * @param infusion how it is infused by itself, empty where it is not, or only with the part as a whole
 * @param outline its outline, empty where none is stated
 */
public record Zone(
        String name,
        double area,
        int count,
        List<Coating> coatings,
        List<Layer> layers,
        Optional<Trim> trim,
        ContentSet contents,
        Measured measured,
        List<LoadCase> loadCases,
        Limits limits,
        Optional<InfusionPlan> infusion,
        Optional<Outline> outline) {

    /**
     * Checks the zone.
     *
     * @throws IllegalArgumentException if the name is blank, the area not above zero, the count below one, the zone
     *     without layers, two load cases have one name, or the outline has another area than the zone
     */
    public Zone {
        Objects.requireNonNull(trim, "trim");
        Objects.requireNonNull(contents, "contents");
        Objects.requireNonNull(measured, "measured");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(infusion, "infusion");
        Objects.requireNonNull(outline, "outline");
        loadCases = List.copyOf(loadCases);
        coatings = List.copyOf(coatings);
        layers = List.copyOf(layers);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a zone needs a name");
        }
        if (!(area > 0) || !Double.isFinite(area)) {
            throw new IllegalArgumentException(name + ": area must be above zero, not " + area + " m²");
        }
        if (count < 1) {
            throw new IllegalArgumentException(name + ": count must be one or more, not " + count);
        }
        if (layers.isEmpty()) {
            throw new IllegalArgumentException(name + " has no layers");
        }
        Names.checkDistinct("load cases", names(loadCases));
        if (outline.isPresent() && !outline.get().isOf(area)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s: its area is %.4g m², its outline has length times width times shape factor = %.4g m²",
                    name,
                    area,
                    outline.get().area()));
        }
    }

    /**
     * A zone without load cases, limits and a plan of its infusion.
     *
     * @param name the name
     * @param area area of the finished part (m²), of one such zone
     * @param count how many such zones the part has
     * @param coatings coatings in the order applied
     * @param layers layers in the order laid, mould face first
     * @param trim the margin trimmed off, empty for none
     * @param contents the set of nominal fibre contents
     * @param measured what was measured on this zone
     * @throws IllegalArgumentException if the zone cannot be
     */
    public Zone(
            String name,
            double area,
            int count,
            List<Coating> coatings,
            List<Layer> layers,
            Optional<Trim> trim,
            ContentSet contents,
            Measured measured) {
        this(
                name,
                area,
                count,
                coatings,
                layers,
                trim,
                contents,
                measured,
                List.of(),
                Limits.NONE,
                Optional.empty(),
                Optional.empty());
    }

    /**
     * A zone without coatings or trim, once in the part, at the trade's fibre contents.
     *
     * @param name the name
     * @param area area of the finished part (m²)
     * @param layers layers in the order laid
     * @return the zone
     */
    public static Zone of(String name, double area, List<Layer> layers) {
        return new Zone(name, area, 1, List.of(), layers, Optional.empty(), ContentSet.TRADE, Measured.NOTHING);
    }

    /**
     * This zone at another set of nominal fibre contents.
     *
     * @param set the set
     * @return the zone
     */
    public Zone with(ContentSet set) {
        return new Zone(name, area, count, coatings, layers, trim, set, measured, loadCases, limits, infusion, outline);
    }

    /**
     * This zone with what its laminate has to carry.
     *
     * @param cases the load cases
     * @return the zone
     * @throws IllegalArgumentException if two load cases have one name
     */
    public Zone withLoadCases(List<LoadCase> cases) {
        return new Zone(
                name, area, count, coatings, layers, trim, contents, measured, cases, limits, infusion, outline);
    }

    /**
     * This zone with what is asked of it.
     *
     * @param asked the limits
     * @return the zone
     */
    public Zone withLimits(Limits asked) {
        return new Zone(
                name, area, count, coatings, layers, trim, contents, measured, loadCases, asked, infusion, outline);
    }

    /**
     * This zone with how it is infused by itself.
     *
     * @param plan the plan
     * @return the zone
     */
    public Zone withInfusion(InfusionPlan plan) {
        return new Zone(
                name,
                area,
                count,
                coatings,
                layers,
                trim,
                contents,
                measured,
                loadCases,
                limits,
                Optional.of(plan),
                outline);
    }

    /**
     * This zone with other layers.
     *
     * @param laid the layers in the order laid
     * @return the zone
     * @throws IllegalArgumentException if there are none
     */
    public Zone withLayers(List<Layer> laid) {
        return new Zone(
                name, area, count, coatings, laid, trim, contents, measured, loadCases, limits, infusion, outline);
    }

    /**
     * This zone with its outline.
     *
     * @param drawn the outline
     * @return the zone
     * @throws IllegalArgumentException if the outline has another area than the zone
     */
    public Zone withOutline(Outline drawn) {
        return new Zone(
                name,
                area,
                count,
                coatings,
                layers,
                trim,
                contents,
                measured,
                loadCases,
                limits,
                infusion,
                Optional.of(drawn));
    }

    private static List<String> names(List<LoadCase> cases) {
        List<String> names = new ArrayList<>();
        for (LoadCase load : cases) {
            names.add(load.name());
        }
        return names;
    }

    /**
     * Area of the margin that is trimmed off one such zone.
     *
     * @return area (m²), 0 without a trim
     */
    public double marginArea() {
        return trim.isPresent() ? trim.get().area() : 0;
    }

    /**
     * Area of all such zones of one moulding.
     *
     * @return area times count (m²)
     */
    public double totalArea() {
        return area * count;
    }
}
