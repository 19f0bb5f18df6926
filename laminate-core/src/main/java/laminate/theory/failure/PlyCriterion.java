package laminate.theory.failure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/** What the criteria that are made of {@link IndexForm} branches have in common. */
final class PlyCriterion {
    private PlyCriterion() {}

    /** The largest index of the branches that count. */
    static double index(List<IndexForm> forms, Vector3 stress) {
        return forms.stream()
                .filter(form -> form.counts(stress))
                .mapToDouble(form -> form.at(stress))
                .max()
                .orElse(0);
    }

    /** The branch that is reached first along constant + R growing. */
    static Optional<Crossing> firstReached(List<IndexForm> forms, Vector3 constant, Vector3 growing) {
        Crossing first = null;
        for (IndexForm form : forms) {
            OptionalDouble factor = form.firstReached(constant, growing);
            if (factor.isPresent() && (first == null || factor.getAsDouble() < first.factor())) {
                first = new Crossing(factor.getAsDouble(), form.mode());
            }
        }
        return Optional.ofNullable(first);
    }

    /** The stress that is nearest to its strength, as the mode of a criterion that mixes them. */
    static Mode nearest(Vector3 stress, PlyStrength strength) {
        return MaximumStress.forms(strength).stream()
                .max(Comparator.comparingDouble(form -> form.at(stress)))
                .map(IndexForm::mode)
                .orElseThrow();
    }
}
