package laminate.file;

import static laminate.file.Reading.byKey;
import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Scalars.count;
import static laminate.file.Scalars.flag;
import static laminate.file.Scalars.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.part.BulkerLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.FibreBed;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.unit.Dimension;

/** Reads layers in all the ways they are written, and lays groups, stages and schedules out into single layers. */
final class LayerReader {

    /** Layers of one zone; the thickest mouldings have some hundreds. */
    static final int MOST_IN_A_ZONE = 2000;

    static final Reading<Double> ANGLE =
            Scalars.quantity(Dimension.ANGLE, Bounds.between(-360, 360, "-360 to 360 degrees"));

    private final Stock stock;
    private final Schedules schedules;
    private final LayUps layUps;
    private final CoreReader cores;

    LayerReader(Stock stock, Schedules schedules, LayUps layUps) {
        this.stock = stock;
        this.schedules = schedules;
        this.layUps = layUps;
        this.cores = new CoreReader(stock, layUps);
    }

    /** A list of layers, laid out. */
    Reading<List<Layer>> list(Surroundings around) {
        return listOf(entry(around)).map(LayerReader::joined);
    }

    private Reading<List<Layer>> entry(Surroundings around) {
        return new Reading.ShortOrFull<>(new Bare(around), new Full(around));
    }

    /** A layer by the id of its reinforcement alone. */
    private final class Bare implements Reading<List<Layer>> {

        private final Surroundings around;

        Bare(Surroundings around) {
            this.around = around;
        }

        @Override
        public Optional<List<Layer>> read(Node node, Complaints complaints) {
            return bare((Node.Scalar) node, around, complaints);
        }
    }

    /** A layer, or several, with all its keys. */
    private final class Full implements Reading<List<Layer>> {

        private final Reading<List<Layer>> stage;
        private final Reading<List<Layer>> otherwise;

        Full(Surroundings around) {
            stage = new OfKind(Keys.STAGE, around);
            otherwise = byKey(
                    "layer",
                    List.of(
                            choice("reinforcement", new OfKind(Keys.REINFORCEMENT_LAYER, around)),
                            choice("core", new OfKind(Keys.CORE_LAYER, around)),
                            choice("bulker", new OfKind(Keys.BULKER_LAYER, around)),
                            choice("schedule", new OfKind(Keys.SCHEDULE_USE, around)),
                            choice("layers", new OfKind(Keys.LAYER_GROUP, around)),
                            choice("lamina", new OfKind(Keys.LAMINA_LAYER, around)),
                            choice("stage", stage)));
        }

        @Override
        public Optional<List<Layer>> read(Node node, Complaints complaints) {
            // A stage holds layers: too, which alone would make a group.
            boolean staged =
                    node instanceof Node.Mapping group && group.entries().containsKey("stage");
            return (staged ? stage : otherwise).read(node, complaints);
        }
    }

    private final class OfKind extends MappingReading<List<Layer>> {

        private final Keys kind;
        private final Surroundings around;

        OfKind(Keys kind, Surroundings around) {
            super(kind);
            this.kind = kind;
            this.around = around;
        }

        @Override
        List<Layer> whole(Fields in) {
            return switch (kind) {
                case REINFORCEMENT_LAYER -> reinforcement(in, around);
                case CORE_LAYER -> cores.core(in, around);
                case BULKER_LAYER -> bulker(in, around);
                case SCHEDULE_USE -> schedule(in, around);
                case LAYER_GROUP -> group(in, around);
                case LAMINA_LAYER -> LaminaReader.layers(in, around);
                case STAGE -> stage(in, around);
                default -> throw new IllegalStateException(kind + " is no kind of layer");
            };
        }
    }

    private Optional<List<Layer>> bare(Node.Scalar id, Surroundings around, Complaints complaints) {
        String name = id.text().strip();
        if (schedules.has(name) && stock.materials().find(name).isEmpty()) {
            complaints.at(id, name + " is a schedule; it is written {schedule: " + name + "}");
            return Optional.empty();
        }
        Optional<Reinforcement> what = stock.reinforcement().read(id, complaints);
        Optional<LayUp> layUp = layUps.of(around.terms(), id, complaints);
        boolean packs = packs(what, around.terms(), around.content(), complaints);
        if (what.isEmpty() || layUp.isEmpty() || !packs) {
            return Optional.empty();
        }
        Optional<FibreContent> content = content(around.content());
        return Optional.of(List.of(new ReinforcementLayer(what.get(), 0, false, layUp.get(), content, around.stage())));
    }

    private List<Layer> reinforcement(Fields in, Surroundings around) {
        Term<Reinforcement> what = in.stated("reinforcement", stock.reinforcement());
        var angle = in.orElse("angle", ANGLE, 0.0);
        var turned = in.orElse("turned", flag(), false);
        var times = in.orElse("times", count(), 1);
        var own = in.atMostOne(Contents.OF_ONE_LAYER);
        var stated = in.anyStands(Contents.OF_ONE_LAYER) ? own.get() : around.content();
        Terms terms = around.terms().within(in, stock);
        var layUp = in.given(layUps.of(terms, in.node(), in.complaints()));
        in.agreed(packs(what.value(), terms, stated, in.complaints()));
        in.requireSound();
        return repeated(
                in,
                List.of(new ReinforcementLayer(
                        what.value().orElseThrow(),
                        angle.get(),
                        turned.get(),
                        layUp.get(),
                        content(stated),
                        around.stage())),
                times.get());
    }

    private List<Layer> bulker(Fields in, Surroundings around) {
        var what = in.required("bulker", stock.bulker());
        var times = in.orElse("times", count(), 1);
        var layUp = layUp(in, around);
        in.requireSound();
        return repeated(in, List.of(new BulkerLayer(what.get(), layUp.get(), around.stage())), times.get());
    }

    private List<Layer> stage(Fields in, Surroundings around) {
        var name = in.stated("stage", text());
        Terms terms = around.terms().within(in, stock);
        var layers = in.required("layers", list(around.inStage(name.value().orElse(""), terms)));
        in.requireSound();
        return layers.get();
    }

    private List<Layer> schedule(Fields in, Surroundings around) {
        var layers = in.required("schedule", schedules.use(around, this));
        var times = in.orElse("times", count(), 1);
        in.requireSound();
        return repeated(in, layers.get(), times.get());
    }

    private List<Layer> group(Fields in, Surroundings around) {
        var times = in.orElse("times", count(), 1);
        var layers = in.required("layers", list(around));
        in.requireSound();
        return repeated(in, layers.get(), times.get());
    }

    private Promise<LayUp> layUp(Fields in, Surroundings around) {
        return in.given(layUps.of(around.terms().within(in, stock), in.node(), in.complaints()));
    }

    private static Optional<FibreContent> content(Optional<Located<FibreContent>> stated) {
        return stated.isPresent() ? Optional.of(stated.get().value()) : Optional.empty();
    }

    /**
     * Whether the bed holds the fibre content that is stated; a complaint stands where the content does. It is told
     * whatever else is wrong with the layer.
     */
    private static boolean packs(
            Optional<Reinforcement> what, Terms terms, Optional<Located<FibreContent>> content, Complaints complaints) {
        Optional<Resin> resin = terms.resin().value();
        if (what.isEmpty() || resin.isEmpty() || content.isEmpty()) {
            return true;
        }
        try {
            FibreBed.check(what.get(), resin.get(), content.get().value());
            return true;
        } catch (IllegalArgumentException e) {
            complaints.at(content.get().node(), e);
            return false;
        }
    }

    static List<Layer> repeated(Fields in, List<Layer> layers, int times) {
        if ((long) times * layers.size() > MOST_IN_A_ZONE) {
            throw in.refusal(
                    "times",
                    times + " times " + (layers.size() == 1 ? "one layer" : layers.size() + " layers")
                            + " is more than " + MOST_IN_A_ZONE
                            + ", the most layers that a zone may have; fewer are wanted");
        }
        return joined(Collections.nCopies(times, layers));
    }

    private static List<Layer> joined(List<List<Layer>> groups) {
        long size = 0;
        for (List<Layer> group : groups) {
            size += group.size();
        }
        if (size > MOST_IN_A_ZONE) {
            throw new IllegalArgumentException(
                    size + " layers lie here; " + MOST_IN_A_ZONE + " are the most in a zone");
        }
        List<Layer> all = new ArrayList<>((int) size);
        for (List<Layer> group : groups) {
            all.addAll(group);
        }
        return all;
    }
}
