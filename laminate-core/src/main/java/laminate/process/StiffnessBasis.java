package laminate.process;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.material.Status;
import laminate.theory.Micromechanics;

/**
 * How ply stiffness is reckoned from fibre and resin.
 *
 * <p>The knock-downs multiply the moduli of theory to reach those of the workshop. A woven ply loses stiffness by the
 * crimp of its yarns; a mat by strands that are bundled, curved and short. They do not touch measured ply properties.
 *
 * @param model the micromechanics of a straight ply
 * @param mat the factor for mats and tissues, above 0 and at most 1
 * @param woven the factor for woven plies, above 0 and at most 1
 */
public record StiffnessBasis(Micromechanics model, Figure mat, Figure woven) {

    private static final Figure USUAL_MAT = new Figure(
            0.81, "class-rule modulus 15 psi + 2 GPa over the in-plane average, ortho polyester", Status.MEMORY);
    private static final Figure USUAL_WOVEN =
            new Figure(0.88, "class-rule modulus 30 psi - 0.5 GPa over crossed plies, ortho polyester", Status.MEMORY);
    private static final Figure RULE_MAT =
            new Figure(1, "the marine rule holds its own coefficients", Status.COMMON_PRACTICE);
    private static final Figure RULE_WOVEN = new Figure(0.925, "crimp of woven plies, 0.90 to 0.95", Status.MEMORY);

    /** Halpin-Tsai with the knock-downs that bring it to class-rule moduli. */
    public static final StiffnessBasis USUAL = usual(Micromechanics.HALPIN_TSAI);

    /**
     * Checks the factors.
     *
     * @throws IllegalArgumentException if one is not above 0 and at most 1
     */
    public StiffnessBasis {
        Objects.requireNonNull(model, "model");
        check("mat", mat);
        check("woven", woven);
    }

    /**
     * A model with the knock-downs that go with it.
     *
     * @param model the micromechanics of a straight ply
     * @return the basis
     */
    public static StiffnessBasis usual(Micromechanics model) {
        return model == Micromechanics.MARINE_RULE
                ? new StiffnessBasis(model, RULE_MAT, RULE_WOVEN)
                : new StiffnessBasis(model, USUAL_MAT, USUAL_WOVEN);
    }

    /**
     * The knock-down of a form.
     *
     * @param form the form of a ply
     * @return the factor
     */
    public double knockDown(Form form) {
        Optional<Figure> factor = knockDown(form.architecture());
        return factor.isPresent() ? factor.get().value() : 1;
    }

    /**
     * The knock-down of an architecture with its source.
     *
     * @param architecture how the fibres of a ply lie
     * @return the factor, empty for straight plies, which have none
     */
    public Optional<Figure> knockDown(Form.Architecture architecture) {
        return switch (architecture) {
            case RANDOM -> Optional.of(mat);
            case WOVEN -> Optional.of(woven);
            case STRAIGHT -> Optional.empty();
        };
    }

    private static void check(String name, Figure factor) {
        if (!(factor.value() > 0 && factor.value() <= 1)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the knock-down of %s plies must be above 0 %% and at most 100 %%, not %.1f %%",
                    name,
                    factor.value() * 100));
        }
    }
}
