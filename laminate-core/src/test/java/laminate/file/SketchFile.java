package laminate.file;

import static laminate.file.Reading.byKey;
import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Reading.shortOrFull;
import static laminate.file.Scalars.count;
import static laminate.file.Scalars.flag;
import static laminate.file.Scalars.id;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;
import static laminate.file.Scalars.word;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.unit.Dimension;

/** A small part file with every kind of field, read the way the real readers read theirs. */
final class SketchFile {

    record Sketch(
            String part,
            int count,
            Optional<String> process,
            Optional<Agent> catalyst,
            Map<String, List<Layer>> schedules,
            List<Zone> zones) {}

    record Agent(String id, Optional<Double> amount) {}

    record Trim(double edge, double width) {}

    record Zone(String name, double area, boolean mirror, Optional<Trim> trim, List<Layer> layers) {
        Zone {
            if (layers.size() > 8) {
                throw new IllegalArgumentException(layers.size() + " layers; 8 at most in this sketch");
            }
        }
    }

    sealed interface Layer {}

    record Fabric(String id, double angle, int times, Optional<Double> fibre) implements Layer {}

    record Core(String id, double thickness) implements Layer {}

    private static final Reading<Agent> AGENT =
            shortOrFull(id().map(id -> new Agent(id, Optional.empty())), mapping(Keys.AGENT, SketchFile::agent));

    private static final Reading<Layer> LAYER = shortOrFull(
            id().map(id -> new Fabric(id, 0, 1, Optional.empty())),
            byKey(
                    "layer",
                    List.of(
                            choice("reinforcement", mapping(Keys.REINFORCEMENT_LAYER, SketchFile::fabric)),
                            choice("core", mapping(Keys.CORE_LAYER, SketchFile::core)))));

    private static final Reading<Zone> ZONE = mapping(Keys.ZONE, SketchFile::zone);

    private static final Reading<Sketch> SKETCH = mapping(Keys.PART, SketchFile::sketch);

    private SketchFile() {}

    static Sketch read(Path path) {
        Complaints complaints = new Complaints();
        return complaints.settle(
                YamlTree.read(path, Keys.PART, complaints).flatMap(root -> SKETCH.read(root, complaints)));
    }

    static Sketch read(String name, String text) {
        Complaints complaints = new Complaints();
        return complaints.settle(
                YamlTree.read(name, text, Keys.PART, complaints).flatMap(root -> SKETCH.read(root, complaints)));
    }

    private static Sketch sketch(Fields in) {
        var part = in.required("part", text());
        var count = in.orElse("count", count(), 1);
        var process = in.optional("process", word(List.of("hand lay-up", "vacuum bag", "infusion")));
        var catalyst = in.optional("catalyst", AGENT);
        var schedules = in.orElse("schedules", mapOf(id(), listOf(LAYER)), Map.of());
        var zones = in.required("zones", listOf(ZONE));
        in.requireSound();
        return new Sketch(part.get(), count.get(), process.get(), catalyst.get(), schedules.get(), zones.get());
    }

    private static Agent agent(Fields in) {
        var id = in.required("id", id());
        var amount = in.optional("amount", quantity(Dimension.FRACTION, Bounds.between(0, 1, "0 % to 100 %")));
        in.requireSound();
        return new Agent(id.get(), amount.get());
    }

    private static Zone zone(Fields in) {
        var name = in.required("name", text());
        var area = in.required("area", quantity(Dimension.AREA, Bounds.POSITIVE));
        var mirror = in.orElse("mirror", flag(), false);
        var trim = in.optional("trim", mapping(Keys.TRIM, SketchFile::trim));
        var layers = in.required("layers", listOf(LAYER));
        in.requireSound();
        return new Zone(name.get(), area.get(), mirror.get(), trim.get(), layers.get());
    }

    private static Trim trim(Fields in) {
        var edge = in.required("edge", quantity(Dimension.LENGTH, Bounds.POSITIVE));
        var width = in.required("width", quantity(Dimension.LENGTH, Bounds.NOT_NEGATIVE));
        in.requireSound();
        if (width.get() > edge.get()) {
            throw in.refusal("width", "the trim is wider than its edge is long; a narrower trim is wanted");
        }
        return new Trim(edge.get(), width.get());
    }

    private static Layer fabric(Fields in) {
        var id = in.required("reinforcement", id());
        var angle = in.orElse("angle", number(), 0.0);
        var times = in.orElse("times", count(), 1);
        var fibre = in.atMostOne(List.of(
                choice("fibre-mass-fraction", quantity(Dimension.FRACTION)),
                choice("fibre-volume-fraction", quantity(Dimension.FRACTION)),
                choice("thickness", quantity(Dimension.LENGTH))));
        in.requireSound();
        return new Fabric(id.get(), angle.get(), times.get(), fibre.get());
    }

    private static Layer core(Fields in) {
        var id = in.required("core", id());
        var thickness = in.required("thickness", quantity(Dimension.LENGTH, Bounds.POSITIVE));
        in.requireSound();
        return new Core(id.get(), thickness.get());
    }
}
