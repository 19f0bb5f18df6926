package laminate.material;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** The figures of one material by property; immutable. */
public final class Figures {
    private final Map<Property, Figure> byProperty;

    private Figures(Map<Property, Figure> byProperty) {
        this.byProperty = byProperty;
    }

    /**
     * Figures with sources.
     *
     * @param byProperty the figures, in SI units
     * @return the figures
     */
    public static Figures of(Map<Property, Figure> byProperty) {
        EnumMap<Property, Figure> copy = new EnumMap<>(Property.class);
        copy.putAll(byProperty);
        return new Figures(Collections.unmodifiableMap(copy));
    }

    /**
     * No figures yet.
     *
     * @return an empty set, to add to by {@link #with}
     */
    public static Figures none() {
        return of(Map.of());
    }

    /**
     * These figures with one more, stated by the user.
     *
     * @param property what it measures
     * @param value the value in SI units
     * @return a new set
     */
    public Figures with(Property property, double value) {
        return with(property, Figure.stated(value));
    }

    /**
     * These figures with one more.
     *
     * @param property what it measures
     * @param figure the figure, in SI units
     * @return a new set
     */
    public Figures with(Property property, Figure figure) {
        EnumMap<Property, Figure> copy = new EnumMap<>(Property.class);
        copy.putAll(byProperty);
        copy.put(property, figure);
        return new Figures(Collections.unmodifiableMap(copy));
    }

    /**
     * The SI value of a property.
     *
     * @param property what to look up
     * @return the value
     * @throws IllegalArgumentException if the property is not given
     */
    public double value(Property property) {
        Optional<Figure> figure = find(property);
        if (figure.isEmpty()) {
            throw new IllegalArgumentException("no figure is given for " + property.key());
        }
        return figure.get().value();
    }

    /**
     * The SI value of a property that may be absent.
     *
     * @param property what to look up
     * @return the value, empty if it is not given
     */
    public OptionalDouble valueOf(Property property) {
        Figure figure = byProperty.get(property);
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure.value());
    }

    /**
     * The figure of a property with its source.
     *
     * @param property what to look up
     * @return the figure, empty if it is not given
     */
    public Optional<Figure> find(Property property) {
        return Optional.ofNullable(byProperty.get(property));
    }

    /**
     * All figures.
     *
     * @return the figures by property, in the order of {@link Property}
     */
    public Map<Property, Figure> asMap() {
        return byProperty;
    }

    /**
     * Checks that a material of a kind has what it must have, and nothing that it cannot have.
     *
     * @param id the material's id, for the message
     * @param required the properties that must be given
     * @param optional the properties that may be given
     * @throws IllegalArgumentException naming the first property that is missing or out of place
     */
    void check(String id, Set<Property> required, Set<Property> optional) {
        for (Property property : required) {
            if (!byProperty.containsKey(property)) {
                throw new IllegalArgumentException(id + " has no " + property.key());
            }
        }
        for (Property property : byProperty.keySet()) {
            if (!required.contains(property) && !optional.contains(property)) {
                throw new IllegalArgumentException(id + " cannot have " + property.key());
            }
        }
    }

    /**
     * Checks that given properties are above zero.
     *
     * @param id the material's id, for the message
     * @param properties the properties to check where they are given
     * @throws IllegalArgumentException naming the first value that is not
     */
    void checkPositive(String id, Property... properties) {
        for (Property property : properties) {
            Figure figure = byProperty.get(property);
            if (figure != null && figure.value() <= 0) {
                throw new IllegalArgumentException(
                        id + ": " + property.key() + " must be above zero, not " + figure.value());
            }
        }
    }

    /**
     * Checks that given properties lie in a range.
     *
     * @param id the material's id, for the message
     * @param from the least value
     * @param below the value that they must stay below
     * @param properties the properties to check where they are given
     * @throws IllegalArgumentException naming the first value that does not
     */
    void checkRange(String id, double from, double below, Property... properties) {
        for (Property property : properties) {
            Figure figure = byProperty.get(property);
            if (figure != null && !(figure.value() >= from && figure.value() < below)) {
                throw new IllegalArgumentException(id + ": " + property.key() + " must be from " + from + " to below "
                        + below + ", not " + figure.value());
            }
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Figures figures && byProperty.equals(figures.byProperty);
    }

    @Override
    public int hashCode() {
        return byProperty.hashCode();
    }

    @Override
    public String toString() {
        return byProperty.toString();
    }
}
