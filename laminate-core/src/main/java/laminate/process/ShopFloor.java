package laminate.process;

import java.util.Objects;
import java.util.Optional;
import laminate.material.Figure;

/**
 * Hands, scales and hours of a workshop: what a plan of stages and mixes goes by.
 *
 * @param crew how many laminate together, 1 to {@link #LARGEST_CREW}
 * @param mixing how resin is mixed
 * @param day the working day
 * @param styreneLimit the exposure limit of styrene in the air (kg/m³), empty for the usual
 */
public record ShopFloor(int crew, Mixing mixing, WorkingDay day, Optional<Figure> styreneLimit) {

    /** More do not laminate together on one moulding; the largest hulls take a few dozen (common practice, no source). */
    public static final int LARGEST_CREW = 100;

    /** A workshop that states nothing: one person. */
    public static final ShopFloor USUAL = new ShopFloor(1, Mixing.USUAL, WorkingDay.USUAL, Optional.empty());

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the crew is not 1 to {@link #LARGEST_CREW} or the limit is not above zero
     */
    public ShopFloor {
        Objects.requireNonNull(mixing, "mixing");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(styreneLimit, "styreneLimit");
        if (crew < 1 || crew > LARGEST_CREW) {
            throw new IllegalArgumentException("a crew is 1 to " + LARGEST_CREW + ", not " + crew);
        }
        if (styreneLimit.isPresent() && !(styreneLimit.get().value() > 0)) {
            throw new IllegalArgumentException("a styrene limit must be above zero, not "
                    + styreneLimit.get().value() + " kg/m³");
        }
    }

    /**
     * This shop floor with another crew.
     *
     * @param hands how many laminate together
     * @return the shop floor
     * @throws IllegalArgumentException if the crew is not 1 to {@link #LARGEST_CREW}
     */
    public ShopFloor withCrew(int hands) {
        return new ShopFloor(hands, mixing, day, styreneLimit);
    }

    /**
     * This shop floor with another way to mix.
     *
     * @param own how resin is mixed
     * @return the shop floor
     */
    public ShopFloor with(Mixing own) {
        return new ShopFloor(crew, own, day, styreneLimit);
    }

    /**
     * This shop floor with another working day.
     *
     * @param own the working day
     * @return the shop floor
     */
    public ShopFloor with(WorkingDay own) {
        return new ShopFloor(crew, mixing, own, styreneLimit);
    }
}
