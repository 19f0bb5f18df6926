package laminate.file;

import static laminate.file.FigureReader.figures;
import static laminate.file.Reading.byWord;
import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.flag;
import static laminate.file.Scalars.id;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Consumable;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.unit.Dimension;
import laminate.unit.PriceBasis;

/** Reads one material of any kind. */
final class MaterialReader {

    private final Stock known;
    private final Reading<String> agent;

    /**
     * Makes a reader.
     *
     * @param known where the fibres of reinforcements are found
     * @param agentsAreChecked whether the agents of a resin are looked up there, too
     */
    MaterialReader(Stock known, boolean agentsAreChecked) {
        this.known = known;
        this.agent = agentsAreChecked ? known.anyAgent().map(Agent::id) : id();
    }

    Reading<Material> material() {
        List<Reading.Choice<Material>> kinds = new ArrayList<>();
        for (MaterialKind kind : MaterialKind.values()) {
            kinds.add(choice(kind.word(), new OfKind(kind)));
        }
        return byWord("kind", kinds);
    }

    private final class OfKind extends MappingReading<Material> {

        private final MaterialKind kind;

        OfKind(MaterialKind kind) {
            super(keys(kind));
            this.kind = kind;
        }

        @Override
        Material whole(Fields in) {
            return switch (kind) {
                case FIBRE -> fibre(in);
                case RESIN -> resin(in);
                case CATALYST, HARDENER -> agent(in, kind);
                case REINFORCEMENT -> new ReinforcementReader(known).reinforcement(in, named(in));
                case CORE -> core(in);
                case BULKER -> bulker(in);
                case CONSUMABLE -> consumable(in);
            };
        }
    }

    private static Keys keys(MaterialKind kind) {
        return switch (kind) {
            case FIBRE -> Keys.FIBRE;
            case RESIN -> Keys.RESIN;
            case CATALYST, HARDENER -> Keys.CURING_AGENT;
            case REINFORCEMENT -> Keys.REINFORCEMENT;
            case CORE -> Keys.CORE;
            case BULKER -> Keys.BULKER;
            case CONSUMABLE -> Keys.CONSUMABLE;
        };
    }

    /** What every material begins with. */
    record Named(Promise<String> id, Promise<String> name) {}

    private static Named named(Fields in) {
        in.known("kind");
        return new Named(in.required("material", id()), in.required("name", text()));
    }

    private static Fibre fibre(Fields in) {
        Named named = named(in);
        var type = in.required("type", Words.OfMaterials.FIBRE);
        var figures = figures(in, Fibre.REQUIRED, Fibre.OPTIONAL);
        in.requireSound();
        return new Fibre(named.id().get(), named.name().get(), type.get(), figures.get());
    }

    private static Agent agent(Fields in, MaterialKind kind) {
        Named named = named(in);
        var figures = figures(in, Agent.REQUIRED, Set.of());
        in.requireSound();
        return new Agent(named.id().get(), named.name().get(), kind, figures.get());
    }

    private static Core core(Fields in) {
        Named named = named(in);
        var type = in.required("type", Words.OfMaterials.CORE);
        var openCell = in.required("open-cell", flag());
        var figures = figures(in, Core.REQUIRED, Core.OPTIONAL);
        in.requireSound();
        return new Core(named.id().get(), named.name().get(), type.get(), openCell.get(), figures.get());
    }

    private static Bulker bulker(Fields in) {
        Named named = named(in);
        var figures = figures(in, Bulker.REQUIRED, Bulker.OPTIONAL);
        in.requireSound();
        return new Bulker(named.id().get(), named.name().get(), figures.get());
    }

    private static Consumable consumable(Fields in) {
        Named named = named(in);
        var soldBy = in.required("sold-by", Words.measure());
        var figures = figures(in, Set.of(), Consumable.OPTIONAL);
        in.requireSound();
        Consumable consumable = new Consumable(named.id().get(), named.name().get(), soldBy.get(), figures.get());
        if (soldBy.get() == PriceBasis.LITRE
                && consumable.figures().find(Property.DENSITY).isEmpty()) {
            throw in.refusal("sold-by", "what is sold by the litre needs its density; add density:");
        }
        return consumable;
    }

    private Resin resin(Fields in) {
        Named named = named(in);
        var family = in.required("family", Words.OfMaterials.FAMILY);
        var use = in.required("use", Words.OfMaterials.USE);
        var waxed = in.orElse("waxed", flag(), false);
        var figures = figures(in, Resin.REQUIRED, Resin.OPTIONAL);
        var cures = in.required("cure", listOf(mapping(Keys.CURE, this::cure)));
        var gelPoints =
                in.orElse("gel-time", listOf(mapping(Keys.GEL_TIME, this::gelTimes)), List.<List<Resin.GelPoint>>of());
        in.requireSound();
        return new Resin(
                named.id().get(),
                named.name().get(),
                family.get(),
                use.get(),
                waxed.get(),
                figures.get(),
                cures.get(),
                joined(gelPoints.get()));
    }

    private static List<Resin.GelPoint> joined(List<List<Resin.GelPoint>> doses) {
        List<Resin.GelPoint> all = new ArrayList<>();
        for (List<Resin.GelPoint> ofOne : doses) {
            all.addAll(ofOne);
        }
        return all;
    }

    private Resin.Cure cure(Fields in) {
        var share = FigureReader.of(quantity(Dimension.FRACTION, Bounds.POSITIVE));
        var what = in.required("agent", agent);
        var amount = in.required("amount", share);
        var from = in.required("from", share);
        var to = in.required("to", share);
        in.requireSound();
        return new Resin.Cure(what.get(), amount.get(), from.get(), to.get());
    }

    /** The times of one dose, by temperature. */
    private List<Resin.GelPoint> gelTimes(Fields in) {
        var what = in.required("agent", agent);
        var amount = in.required("amount", quantity(Dimension.FRACTION, Bounds.POSITIVE));
        var times =
                in.required("times", mapOf(quantity(Dimension.TEMPERATURE), quantity(Dimension.TIME, Bounds.POSITIVE)));
        var origin = FigureReader.origin(in);
        in.requireSound();
        List<Resin.GelPoint> points = new ArrayList<>();
        for (Map.Entry<Double, Double> at : times.get().entrySet()) {
            points.add(new Resin.GelPoint(what.get(), amount.get(), at.getKey(), origin.of(at.getValue())));
        }
        return points;
    }
}
