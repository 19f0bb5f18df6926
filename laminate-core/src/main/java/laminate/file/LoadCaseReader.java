package laminate.file;

import static laminate.file.Reading.choice;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.name;
import static laminate.file.Scalars.quantity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.part.LoadCase;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.unit.Dimension;

/** Reads the load cases of a zone. */
final class LoadCaseReader {

    private LoadCaseReader() {}

    /** A resultant or a deformation that is given. */
    private record Given(Term term, double value) {}

    static Reading<List<LoadCase>> loadCases() {
        Set<String> taken = new HashSet<>();
        return listOf(mapping(Keys.LOAD_CASE, in -> loadCase(in, taken)));
    }

    private static LoadCase loadCase(Fields in, Set<String> taken) {
        var name = in.required("name", name(taken));
        List<Promise<Optional<Given>>> given = new ArrayList<>();
        for (Term term : Term.values()) {
            if (term.isResultant()) {
                given.add(in.atMostOne(List.of(way(term), way(term.conjugate()))));
            }
        }
        var alongX = in.orElse("Qx", quantity(Dimension.FORCE_PER_LENGTH), 0.0);
        var alongY = in.orElse("Qy", quantity(Dimension.FORCE_PER_LENGTH), 0.0);
        var change = in.orElse("temperature-change", quantity(Dimension.TEMPERATURE_DIFFERENCE), 0.0);
        var moisture =
                in.orElse("moisture", quantity(Dimension.FRACTION, Bounds.between(-1, 1, "-100 % to 100 %")), 0.0);
        in.requireSound();
        Map<Term, Double> terms = new EnumMap<>(Term.class);
        for (Promise<Optional<Given>> one : given) {
            if (one.get().isPresent()) {
                terms.put(one.get().get().term(), one.get().get().value());
            }
        }
        return new LoadCase(
                name.get(), loaded(new LaminateLoad(terms, alongX.get(), alongY.get(), change.get(), moisture.get())));
    }

    private static LaminateLoad loaded(LaminateLoad load) {
        if (load.isNone()) {
            throw new IllegalArgumentException("no load stands in this load case; a force, moment, strain, curvature,"
                    + " temperature-change or moisture is wanted");
        }
        return load;
    }

    private static Reading.Choice<Given> way(Term term) {
        return choice(term.word(), reading(term).map(value -> new Given(term, value)));
    }

    private static Reading<Double> reading(Term term) {
        return switch (term) {
            case NX, NY, NXY -> quantity(Dimension.FORCE_PER_LENGTH);
            case MX, MY, MXY -> quantity(Dimension.MOMENT_PER_LENGTH);
            case EPS_X, EPS_Y, GAMMA_XY -> Strains.strain();
            case KAPPA_X, KAPPA_Y, KAPPA_XY -> quantity(Dimension.CURVATURE);
        };
    }
}
