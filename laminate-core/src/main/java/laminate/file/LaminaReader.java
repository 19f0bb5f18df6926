package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.count;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.theory.Lamina;
import laminate.theory.PlyStrength;
import laminate.unit.Dimension;

/** Reads plies that are given directly by their properties. */
final class LaminaReader {

    private static final Reading<Double> MODULUS = quantity(Dimension.PRESSURE, Bounds.POSITIVE);
    private static final Reading<Double> EXPANSION = quantity(Dimension.EXPANSION);

    private LaminaReader() {}

    private record Solid(Lamina lamina, double density) {}

    /** Two values that stand together or not at all. */
    private record Pair(double first, double second) {}

    static List<Layer> layers(Fields in, Surroundings around) {
        var solid = in.required("lamina", mapping(Keys.LAMINA, LaminaReader::solid));
        var thickness = in.required("thickness", quantity(Dimension.LENGTH, Bounds.POSITIVE));
        var angle = in.orElse("angle", LayerReader.ANGLE, 0.0);
        var times = in.orElse("times", count(), 1);
        in.requireSound();
        Solid of = solid.get();
        Layer layer = new LaminaLayer(of.lamina(), of.density(), thickness.get(), angle.get(), around.stage());
        return LayerReader.repeated(in, List.of(layer), times.get());
    }

    private static Solid solid(Fields in) {
        var E1 = in.required("E1", MODULUS);
        var E2 = in.required("E2", MODULUS);
        var G12 = in.required("G12", MODULUS);
        var nu12 = in.required("nu12", number());
        var density = in.required("density", quantity(Dimension.DENSITY, Bounds.POSITIVE));
        var shear = pair(in, "G13", "G23", MODULUS);
        var thermal = pair(in, "alpha1", "alpha2", EXPANSION);
        var moisture = pair(in, "beta1", "beta2", number());
        var strength = PlyStrengthReader.strength(in);
        in.requireSound();
        Lamina lamina = elastic(in, E1.get(), E2.get(), G12.get(), nu12.get());
        Optional<Pair> g = shear.get();
        Optional<Pair> alpha = thermal.get();
        Optional<Pair> beta = moisture.get();
        lamina = g.isPresent()
                ? lamina.withTransverseShear(g.get().first(), g.get().second())
                : lamina;
        lamina = alpha.isPresent()
                ? lamina.withExpansion(alpha.get().first(), alpha.get().second())
                : lamina;
        lamina = beta.isPresent()
                ? lamina.withMoistureExpansion(beta.get().first(), beta.get().second())
                : lamina;
        Optional<PlyStrength> known = strength.get();
        return new Solid(known.isPresent() ? lamina.withStrength(known.get()) : lamina, density.get());
    }

    /** The moduli are above zero by now, so that a refusal is of the Poisson's ratio. */
    private static Lamina elastic(Fields in, double E1, double E2, double G12, double nu12) {
        try {
            return Lamina.of(E1, E2, G12, nu12);
        } catch (IllegalArgumentException e) {
            throw in.refusal("nu12", e.getMessage());
        }
    }

    private static Supplier<Optional<Pair>> pair(Fields in, String first, String second, Reading<Double> reading) {
        var one = in.optional(first, reading);
        var two = in.optional(second, reading);
        return () -> {
            if (one.get().isPresent() != two.get().isPresent()) {
                String standing = one.get().isPresent() ? first : second;
                String lacking = one.get().isPresent() ? second : first;
                throw in.refusal(standing, standing + " alone is half of a pair; add " + lacking);
            }
            return one.get().map(value -> new Pair(value, two.get().get()));
        };
    }
}
