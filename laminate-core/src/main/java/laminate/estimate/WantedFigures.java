package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import laminate.material.Figure;
import laminate.material.Material;
import laminate.material.Property;
import laminate.material.Status;

/** Collects the figures that a strength is made of: which are missing, and how far those that stand can be trusted. */
final class WantedFigures {

    /** The least trusted first. A user's own figure stands above a remembered one, below a printed one. */
    private static final List<Status> WEAKEST_FIRST =
            List.of(Status.COMMON_PRACTICE, Status.MEMORY, Status.USER, Status.PRINTED);

    private final List<Figure> found = new ArrayList<>();
    private final Set<String> missing = new LinkedHashSet<>();

    WantedFigures want(Material material, Property... properties) {
        List<String> absent = new ArrayList<>();
        for (Property property : properties) {
            Optional<Figure> figure = material.figures().find(property);
            if (figure.isPresent()) {
                found.add(figure.get());
            } else {
                absent.add(property.key());
            }
        }
        if (!absent.isEmpty()) {
            missing.add(material.id() + " states no " + String.join(", ", absent));
        }
        return this;
    }

    WantedFigures use(Figure figure) {
        found.add(figure);
        return this;
    }

    boolean isComplete() {
        return missing.isEmpty();
    }

    /** What is missing, in words: "flax states no compressive-strength". */
    String missing() {
        return String.join("; ", missing);
    }

    /** The standing of the weakest figure, or of the formulas if they are weaker. */
    Status weakest(Status formulas) {
        Status weakest = formulas;
        for (Figure figure : found) {
            weakest = rank(figure.status()) < rank(weakest) ? figure.status() : weakest;
        }
        return weakest;
    }

    /** The sources of the figures, each once. */
    String sources() {
        Set<String> sources = new LinkedHashSet<>();
        for (Figure figure : found) {
            sources.add(figure.source());
        }
        return String.join("; ", sources);
    }

    private static int rank(Status status) {
        return WEAKEST_FIRST.indexOf(status);
    }
}
