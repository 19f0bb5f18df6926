package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.flag;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.part.Coating;
import laminate.part.Layer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.Measured;
import laminate.part.Outline;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.unit.Dimension;

/** Reads zones. */
final class ZoneReader {

    /** Layers of all zones of a part: a bound on memory, far above any real part. */
    private static final long MOST_LAYERS = 1_000_000;

    private static final Reading<Double> LENGTH = quantity(Dimension.LENGTH, Bounds.POSITIVE);
    private static final Reading<Double> SHAPE_FACTOR =
            quantity(Dimension.FRACTION, Bounds.above(0, 1, "more than 0 % to 100 %"));
    private static final Reading<Trim> TRIM = mapping(Keys.TRIM, ZoneReader::trim);
    static final Reading<Measured> MEASURED = mapping(Keys.MEASURED, ZoneReader::measured);

    private final Stock stock;
    private final ZoneNames names;
    private final LayerReader layers;
    private final Reading<List<Coating>> coatings;
    private final Infusions infusions;
    private long laid;

    ZoneReader(Stock stock, Schedules schedules, ZoneNames names, Infusions infusions) {
        LayUps layUps = new LayUps(stock);
        this.stock = stock;
        this.names = names;
        this.infusions = infusions;
        this.layers = new LayerReader(stock, schedules, layUps);
        this.coatings = listOf(new CoatingReader(stock, layUps).coating());
    }

    /** A zone of a part that states terms and, unless the zone names another, a set of fibre contents. */
    Reading<Zone> zone(Terms part, ContentSet contents) {
        return mapping(Keys.ZONE, in -> zone(in, part, contents));
    }

    private Zone zone(Fields in, Terms part, ContentSet contents) {
        var name = in.required("name", names.ofZone());
        var area = in.required("area", quantity(Dimension.AREA, Bounds.POSITIVE));
        var outline = in.optional("outline", later(() -> mapping(Keys.OUTLINE, ZoneReader::outline)));
        var count = in.orElse("count", pieces(), 1);
        Optional<ContentSet> own = Contents.set(in);
        var content = in.atMostOne(Contents.OF_ANY_LAYER);
        Terms terms = part.within(in, stock);
        var trim = in.optional("trim", TRIM);
        var mirror = in.orElse("mirror", flag(), false);
        var coats = in.orElse("coatings", coatings, List.<Coating>of());
        var list = in.required("layers", layers.list(new Surroundings(terms, content.get(), "", List.of())));
        var measured = in.orElse("measured", MEASURED, Measured.NOTHING);
        var cases = in.orElse("load-cases", later(() -> LoadCaseReader.loadCases()), List.<LoadCase>of());
        var limits = in.orElse("limits", later(() -> LimitsReader.limits()), Limits.NONE);
        var infusion = in.optional("infusion", later(() -> InfusionReader.infusion()));
        in.requireSound();
        outline.get().ifPresent(drawn -> checkOutline(in, drawn, area.get()));
        List<Layer> all = counted(mirror.get() ? Mirror.of(list.get()) : list.get());
        return new Zone(
                name.get(),
                area.get(),
                count.get(),
                coats.get(),
                all,
                trim.get(),
                own.orElse(contents),
                measured.get(),
                cases.get(),
                limits.get(),
                infusions.ofZone(in, infusion.get(), all),
                outline.get());
    }

    private List<Layer> counted(List<Layer> all) {
        laid += all.size();
        if (laid > MOST_LAYERS) {
            throw new IllegalArgumentException(
                    "the zones have more than " + MOST_LAYERS + " layers by here; fewer are wanted");
        }
        return all;
    }

    private static Outline outline(Fields in) {
        var length = in.required("length", LENGTH);
        var width = in.required("width", LENGTH);
        var factor = in.orElse("shape-factor", SHAPE_FACTOR, 1.0);
        in.requireSound();
        return new Outline(length.get(), width.get(), factor.get());
    }

    private static void checkOutline(Fields in, Outline outline, double area) {
        if (!outline.isOf(area)) {
            throw in.refusal(
                    "outline",
                    String.format(
                            Locale.ROOT,
                            "length times width times shape factor is %.4g m², the area %.4g m²;"
                                    + " they are to agree within 0.5 %%",
                            outline.area(),
                            area));
        }
    }

    private static Trim trim(Fields in) {
        var edge = in.required("edge", LENGTH);
        var width = in.required("width", LENGTH);
        in.requireSound();
        return new Trim(edge.get(), width.get());
    }

    private static Measured measured(Fields in) {
        var mass = in.optional("mass", quantity(Dimension.MASS, Bounds.POSITIVE));
        var thickness = in.optional("thickness", Reading.oneOrList(LENGTH));
        in.requireSound();
        if (mass.get().isEmpty() && thickness.get().isEmpty()) {
            throw new IllegalArgumentException("nothing is measured here; mass, thickness or both are wanted");
        }
        return new Measured(orNone(mass.get()), thickness.get().orElse(List.of()));
    }
}
