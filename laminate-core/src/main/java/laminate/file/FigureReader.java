package laminate.file;

import static laminate.file.Reading.shortOrFull;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Property;
import laminate.material.Status;
import laminate.unit.Dimension;

/** Reads the figures of materials: which there are, {@link Property} and the material's own sets tell. */
final class FigureReader {

    private static final String USER = Figure.stated(0).source();

    private static final Bounds SHARE = Bounds.between(0, 1, "0 % to 100 %");

    private FigureReader() {}

    /** All figures of a material, those required and those that may stand. */
    static Promise<Figures> figures(Fields in, Set<Property> required, Set<Property> optional) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        for (Property property : required) {
            put(figures, property, in.required(property.key(), of(property)).value());
        }
        for (Property property : optional) {
            put(
                    figures,
                    property,
                    in.optional(property.key(), of(property)).value().orElse(Optional.empty()));
        }
        return Promise.of(Figures.of(figures));
    }

    private static void put(Map<Property, Figure> figures, Property property, Optional<Figure> figure) {
        if (figure.isPresent()) {
            figures.put(property, figure.get());
        }
    }

    private static Reading<Figure> of(Property property) {
        Bounds range = range(property);
        Optional<Dimension> dimension = property.dimension();
        return of(dimension.isPresent() ? quantity(dimension.get(), range) : number(range));
    }

    /** A figure with its source and status, or a bare value that the user states. */
    static Reading<Figure> of(Reading<Double> value) {
        return shortOrFull(value.map(Figure::stated), new MappingReading<>(Keys.FIGURE) {
            @Override
            Figure whole(Fields in) {
                var number = in.required("value", value);
                Origin origin = origin(in);
                in.requireSound();
                return origin.of(number.get());
            }
        });
    }

    /**
     * Where a figure is from.
     *
     * @param source the source
     * @param status how it relates to the source
     */
    record Origin(Promise<String> source, Promise<Status> status) {

        Figure of(double value) {
            return new Figure(value, source.get(), status.get());
        }
    }

    /** The source and status of a figure; without them it is the user's own. */
    static Origin origin(Fields in) {
        var source = in.orElse("source", text(), USER);
        var status = in.orElse("status", Words.OfMaterials.STATUS, Status.USER);
        return new Origin(source, status);
    }

    /** What a property can be at all; what it plausibly is, a test of the library says. */
    private static Bounds range(Property property) {
        return switch (property) {
            case NU -> Bounds.between(-1, 0.5, "-1 to 0.5");
            case NU12 -> Bounds.between(-1, 1, "-1 to 1");
            case UPTAKE_HAND, UPTAKE_INFUSION, ELONGATION -> Bounds.NOT_NEGATIVE;
            case STRAIN_1T, STRAIN_1C, STRAIN_2T, STRAIN_2C, STRAIN_12 -> Bounds.POSITIVE;
            default -> byDimension(property.dimension());
        };
    }

    private static Bounds byDimension(Optional<Dimension> dimension) {
        return switch (dimension.orElse(Dimension.PRESSURE)) {
            case FRACTION -> SHARE;
            // Carbon and aramid shrink along the fibre as they warm.
            case EXPANSION -> Bounds.ANY;
            default -> Bounds.POSITIVE;
        };
    }
}
