package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.name;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.quantity;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import laminate.part.Limits;
import laminate.part.PanelPlan;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.unit.Dimension;

/** Reads the panels of a part. */
final class PanelReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);

    private final ZoneNames zones;
    private final Set<String> taken = new HashSet<>();

    PanelReader(ZoneNames zones) {
        this.zones = zones;
    }

    Reading<List<PanelPlan>> panels() {
        return listOf(mapping(Keys.PANEL, this::panel));
    }

    private PanelPlan panel(Fields in) {
        var name = in.required("name", name(taken));
        var zone = in.required("zone", zones.known());
        var length = in.required("length", LENGTH);
        var width = in.required("width", LENGTH);
        var edges = in.required("edges", edges());
        var inPlane = in.orElse("in-plane-edges", oneOf(PanelReader::word, InPlane.values()), InPlane.FREE_TO_PULL_IN);
        var loads = PanelLoadReader.loads(in);
        var limits = in.orElse("limits", later(() -> LimitsReader.limits()), Limits.NONE);
        in.requireSound();
        return new PanelPlan(
                name.get(),
                zone.get(),
                length.get(),
                width.get(),
                edges.get(),
                inPlane.get(),
                loads.get().on(length.get(), width.get()),
                limits.get());
    }

    /** One word for all edges, or a word for each. */
    private static Reading<Edges> edges() {
        Reading<Edge> edge = oneOf(PanelReader::word, Edge.values());
        return Reading.shortOrFull(
                edge.map(all -> held(List.of(all, all, all, all))), listOf(edge).map(PanelReader::held));
    }

    private static Edges held(List<Edge> edges) {
        if (edges.size() != 4) {
            throw new IllegalArgumentException(edges.size() + (edges.size() == 1 ? " edge stands" : " edges stand")
                    + " here; one word for all or a list of four is accepted: x = 0, x = length, y = 0, y = width");
        }
        try {
            return new Edges(edges.get(0), edges.get(1), edges.get(2), edges.get(3));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "a panel held like this can move as a whole; one clamped edge or two supported ones are wanted", e);
        }
    }

    static String word(Edge edge) {
        return edge.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    static String word(InPlane held) {
        return held == InPlane.HELD ? "held" : "free";
    }
}
