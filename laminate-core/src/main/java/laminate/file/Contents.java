package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Scalars.number;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.word;

import java.util.List;
import java.util.Optional;
import laminate.process.ContentSet;
import laminate.process.FibreContent;
import laminate.process.FibreContent.Basis;
import laminate.unit.Dimension;

/** Fibre contents as files state them: a number in one of several ways, or a set of nominal ones by name. */
final class Contents {

    private static final String SIMPLE = "simple";

    private static final Bounds PART = Bounds.inside(0, 1, "above 0 % and below 100 %");

    /** The ways that hold for layers of any weight. */
    static final List<Reading.Choice<Located<FibreContent>>> OF_ANY_LAYER =
            List.of(fraction(Basis.MASS_FRACTION), fraction(Basis.VOLUME_FRACTION), ratio());

    /** All four ways. */
    static final List<Reading.Choice<Located<FibreContent>>> OF_ONE_LAYER =
            List.of(fraction(Basis.MASS_FRACTION), fraction(Basis.VOLUME_FRACTION), ratio(), thickness());

    private static final Reading<ContentSet> SET = word(List.of(
                    ContentSet.TRADE.word(), ContentSet.ISO_NOMINAL_SIMPLE.word()))
            .map(found -> found.equals(ContentSet.TRADE.word()) ? ContentSet.TRADE : ContentSet.ISO_NOMINAL_SIMPLE);

    private static final Reading<String> SURFACE = word(List.of(SIMPLE, "complex"));

    private Contents() {}

    private static Reading.Choice<Located<FibreContent>> fraction(Basis basis) {
        return way(basis, quantity(Dimension.FRACTION, PART));
    }

    private static Reading.Choice<Located<FibreContent>> ratio() {
        return way(Basis.RESIN_RATIO, number(Bounds.POSITIVE));
    }

    private static Reading.Choice<Located<FibreContent>> thickness() {
        return way(Basis.THICKNESS, quantity(Dimension.LENGTH, Bounds.POSITIVE));
    }

    private static Reading.Choice<Located<FibreContent>> way(Basis basis, Reading<Double> value) {
        return choice(basis.key(), Located.of(value.map(read -> new FibreContent(basis, read))));
    }

    /** The set that {@code fibre-content:} and {@code surface:} name; it is wanted before the layers are read. */
    static Optional<ContentSet> set(Fields in) {
        Term<ContentSet> set = in.stated("fibre-content", SET);
        return set(in, set.value(), set.flawed());
    }

    /** The set where {@code fibre-content:} has been read already. */
    static Optional<ContentSet> set(Fields in, Optional<ContentSet> set, boolean flawed) {
        Term<String> surface = in.stated("surface", SURFACE);
        boolean standard = set.isPresent() && set.get().isStandard();
        if (standard && !surface.stands()) {
            in.complain("fibre-content", "iso-nominal differs by surface; add surface: simple or surface: complex");
        } else if (!standard && !flawed && surface.stands()) {
            in.complain("surface", "a surface goes with fibre-content: iso-nominal; add that, or take surface: out");
        }
        boolean complex = standard && !surface.value().orElse(SIMPLE).equals(SIMPLE);
        return complex ? Optional.of(ContentSet.ISO_NOMINAL_COMPLEX) : set;
    }

    static Reading<ContentSet> setByName() {
        return SET;
    }
}
