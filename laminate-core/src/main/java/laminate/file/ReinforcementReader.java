package laminate.file;

import static laminate.file.FigureReader.figures;
import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.quantity;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.unit.Dimension;

/** Reads reinforcements and their make-up. */
final class ReinforcementReader {

    private static final Reading<Double> SHARE = quantity(Dimension.FRACTION, Bounds.between(0, 1, "0 % to 100 %"));

    private final Stock known;

    ReinforcementReader(Stock known) {
        this.known = known;
    }

    /** What a make-up comes to once form and weight of the reinforcement are known. */
    @FunctionalInterface
    private interface MakeUp {
        List<FibrePly> plies(Form form, Figures figures);
    }

    Reinforcement reinforcement(Fields in, MaterialReader.Named named) {
        var form = in.required("form", Words.FORM);
        var binder = in.optional("binder", Words.OfMaterials.BINDER);
        var figures = figures(in, Reinforcement.REQUIRED, Reinforcement.OPTIONAL);
        var makeUp = in.exactlyOne(List.of(
                choice("fibre", known.fibre().map(fibre -> single(in, fibre))),
                choice("plies", listOf(mapping(Keys.MAKE_UP_PLY, this::ply)).map(plies -> listed(in, plies)))));
        var measured = in.optional("measured", mapping(Keys.MEASURED_PLY, ReinforcementReader::measured));
        in.requireSound();
        if (binder.get().isPresent() && form.get().architecture() != Form.Architecture.RANDOM) {
            throw in.refusal("binder", "only mats and tissues have a binder; take it out");
        }
        return new Reinforcement(
                named.id().get(),
                named.name().get(),
                form.get(),
                makeUp.get().plies(form.get(), figures.get()),
                binder.get(),
                figures.get(),
                measured.get());
    }

    private static MakeUp single(Fields in, Fibre fibre) {
        return (form, figures) -> {
            if (form == Form.STITCHED) {
                throw in.refusal(
                        "fibre",
                        "a stitched reinforcement is told by its plies; write plies: [{fibre: … , angle: 0, …}]");
            }
            FibrePly ply = FibrePly.of(fibre, form, 0, figures.value(Property.AREAL_WEIGHT));
            OptionalDouble share = figures.valueOf(Property.WARP_SHARE);
            return List.of(share.isPresent() ? woven(in, ply, share.getAsDouble()) : ply);
        };
    }

    private static MakeUp listed(Fields in, List<ListedPly> plies) {
        return (form, figures) -> {
            if (figures.find(Property.WARP_SHARE).isPresent()) {
                throw in.refusal("warp-share", "where plies are listed, the warp-share stands with the ply");
            }
            return plies.stream().map(ply -> ply.in(form)).toList();
        };
    }

    private static FibrePly woven(Fields in, FibrePly ply, double warpShare) {
        if (ply.form().architecture() != Form.Architecture.WOVEN) {
            throw in.refusal("warp-share", "only woven plies have a warp-share; take it out");
        }
        return new FibrePly(ply.fibre(), ply.form(), ply.angle(), ply.arealMass(), warpShare);
    }

    /** A ply that may take its form from the reinforcement. */
    @FunctionalInterface
    private interface ListedPly {
        FibrePly in(Form form);
    }

    private ListedPly ply(Fields in) {
        var fibre = in.required("fibre", known.fibre());
        var own = in.optional("form", Words.FORM);
        var angle = in.orElse("angle", LayerReader.ANGLE, 0.0);
        var mass = in.required("areal-weight", quantity(Dimension.AREAL_MASS, Bounds.POSITIVE));
        var warp = in.optional("warp-share", SHARE);
        in.requireSound();
        return form -> {
            FibrePly ply = FibrePly.of(fibre.get(), own.get().orElse(form), angle.get(), mass.get());
            return warp.get().map(share -> woven(in, ply, share)).orElse(ply);
        };
    }

    private static Figures measured(Fields in) {
        Set<Property> optional = EnumSet.copyOf(Reinforcement.MEASURED_OPTIONAL);
        optional.removeAll(Reinforcement.MEASURED_STRAINS);
        var figures = figures(in, Reinforcement.MEASURED_REQUIRED, optional);
        var strains =
                in.optional("strain-limits", mapping(Keys.MEASURED_STRAINS, ReinforcementReader::measuredStrains));
        in.requireSound();
        Map<Property, Figure> all = new EnumMap<>(Property.class);
        all.putAll(figures.get().asMap());
        strains.get().ifPresent(limits -> all.putAll(limits.asMap()));
        return Figures.of(all);
    }

    private static Figures measuredStrains(Fields in) {
        var figures = figures(in, Reinforcement.MEASURED_STRAINS, Set.of());
        in.requireSound();
        return figures.get();
    }
}
