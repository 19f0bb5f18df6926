package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Reading.shortOrFull;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
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
    static Supplier<Figures> figures(Fields in, Set<Property> required, Set<Property> optional) {
        Map<Property, Supplier<Optional<Figure>>> read = new EnumMap<>(Property.class);
        for (Property property : required) {
            Supplier<Figure> figure = in.required(property.key(), of(property));
            read.put(property, () -> Optional.of(figure.get()));
        }
        optional.forEach(property -> read.put(property, in.optional(property.key(), of(property))));
        return () -> {
            Map<Property, Figure> figures = new EnumMap<>(Property.class);
            read.forEach((property, figure) -> figure.get().ifPresent(value -> figures.put(property, value)));
            return Figures.of(figures);
        };
    }

    private static Reading<Figure> of(Property property) {
        Bounds range = range(property);
        return of(property.dimension()
                .map(dimension -> quantity(dimension, range))
                .orElseGet(() -> number(range)));
    }

    /** A figure with its source and status, or a bare value that the user states. */
    static Reading<Figure> of(Reading<Double> value) {
        return shortOrFull(value.map(Figure::stated), mapping(Keys.FIGURE, in -> {
            var number = in.required("value", value);
            Supplier<Origin> origin = origin(in);
            return () -> origin.get().of(number.get());
        }));
    }

    /**
     * Where a figure is from.
     *
     * @param source the source
     * @param status how it relates to the source
     */
    record Origin(String source, Status status) {

        Figure of(double value) {
            return new Figure(value, source, status);
        }
    }

    /** The source and status of a figure; without them it is the user's own. */
    static Supplier<Origin> origin(Fields in) {
        var source = in.orElse("source", text(), USER);
        var status = in.orElse("status", Words.OfMaterials.STATUS, Status.USER);
        return () -> new Origin(source.get(), status.get());
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
        if (dimension.filter(Dimension.FRACTION::equals).isPresent()) {
            return SHARE;
        }
        // Carbon and aramid shrink along the fibre as they warm.
        return dimension.filter(Dimension.EXPANSION::equals).isPresent() ? Bounds.ANY : Bounds.POSITIVE;
    }
}
