package laminate.process;

import java.util.Objects;
import java.util.Optional;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Resin;

/**
 * A fibre content that a workshop states for layers of a sort, in place of the nominal one.
 *
 * @param process the process it holds for, empty for all
 * @param form the form it holds for, empty for all
 * @param fibre the sort of fibre it holds for, empty for all
 * @param family the resin chemistry it holds for, empty for all
 * @param content the content
 */
public record ContentRule(
        Optional<Process> process,
        Optional<Form> form,
        Optional<Fibre.Type> fibre,
        Optional<Resin.Family> family,
        FibreContent content) {

    /**
     * Checks the rule.
     *
     * @throws IllegalArgumentException if the content is a thickness, which depends on the layer's weight
     */
    public ContentRule {
        Objects.requireNonNull(process, "process");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(fibre, "fibre");
        Objects.requireNonNull(family, "family");
        if (content.basis() == FibreContent.Basis.THICKNESS) {
            throw new IllegalArgumentException(
                    "a rule for all layers of a sort cannot state a thickness; state a fibre fraction or a resin ratio");
        }
    }

    /**
     * Whether the rule holds for a ply.
     *
     * @param layUp how it is laid
     * @param ply the ply
     * @return true if all that the rule names is so
     */
    boolean holdsFor(LayUp layUp, FibrePly ply) {
        return process.orElse(layUp.process()) == layUp.process()
                && form.orElse(ply.form()) == ply.form()
                && fibre.orElse(ply.fibre().type()) == ply.fibre().type()
                && family.orElse(layUp.resin().family()) == layUp.resin().family();
    }
}
