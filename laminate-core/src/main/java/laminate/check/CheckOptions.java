package laminate.check;

import java.util.Objects;
import java.util.Optional;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.PlyDiscount;

/**
 * What a check goes by.
 *
 * @param criterion which criterion decides for plies with directions; mats and cores have their own
 * @param discount what a failed ply still carries
 * @param residualStress whether temperature and moisture of a load case count; left out, they neither strain nor stress it
 * @param surface the failure surface wanted of every load case, empty for none
 * @param largeDeflection whether the large deflection of every panel is wanted, or of those only that need it
 */
public record CheckOptions(
        Criterion criterion,
        PlyDiscount discount,
        boolean residualStress,
        Optional<SurfaceTerms> surface,
        boolean largeDeflection) {
    /**
     * Tsai–Wu, for it weighs all stresses of a ply together, tells tension from compression, has no corners, and is the
     * one that students meet first; it is optimistic where both stresses press, and every other criterion is reckoned
     * beside it. Plies are discounted by mode, residual stress counts where a load case states it.
     */
    public static final CheckOptions USUAL =
            new CheckOptions(Criterion.TSAI_WU, PlyDiscount.BY_MODE, true, Optional.empty(), false);

    /**
     * Checks the options.
     *
     * @param criterion which criterion decides for plies with directions; mats and cores have their own
     * @param discount what a failed ply still carries
     * @param residualStress whether temperature and moisture of a load case stress it
     * @param surface the failure surface wanted of every load case, empty for none
     * @param largeDeflection whether the large deflection of every panel is wanted
     * @throws IllegalArgumentException if the criterion is not one for plies
     */
    public CheckOptions {
        Objects.requireNonNull(discount, "discount");
        Objects.requireNonNull(surface, "surface");
        if (!isForPlies(criterion)) {
            throw new IllegalArgumentException(
                    "the criterion that decides must be one for plies, was " + criterion.jsonName());
        }
    }

    private static boolean isForPlies(Criterion criterion) {
        return switch (criterion) {
            case MAX_STRESS, MAX_STRAIN, TSAI_HILL, TSAI_WU, HASHIN -> true;
            case ISOTROPIC, CORE_SHEAR, CRUSHING -> false;
        };
    }

    /**
     * These options with another criterion that decides.
     *
     * @param other the criterion
     * @return the copy
     * @throws IllegalArgumentException if it is not one for plies
     */
    public CheckOptions with(Criterion other) {
        return new CheckOptions(other, discount, residualStress, surface, largeDeflection);
    }

    /**
     * These options with another discount of failed plies.
     *
     * @param other what a failed ply still carries
     * @return the copy
     */
    public CheckOptions with(PlyDiscount other) {
        return new CheckOptions(criterion, other, residualStress, surface, largeDeflection);
    }

    /**
     * These options with a failure surface of every load case.
     *
     * @param terms its terms
     * @return the copy
     */
    public CheckOptions with(SurfaceTerms terms) {
        return new CheckOptions(criterion, discount, residualStress, Optional.of(terms), largeDeflection);
    }

    /**
     * These options with temperature and moisture left out.
     *
     * @return the copy
     */
    public CheckOptions withoutResidualStress() {
        return new CheckOptions(criterion, discount, false, surface, largeDeflection);
    }

    /**
     * These options with the large deflection of every panel.
     *
     * @return the copy
     */
    public CheckOptions withLargeDeflection() {
        return new CheckOptions(criterion, discount, residualStress, surface, true);
    }
}
