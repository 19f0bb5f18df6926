package laminate.compare;

import java.util.Objects;
import laminate.check.CheckOptions;
import laminate.theory.Equivalence.Stiffness;

/**
 * What a comparison goes by.
 *
 * @param basis what is held equal
 * @param means what is changed to make it so
 * @param along the bending stiffness that is made equal, {@link Stiffness#BENDING_X} or {@link Stiffness#BENDING_Y}
 * @param check what load cases, panels, beams and limits are checked by
 */
public record CompareOptions(Basis basis, Means means, Stiffness along, CheckOptions check) {
    /** The same reinforcement; nothing is changed. */
    public static final CompareOptions USUAL =
            new CompareOptions(Basis.SAME_REINFORCEMENT, Means.REINFORCEMENT, Stiffness.BENDING_X, CheckOptions.USUAL);

    /**
     * Checks the options.
     *
     * @param basis what is held equal
     * @param means what is changed to make it so
     * @param along the bending stiffness that is made equal
     * @param check what is checked by
     * @throws IllegalArgumentException if the stiffness is none of bending along x or y
     */
    public CompareOptions {
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(means, "means");
        Objects.requireNonNull(check, "check");
        if (along != Stiffness.BENDING_X && along != Stiffness.BENDING_Y) {
            throw new IllegalArgumentException("a bending stiffness along x or y can be held equal, was " + along);
        }
    }

    /**
     * These options with something else held equal.
     *
     * @param other what is held equal
     * @return the copy
     */
    public CompareOptions with(Basis other) {
        return new CompareOptions(other, means, along, check);
    }

    /**
     * These options with something else changed.
     *
     * @param other what is changed to reach the basis
     * @return the copy
     */
    public CompareOptions with(Means other) {
        return new CompareOptions(basis, other, along, check);
    }

    /**
     * These options with the bending stiffness of another direction held equal.
     *
     * @param other along x or along y
     * @return the copy
     * @throws IllegalArgumentException if the stiffness is none of bending along x or y
     */
    public CompareOptions with(Stiffness other) {
        return new CompareOptions(basis, means, other, check);
    }

    /**
     * These options with another way to check.
     *
     * @param other what is checked by
     * @return the copy
     */
    public CompareOptions with(CheckOptions other) {
        return new CompareOptions(basis, means, along, other);
    }
}
