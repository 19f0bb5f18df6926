package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.wholeNumber;

import java.util.List;
import java.util.Optional;
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

    List<Layer> core(Fields in, Surroundings around) {
        Term<Core> what = in.stated("core", stock.core());
        var thickness = in.required("thickness", LENGTH);
        var angle = in.orElse("angle", LayerReader.ANGLE, 0.0);
        var finish = in.optional("finish", Words.finish());
        var grooves = in.optional("grooves", mapping(Keys.GROOVES, CoreReader::grooves));
        var paste = in.optional("bed", Located.of(stock.resin(Resin.Use.BONDING_PASTE)));
        var bedThickness = in.optional("bed-thickness", LENGTH);
        Terms terms = around.terms().within(in, stock);
        var layUp = in.given(layUps.of(terms, in.node(), in.complaints()));
        checkUptake(in, what.value(), terms.process().value());
        in.requireSound();
        CoreFinish faces = finish(in, finish.get(), grooves.get(), thickness.get());
        return List.of(new CoreLayer(
                what.value().orElseThrow(),
                thickness.get(),
                angle.get(),
                faces,
                layUp.get(),
                bed(in, paste.get(), bedThickness.get()),
                around.stage()));
    }

    /** A core that the process would fill is told whatever else is wrong with the layer. */
    private static void checkUptake(Fields in, Optional<Core> core, Optional<Process> process) {
        if (core.isEmpty() || process.isEmpty()) {
            return;
        }
        try {
            CoreFinish.faceUptake(core.get(), process.get());
        } catch (IllegalArgumentException e) {
            in.complain("core", e.getMessage());
        }
    }

    private static CoreFinish finish(
            Fields in, Optional<CoreFinish.Kind> kind, Optional<Grooves> grooves, double thickness) {
        if (grooves.isEmpty()) {
            return CoreFinish.of(kind.orElse(CoreFinish.Kind.PLAIN));
        }
        if (kind.orElse(CoreFinish.Kind.GROOVED) != CoreFinish.Kind.GROOVED) {
            throw in.refusal(
                    "finish", "a core with grooves is grooved; write grooved, or take one of the two keys out");
        }
        checkDepth(in, grooves.get(), thickness);
        return CoreFinish.grooved(grooves.get());
    }

    private static Grooves grooves(Fields in) {
        var width = in.required("width", LENGTH);
        var depth = in.required("depth", LENGTH);
        var pitch = in.required("pitch", LENGTH);
        var faces = in.orElse("faces", wholeNumber(1, 2), Grooves.USUAL.faces());
        var ways = in.orElse("ways", wholeNumber(1, 2), Grooves.USUAL.ways());
        in.requireSound();
        if (pitch.get() <= width.get()) {
            throw in.refusal("pitch", "the pitch, from groove to groove, must be more than the width of a groove");
        }
        return new Grooves(width.get(), depth.get(), pitch.get(), faces.get(), ways.get());
    }

    private static void checkDepth(Fields in, Grooves cut, double thickness) {
        if (cut.depth() * cut.faces() >= thickness) {
            throw in.refusal(
                    "thickness",
                    "grooves so deep would cut this core through; a thicker core or shallower grooves are wanted");
        }
    }

    /** The paste under a core; its dose is its own usual one. */
    private Optional<Bed> bed(Fields in, Optional<Located<Resin>> paste, Optional<Double> thickness) {
        if (paste.isPresent() && thickness.isEmpty()) {
            throw in.refusal("bed", "a bed needs its thickness; add bed-thickness: 1 mm");
        }
        if (paste.isEmpty() && thickness.isPresent()) {
            throw in.refusal("bed-thickness", "a bed needs its paste; add bed: with the id of a bonding paste");
        }
        if (paste.isEmpty()) {
            return Optional.empty();
        }
        Resin resin = paste.get().value();
        return Optional.of(new Bed(resin, Doses.usual(resin, stock, paste.get().node()), thickness.get()));
    }
}
