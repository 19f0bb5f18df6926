package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.wholeNumber;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.material.Core;
import laminate.material.Resin;
import laminate.part.Bed;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.process.CoreFinish;
import laminate.process.Grooves;
import laminate.process.Process;
import laminate.unit.Dimension;

/** Reads core layers, their finish and the bed they lie in. */
final class CoreReader {

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);

    private final Stock stock;
    private final LayUps layUps;

    CoreReader(Stock stock, LayUps layUps) {
        this.stock = stock;
        this.layUps = layUps;
    }

    Supplier<List<Layer>> core(Fields in, Surroundings around) {
        Term<Core> what = in.stated("core", stock.core());
        var thickness = in.required("thickness", LENGTH);
        var angle = in.orElse("angle", LayerReader.ANGLE, 0.0);
        var finish = finish(in);
        var bed = bed(in);
        Terms terms = around.terms().within(in, stock);
        var layUp = in.given(layUps.of(terms, in.node(), in.complaints()));
        what.value().ifPresent(core -> terms.process().value().ifPresent(process -> checkUptake(in, core, process)));
        return () -> {
            CoreFinish faces = finish.get();
            faces.grooves().ifPresent(cut -> checkDepth(in, cut, thickness.get()));
            return List.of(new CoreLayer(
                    what.value().orElseThrow(),
                    thickness.get(),
                    angle.get(),
                    faces,
                    layUp.get(),
                    bed.get(),
                    around.stage()));
        };
    }

    /** A core that the process would fill is told whatever else is wrong with the layer. */
    private static void checkUptake(Fields in, Core core, Process process) {
        try {
            CoreFinish.faceUptake(core, process);
        } catch (IllegalArgumentException e) {
            in.complain("core", e.getMessage());
        }
    }

    private static Supplier<CoreFinish> finish(Fields in) {
        var kind = in.optional("finish", Words.finish());
        var grooves = in.optional("grooves", mapping(Keys.GROOVES, CoreReader::grooves));
        return () -> {
            if (grooves.get().isEmpty()) {
                return CoreFinish.of(kind.get().orElse(CoreFinish.Kind.PLAIN));
            }
            if (kind.get().filter(other -> other != CoreFinish.Kind.GROOVED).isPresent()) {
                throw in.refusal(
                        "finish", "a core with grooves is grooved; write grooved, or take one of the two keys out");
            }
            return CoreFinish.grooved(grooves.get().get());
        };
    }

    private static Supplier<Grooves> grooves(Fields in) {
        var width = in.required("width", LENGTH);
        var depth = in.required("depth", LENGTH);
        var pitch = in.required("pitch", LENGTH);
        var faces = in.orElse("faces", wholeNumber(1, 2), Grooves.USUAL.faces());
        var ways = in.orElse("ways", wholeNumber(1, 2), Grooves.USUAL.ways());
        return () -> {
            if (pitch.get() <= width.get()) {
                throw in.refusal("pitch", "the pitch, from groove to groove, must be more than the width of a groove");
            }
            return new Grooves(width.get(), depth.get(), pitch.get(), faces.get(), ways.get());
        };
    }

    private static void checkDepth(Fields in, Grooves cut, double thickness) {
        if (cut.depth() * cut.faces() >= thickness) {
            throw in.refusal(
                    "thickness",
                    "grooves so deep would cut this core through; a thicker core or shallower grooves are wanted");
        }
    }

    /** The paste under a core; its dose is its own usual one. */
    private Supplier<Optional<Bed>> bed(Fields in) {
        var paste = in.optional("bed", Located.of(stock.resin(Resin.Use.BONDING_PASTE)));
        var thickness = in.optional("bed-thickness", LENGTH);
        return () -> {
            if (paste.get().isPresent() != thickness.get().isPresent()) {
                boolean lacksThickness = paste.get().isPresent();
                throw in.refusal(
                        lacksThickness ? "bed" : "bed-thickness",
                        lacksThickness
                                ? "a bed needs its thickness; add bed-thickness: 1 mm"
                                : "a bed needs its paste; add bed: with the id of a bonding paste");
            }
            return paste.get()
                    .map(located -> new Bed(
                            located.value(),
                            Doses.usual(located.value(), stock, located.node()),
                            thickness.get().get()));
        };
    }
}
