package laminate.print.materials;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Material;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.unit.Dimension;
import laminate.unit.JsonNumbers;
import laminate.unit.Unit;

/** Every figure of a material by name, whatever its kind. */
final class MaterialFigures {

    /**
     * A figure with its name.
     *
     * @param name what it measures, as in a material file
     * @param dimension its dimension, empty for a bare number
     * @param figure the value in SI with its source
     */
    record Named(String name, Optional<Dimension> dimension, Figure figure) {

        /** The value in the unit of {@link #unit()}. */
        double value() {
            return unit().map(unit -> unit.fromSi(figure.value())).orElse(figure.value());
        }

        /** The value with the digits that it was written with. */
        String number() {
            return JsonNumbers.format(value());
        }

        /** The unit that the trade uses for a value of that size. */
        Optional<Unit> unit() {
            return dimension.map(this::unitOf);
        }

        private Unit unitOf(Dimension known) {
            double size = Math.abs(figure.value());
            return switch (known) {
                case PRESSURE -> size < 1e9 ? Unit.MEGAPASCAL : Unit.GIGAPASCAL;
                case LENGTH -> size < 0.1 ? Unit.MILLIMETRE : Unit.METRE;
                case AREAL_MASS -> Unit.GRAM_PER_SQUARE_METRE;
                case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
                case FRACTION -> Unit.PERCENT;
                case VISCOSITY -> Unit.MILLIPASCAL_SECOND;
                case TIME -> Unit.MINUTE;
                default -> Unit.of(known).get(0);
            };
        }
    }

    private MaterialFigures() {}

    /** All figures in the order of a material file. */
    static List<Named> of(Material material) {
        List<Named> named = new ArrayList<>();
        add(named, "", material.figures());
        if (material instanceof Resin resin) {
            resin.cures().forEach(cure -> addCure(named, cure));
            resin.gelPoints().forEach(point -> named.add(gelTime(point)));
        } else if (material instanceof Reinforcement reinforcement) {
            reinforcement.measured().ifPresent(measured -> add(named, "measured ", measured));
        }
        return named;
    }

    private static void add(List<Named> named, String prefix, Figures figures) {
        figures.asMap()
                .forEach((property, figure) ->
                        named.add(new Named(prefix + property.key(), property.dimension(), figure)));
    }

    private static void addCure(List<Named> named, Resin.Cure cure) {
        Optional<Dimension> share = Optional.of(Dimension.FRACTION);
        named.add(new Named(cure.agent() + ", usual", share, cure.amount()));
        named.add(new Named(cure.agent() + ", least", share, cure.from()));
        named.add(new Named(cure.agent() + ", most", share, cure.to()));
    }

    private static Named gelTime(Resin.GelPoint point) {
        String name = "gel time, " + JsonNumbers.format(Unit.PERCENT.fromSi(point.amount())) + " % " + point.agent()
                + " at " + JsonNumbers.format(Unit.CELSIUS.fromSi(point.temperature())) + " °C";
        return new Named(name, Optional.of(Dimension.TIME), point.time());
    }
}
