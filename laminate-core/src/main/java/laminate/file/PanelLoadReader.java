package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.flag;
import static laminate.file.Scalars.oneOf;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.part.Water;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelLoad.EdgeForces;
import laminate.theory.panel.PanelLoad.Head;
import laminate.theory.panel.PanelLoad.Patch;
import laminate.theory.panel.PanelLoad.Uniform;
import laminate.theory.panel.PanelLoad.Upright;
import laminate.unit.Dimension;

/** Reads what acts on a panel: pressure or a head of water, a patch load, edge loads. */
final class PanelLoadReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    private static final Reading<Double> COORDINATE = quantity(Dimension.LENGTH, Bounds.NOT_NEGATIVE);
    private static final Reading<Double> EDGE_FORCE = quantity(Dimension.FORCE_PER_LENGTH);
    private static final List<String> SIDES = List.of("length", "width");
    private static final List<String> WITH_HEAD = List.of("water", "density", "upright", "flat");

    private PanelLoadReader() {}

    /** Loads that want the size of the panel yet. */
    record Loads(Optional<PanelLoad> pressure, Optional<PatchLoad> patch, Optional<EdgeForces> edges) {

        /** The loads on a panel of a length and a width (m). */
        List<PanelLoad> on(double length, double width) {
            List<PanelLoad> all = new ArrayList<>();
            if (pressure.isPresent()) {
                all.add(pressure.get());
            }
            if (patch.isPresent()) {
                all.add(patch.get().on(length, width));
            }
            if (edges.isPresent()) {
                all.add(edges.get());
            }
            if (all.isEmpty()) {
                throw new IllegalArgumentException(
                        "nothing acts on this panel; pressure, head, patch or edge-loads is wanted");
            }
            return all;
        }
    }

    /** A patch whose centre is that of the panel unless it is stated. */
    private record PatchLoad(double alongX, double alongY, Optional<Double> x, Optional<Double> y, double force) {

        Patch on(double length, double width) {
            return new Patch(x.orElse(length / 2), y.orElse(width / 2), alongX, alongY, force);
        }
    }

    static Supplier<Loads> loads(Fields in) {
        var pressure = pressure(in);
        var patch = in.optional("patch", mapping(Keys.PATCH, PanelLoadReader::patch));
        var edges = in.optional("edge-loads", mapping(Keys.EDGE_LOADS, PanelLoadReader::edgeForces));
        return () -> new Loads(pressure.get(), patch.get(), edges.get());
    }

    private static Supplier<Optional<PanelLoad>> pressure(Fields in) {
        var load = in.atMostOne(List.of(choice("pressure", quantity(Dimension.PRESSURE)), choice("head", LENGTH)));
        var density = in.atMostOne(List.of(
                choice("water", oneOf(Water::word, Water.values()).map(Water::density)),
                choice("density", quantity(Dimension.DENSITY, Bounds.POSITIVE))));
        var side = in.optional("upright", word(SIDES));
        var flat = in.orElse("flat", flag(), false);
        return () -> {
            if (in.stands("head")) {
                Upright upright = upright(in, side.get(), flat.get());
                return Optional.of(
                        new Head(load.get().orElseThrow(), density.get().orElse(Water.FRESH.density()), upright));
            }
            in.refuseAnyOf(WITH_HEAD, "this goes with a head of water; add head:, or take it out");
            return load.get().isPresent() ? Optional.of(new Uniform(load.get().get())) : Optional.empty();
        };
    }

    private static Upright upright(Fields in, Optional<String> side, boolean flat) {
        if (!flat) {
            return side.isPresent() && side.get().equals("length") ? Upright.LENGTH : Upright.WIDTH;
        }
        if (side.isPresent()) {
            throw in.refusal("upright", "a panel that lies flat has no upright side; take one of the two out");
        }
        return Upright.NONE;
    }

    private static PatchLoad patch(Fields in) {
        var alongX = in.required("length", LENGTH);
        var alongY = in.required("width", LENGTH);
        var x = in.optional("x", COORDINATE);
        var y = in.optional("y", COORDINATE);
        var load = in.exactlyOne(
                List.of(choice("force", quantity(Dimension.FORCE)), choice("pressure", quantity(Dimension.PRESSURE))));
        in.requireSound();
        double area = in.stands("force") ? 1 : alongX.get() * alongY.get();
        return new PatchLoad(alongX.get(), alongY.get(), x.get(), y.get(), load.get() * area);
    }

    private static EdgeForces edgeForces(Fields in) {
        var alongX = in.optional("Nx", EDGE_FORCE);
        var alongY = in.optional("Ny", EDGE_FORCE);
        var shear = in.optional("Nxy", EDGE_FORCE);
        in.requireSound();
        if (alongX.get().isEmpty() && alongY.get().isEmpty() && shear.get().isEmpty()) {
            throw new IllegalArgumentException("no load stands here; one of Nx, Ny, Nxy or more are wanted");
        }
        return new EdgeForces(
                alongX.get().orElse(0.0), alongY.get().orElse(0.0), shear.get().orElse(0.0));
    }
}
