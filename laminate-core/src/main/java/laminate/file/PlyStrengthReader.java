package laminate.file;

import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.orNone;
import static laminate.file.Scalars.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.unit.Dimension;

/** Reads the strength of a ply that is given directly. */
final class PlyStrengthReader {

    private static final Reading<Double> STRENGTH = quantity(Dimension.PRESSURE, Bounds.POSITIVE);
    private static final List<String> FIVE = List.of("Xt", "Xc", "Yt", "Yc", "S");
    private static final List<String> ALL = List.of("Xt", "Xc", "Yt", "Yc", "S", "S23", "strain-limits");

    private PlyStrengthReader() {}

    /** The strength of a lamina: the five together or nothing, and with them what else is known. */
    static Supplier<Optional<PlyStrength>> strength(Fields in) {
        Map<String, Supplier<Optional<Double>>> five = new LinkedHashMap<>();
        FIVE.forEach(key -> five.put(key, in.optional(key, STRENGTH)));
        var across = in.optional("S23", STRENGTH);
        var strains = in.optional("strain-limits", mapping(Keys.STRAIN_LIMITS, PlyStrengthReader::strainLimits));
        return () -> {
            List<String> lacking =
                    FIVE.stream().filter(key -> five.get(key).get().isEmpty()).toList();
            if (!lacking.isEmpty()) {
                in.refuseAnyOf(ALL, "this is only a part of a ply's strength; add " + String.join(", ", lacking));
                return Optional.empty();
            }
            double[] of =
                    FIVE.stream().mapToDouble(key -> five.get(key).get().get()).toArray();
            return Optional.of(new PlyStrength(of[0], of[1], of[2], of[3], of[4], orNone(across.get()), strains.get()));
        };
    }

    private static StrainLimits strainLimits(Fields in) {
        var e1t = in.required("e1t", Strains.limit());
        var e1c = in.required("e1c", Strains.limit());
        var e2t = in.required("e2t", Strains.limit());
        var e2c = in.required("e2c", Strains.limit());
        var g12 = in.required("g12", Strains.limit());
        in.requireSound();
        return new StrainLimits(e1t.get(), e1c.get(), e2t.get(), e2c.get(), g12.get());
    }
}
